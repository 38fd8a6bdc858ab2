package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Relays with the resistance of their coil beside its volts: "12V 270R" (common practice). */
final class RelayCoil implements MarkForm {
  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.is(PartClass.RELAY)) {
      return Optional.empty();
    }
    List<String> others = new ArrayList<>();
    List<Amount> coils = new ArrayList<>();
    for (String token : ValueText.tokens(text)) {
      Optional<Amount> ohms = ohms(token);
      ohms.ifPresent(coils::add);
      if (ohms.isEmpty()) {
        others.add(token);
      }
    }
    if (coils.size() != 1) {
      return Optional.empty();
    }
    MarkingReadings<ValueReading> plain =
        ValueParts.of(String.join(" ", others), context.quantity()).readings();
    return plain.outcome() == MarkingReadings.Outcome.READ
        ? Optional.of(
            MarkingReadings.read(
                plain.readings().stream().map(each -> each.withRating(coils.get(0))).toList()))
        : Optional.empty();
  }

  private static Optional<Amount> ohms(String token) {
    boolean bare = Numeral.at(token, 0).map(number -> number.all(token)).orElse(true);
    return bare
        ? Optional.empty()
        : ValueToken.read(token).stream()
            .filter(each -> !each.expected() && each.tolerance().isEmpty())
            .map(TokenMeaning::amount)
            .filter(amount -> amount.quantity() == Quantity.RESISTANCE)
            .findFirst();
  }
}
