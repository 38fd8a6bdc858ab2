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
import org.relegend.map.Texts;

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
    Set<State> states,
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
    boolean bare = states.contains(State.ORIGINAL) || states.contains(State.UNKNOWN);
    if (bare && states.contains(State.REPLACED)) {
      throw new IllegalArgumentException(
          part + " can't be replaced and at once original or unknown");
    }
    Texts.line("value", fitted);
    Texts.line("date code", dateCode);
    Texts.note(note);
    photos = List.copyOf(photos);
    Texts.line("author", author);
    at = Moments.checked(at);
  }

  @Override
  public PartId key() {
    return part;
  }

  public boolean is(State state) {
    return states.contains(state);
  }

  /** Whether somebody worked on it. */
  public boolean reworked() {
    return states.stream().anyMatch(State::reworked);
  }

  /** Whether it is known to be other than it left the factory: worked on, hurt or gone. */
  public boolean notOriginal() {
    return states.stream().anyMatch(state -> state != State.ORIGINAL && state != State.UNKNOWN);
  }

  /** For people: "replaced, socketed". */
  public String text() {
    return states.stream().map(State::word).collect(Collectors.joining(", "));
  }
}
