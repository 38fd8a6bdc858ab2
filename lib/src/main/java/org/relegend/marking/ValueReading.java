package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One way to read the value text of a part.
 *
 * @param amount the value itself
 * @param tolerance as told by a letter, a percentage or a band; empty when not told
 * @param ratings voltages, currents and powers told beside the value, in their order
 * @param words the rest of the text, as "polystyrene" or "X-class"
 * @param why how the text was read so, and by which rule; a sentence for the user
 */
public record ValueReading(
    Amount amount,
    Optional<Tolerance> tolerance,
    List<Amount> ratings,
    List<String> words,
    String why) {
  public ValueReading {
    requireNonNull(amount);
    requireNonNull(tolerance);
    requireNonNull(why);
    ratings = List.copyOf(ratings);
    words = List.copyOf(words);
  }

  /** The first rating of this quantity, in its unit: volts, amperes, watts. */
  public OptionalDouble rated(Quantity quantity) {
    return ratings.stream()
        .filter(rating -> rating.quantity() == quantity)
        .mapToDouble(Amount::value)
        .findFirst();
  }
}
