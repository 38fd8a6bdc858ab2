package org.relegend.bench;

import java.time.Instant;
import org.relegend.map.Keyed;
import org.relegend.map.Subject;
import org.relegend.map.TextRules;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * One value measured at a net, pin, section or part of this unit.
 *
 * @param amount what was measured, in the unit of its quantity without prefix
 * @param author who took it; may be empty
 */
public record Reading(
    EntryId id, Subject at, Amount amount, MeasurementSetup setting, String author, Instant taken)
    implements Keyed<EntryId> {
  public Reading {
    TextRules.line("author", author);
    taken = Timestamps.checked(taken);
    Quantity quantity = amount.quantity();
    if (quantity == Quantity.NUMBER) {
      throw new IllegalArgumentException(
          "a reading at %s needs a unit: V, A, \u03a9, F, Hz\u2026".formatted(at));
    }
    boolean ofPart = at instanceof Subject.OfPart || at instanceof Subject.OfSection;
    if (quantity == Quantity.VOLTAGE && !ofPart && !setting.with().known()) {
      throw new IllegalArgumentException(
          "a voltage at %s can't be kept without the input resistance of the meter: say which, as"
                  .formatted(at)
              + " 10M");
    }
    if (amount.value() < 0
        && (quantity == Quantity.RESISTANCE || quantity == Quantity.CAPACITANCE)) {
      throw new IllegalArgumentException(
          "%s can't be the %s of anything".formatted(amount.text(), quantity.label()));
    }
  }

  @Override
  public EntryId key() {
    return id;
  }

  /** The number alone, in the unit of its quantity. */
  public double value() {
    return amount.value();
  }

  public Quantity quantity() {
    return amount.quantity();
  }
}
