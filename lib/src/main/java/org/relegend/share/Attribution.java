package org.relegend.share;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.store.Json;

/** Who stands for something: told for people, and found in the text of a version. */
public final class Attribution {
  private Attribution() {}

  /** "measured by Kim, 2026-03-04; seen by Ada, 2026-03-02"; empty where nobody is named. */
  public static String text(List<Attestation> by) {
    return by.stream().map(Attribution::text).collect(Collectors.joining("; "));
  }

  private static String text(Attestation attestation) {
    String author = attestation.author().isEmpty() ? "" : " by " + attestation.author();
    return attestation.evidence().word()
        + author
        + ", "
        + attestation.at().toString().substring(0, 10);
  }

  /** All who stand for something in a version of an entry, in the order they are found. */
  static List<Attestation> in(Json version) {
    List<Attestation> found = new ArrayList<>();
    collect(version, found);
    return found;
  }

  private static void collect(Json json, List<Attestation> found) {
    if (json instanceof Json.Arr list) {
      list.values().forEach(value -> collect(value, found));
    } else if (json instanceof Json.Obj object) {
      if (object.fields().get("evidence") instanceof Json.Text evidence
          && object.fields().get("at") instanceof Json.Text at) {
        String author = object.fields().get("author") instanceof Json.Text name ? name.value() : "";
        try {
          found.add(
              new Attestation(Evidence.of(evidence.value()), author, Instant.parse(at.value())));
        } catch (DateTimeException | IllegalArgumentException unreadable) {
          // then nobody can be told to stand for it
        }
      } else {
        object.fields().values().forEach(value -> collect(value, found));
      }
    }
  }
}
