package org.relegend.bench;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Moments as they are kept: to the second, in the years 1 to 9999. */
final class Timestamps {
  private static final Instant FIRST = Instant.parse("0001-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("9999-12-31T23:59:59Z");

  private Timestamps() {}

  static Instant checked(Instant at) {
    Instant second = at.truncatedTo(ChronoUnit.SECONDS);
    if (second.isBefore(FIRST) || second.isAfter(LAST)) {
      throw new IllegalArgumentException("nothing can have happened at " + at);
    }
    return second;
  }
}
