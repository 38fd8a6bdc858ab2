package org.relegend.bench;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.map.Keyed;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.TextRules;

/**
 * The state of one part of this unit, as seen.
 *
 * @param states at least one
 * @param fitted its value where another than the map's was fitted; else empty
 * @param dateCode as printed on it; empty where none was read
 * @param photos the job's photos that show it
 */
public record Condition(
    PartId part,
    Set<PartState> states,
    String fitted,
    String dateCode,
    String note,
    List<PictureId> photos,
    String author,
    Instant at)
    implements Keyed<PartId> {
  public Condition {
    if (states.isEmpty()) {
      throw new IllegalArgumentException("a condition of " + part + " without a state");
    }
    states = Collections.unmodifiableSet(EnumSet.copyOf(states));
    boolean bare = states.contains(PartState.ORIGINAL) || states.contains(PartState.UNKNOWN);
    if (bare && states.contains(PartState.REPLACED)) {
      throw new IllegalArgumentException(
          part + " can't be replaced and at once original or unknown");
    }
    TextRules.line("value", fitted);
    TextRules.line("date code", dateCode);
    TextRules.note(note);
    photos = List.copyOf(photos);
    TextRules.line("author", author);
    at = Timestamps.checked(at);
  }

  @Override
  public PartId key() {
    return part;
  }

  public boolean is(PartState state) {
    return states.contains(state);
  }

  /** Whether somebody worked on it. */
  public boolean reworked() {
    return states.stream().anyMatch(PartState::reworked);
  }

  /** Whether it is known to be other than it left the factory: worked on, hurt or gone. */
  public boolean notOriginal() {
    return states.stream()
        .anyMatch(state -> state != PartState.ORIGINAL && state != PartState.UNKNOWN);
  }

  /** For people: "replaced, socketed". */
  public String text() {
    return states.stream().map(PartState::word).collect(Collectors.joining(", "));
  }
}
