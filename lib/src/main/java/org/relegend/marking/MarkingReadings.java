package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * The answer to "what does this marking say": every reading it allows, likeliest first, or why
 * there is none.
 *
 * @param readings empty exactly when the outcome is NO_VALUE or MALFORMED
 * @param reason a sentence for the user; empty when the outcome is READ, since then each reading
 *     tells its own
 */
public record MarkingReadings<T>(Outcome outcome, List<T> readings, String reason) {
  /** How the reading went. */
  public enum Outcome {
    /** The text was read, in one way or in several. */
    READ,
    /** The text holds a value, but of another quantity than was asked for; the readings tell it. */
    OTHER_QUANTITY,
    /** The text is empty or plainly a description; nothing is wrong with it. */
    NO_VALUE,
    /** The text sets out to be a value and fails. */
    MALFORMED
  }

  public MarkingReadings {
    requireNonNull(reason);
    readings = List.copyOf(readings);
    boolean read = outcome == Outcome.READ || outcome == Outcome.OTHER_QUANTITY;
    if (read == readings.isEmpty() || (outcome == Outcome.READ) != reason.isEmpty()) {
      throw new IllegalArgumentException(outcome + " with " + readings + " and '" + reason + "'");
    }
  }

  static <T> MarkingReadings<T> read(List<T> readings) {
    return new MarkingReadings<>(Outcome.READ, readings, "");
  }

  static <T> MarkingReadings<T> other(List<T> readings, String reason) {
    return new MarkingReadings<>(Outcome.OTHER_QUANTITY, readings, reason);
  }

  static <T> MarkingReadings<T> noValue(String reason) {
    return new MarkingReadings<>(Outcome.NO_VALUE, List.of(), reason);
  }

  static <T> MarkingReadings<T> malformed(String reason) {
    return new MarkingReadings<>(Outcome.MALFORMED, List.of(), reason);
  }

  /** The likeliest reading; of another quantity too, so look at the outcome first. */
  public Optional<T> first() {
    return readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(0));
  }

  /** The reading, where there is exactly one. */
  public Optional<T> only() {
    return readings.size() == 1 ? first() : Optional.empty();
  }
}
