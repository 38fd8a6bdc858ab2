package org.relegend.map;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Who says so, when and on what evidence.
 *
 * @param author a name or alias; may be empty where a table gave none
 * @param at to the second, in the years 1 to 9999
 */
public record Attestation(Evidence evidence, String author, Instant at, String note) {
  private static final Instant FIRST = Instant.parse("0001-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("9999-12-31T23:59:59Z");

  public Attestation {
    TextRules.line("author", author);
    TextRules.note(note);
    at = at.truncatedTo(ChronoUnit.SECONDS);
    if (at.isBefore(FIRST) || at.isAfter(LAST)) {
      throw new IllegalArgumentException("nobody says anything at " + at);
    }
  }

  public Attestation(Evidence evidence, String author, Instant at) {
    this(evidence, author, at, "");
  }

  /** The best evidence among these, if there is any. */
  public static Optional<Evidence> best(List<Attestation> evidence) {
    return evidence.stream().map(Attestation::evidence).min(Evidence::compareTo);
  }
}
