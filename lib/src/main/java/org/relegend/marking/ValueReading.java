package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
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
 * @param sections of a capacitor with several in one can, whose sum the amount is; else empty
 * @param traits what the marking tells beside, as the law of a potentiometer
 */
public record ValueReading(
    Amount amount,
    Optional<Tolerance> tolerance,
    List<Amount> ratings,
    List<String> words,
    String why,
    List<CapacitorSection> sections,
    List<MarkTrait> traits) {
  public ValueReading {
    requireNonNull(amount);
    requireNonNull(tolerance);
    requireNonNull(why);
    ratings = List.copyOf(ratings);
    words = List.copyOf(words);
    sections = List.copyOf(sections);
    traits = List.copyOf(traits);
  }

  /** Of a part without sections, whose marking tells nothing beside. */
  public ValueReading(
      Amount amount,
      Optional<Tolerance> tolerance,
      List<Amount> ratings,
      List<String> words,
      String why) {
    this(amount, tolerance, ratings, words, why, List.of(), List.of());
  }

  /** With a rating more, behind those it has. */
  ValueReading withRating(Amount rating) {
    List<Amount> all = new ArrayList<>(ratings);
    all.add(rating);
    return new ValueReading(amount, tolerance, all, words, why, sections, traits);
  }

  /** With what else the marking tells, and by which rule. */
  ValueReading with(List<MarkTrait> more, String rule) {
    List<MarkTrait> all = new ArrayList<>(traits);
    all.addAll(more);
    String text = rule.isEmpty() ? why : why + "; " + rule;
    return new ValueReading(amount, tolerance, ratings, words, text, sections, all);
  }

  /** The first rating of this quantity, in its unit: volts, amperes, watts. */
  public OptionalDouble rated(Quantity quantity) {
    return ratings.stream()
        .filter(rating -> rating.quantity() == quantity)
        .mapToDouble(Amount::value)
        .findFirst();
  }
}
