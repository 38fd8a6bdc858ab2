package org.relegend.map;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Who says so, when and on what evidence.
 *
 * @param author a name or alias; may be empty where a table gave none
 * @param at to the second
 */
public record Attestation(Evidence evidence, String author, Instant at, String note) {
  public Attestation {
    Texts.line("author", author);
    Texts.note(note);
    at = at.truncatedTo(ChronoUnit.SECONDS);
  }

  public Attestation(Evidence evidence, String author, Instant at) {
    this(evidence, author, at, "");
  }

  /** The best evidence among these, if there is any. */
  public static Optional<Evidence> best(List<Attestation> evidence) {
    return evidence.stream().map(Attestation::evidence).min(Evidence::compareTo);
  }
}
