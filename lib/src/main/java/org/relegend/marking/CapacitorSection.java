package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * One section of a capacitor that has several in one can.
 *
 * @param capacitance in farads, above zero
 * @param rating its voltage, where the marking tells one; a rating told once counts for all
 *     sections
 */
public record CapacitorSection(Amount capacitance, Optional<Amount> rating) {
  public CapacitorSection {
    requireNonNull(rating);
    if (capacitance.quantity() != Quantity.CAPACITANCE || capacitance.value() <= 0) {
      throw new IllegalArgumentException("a section has a capacitance, not " + capacitance);
    }
    if (rating.isPresent() && rating.get().quantity() != Quantity.VOLTAGE) {
      throw new IllegalArgumentException("a section is rated in volts, not " + rating.get());
    }
  }

  /** For people: "40 µF 450 V". */
  public String text() {
    return capacitance.text() + rating.map(volts -> " " + volts.text()).orElse("");
  }
}
