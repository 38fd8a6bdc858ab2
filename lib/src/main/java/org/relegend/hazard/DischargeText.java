package org.relegend.hazard;

import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** How much a charge is, how it fades and by what it is discharged, in words with figures. */
public record DischargeText(StoredCharge charge, VoltageLimits limits) {
  private static final int FIGURES = 3;

  /**
   * "1000 µF at 23.1 V: 267 mJ", with where the volts are from; says so where they aren't known.
   */
  public String amount() {
    return charge
        .discharge()
        .map(
            full ->
                "%s at %s%s: %s"
                        .formatted(
                            text(charge.farads(), Quantity.CAPACITANCE),
                            text(full.volts(), Quantity.VOLTAGE),
                            basis(),
                            energy(full.joules()))
                    + beyond(full))
        .orElse("value or voltage unknown: take it as charged");
  }

  /** What it holds at its rating, where the figures are beyond that. */
  private String beyond(Discharge full) {
    return charge.rated().stream()
        .filter(rated -> rated > 0 && full.volts() > rated)
        .mapToObj(
            rated ->
                ", which is beyond its rating of %s: %s there"
                    .formatted(
                        text(rated, Quantity.VOLTAGE),
                        energy(new Discharge(charge.farads(), rated).joules())))
        .findFirst()
        .orElse("");
  }

  private String basis() {
    return switch (charge.basis()) {
      case RATED -> " (its rating, for no voltage is given, or a lower one)";
      case COMPUTED -> " at most (a bound computed from voltages of the map)";
      case DECLARED, UNKNOWN -> "";
    };
  }

  /** How long its bleeder takes to the limit and to 1 V; that none was found, where that is so. */
  public String fading() {
    if (charge.bleeder().isEmpty()) {
      return "no bleeder found: it may stay charged for days";
    }
    if (charge.discharge().isEmpty()) {
      return "how long it takes is not known";
    }
    Discharge full = charge.discharge().get();
    return left(full, limits.dcVolts()) + "; " + left(full, Discharge.LOW_VOLTS);
  }

  /** How long a voltage stays above a lower one; never a time of 0, which reads as no danger. */
  private String left(Discharge full, double lower) {
    String to = text(lower, Quantity.VOLTAGE);
    return full.volts() <= lower
        ? "never above %s by these figures".formatted(to)
        : "%s after at least %s"
            .formatted(to, WaitTime.text(charge.secondsTo(lower).orElseThrow()));
  }

  /** Whether anything is to be said of what discharges it: it counts, or no resistor bears it. */
  public boolean asksForMeans() {
    return charge.isNoteworthy(limits)
        || charge.discharge().filter(Discharge::needsProbe).isPresent();
  }

  /** The resistor that discharges it, or the probe where none bears the volts. */
  public String means() {
    if (charge.discharge().isEmpty()) {
      return "value or volts not known: measure with a probe made for the highest voltage there can"
          + " be, before anything is put across it";
    }
    Discharge full = charge.discharge().get();
    return full.proposal().map(DischargeText::resistor).orElseGet(() -> probe(full));
  }

  private static String resistor(Discharge.Resistor by) {
    String needs =
        "a discharge resistor of %s has to bear %s, %s at first and %s in all, for at least %s"
            .formatted(
                text(by.ohms(), Quantity.RESISTANCE),
                text(by.volts(), Quantity.VOLTAGE),
                text(by.watts(), Quantity.POWER),
                energy(by.joules()),
                WaitTime.text(by.seconds()));
    return by.inSeries() == 1
        ? needs
        : needs
            + "; divide it into %d or more of equal ohms in series, unless its data sheet allows the volts: usual film resistors of 0.25 W bear %s"
                .formatted(by.inSeries(), text(Discharge.RESISTOR_VOLTS, Quantity.VOLTAGE));
  }

  private static String probe(Discharge full) {
    String volts = text(full.volts(), Quantity.VOLTAGE);
    return "no single resistor is proposed: film resistors of 0.25 to 0.5 W bear %s to %s; take a discharge probe, or a chain of resistors, made for %s and %s, and a meter probe made for %s"
        .formatted(
            text(Discharge.RESISTOR_VOLTS, Quantity.VOLTAGE),
            text(Discharge.MOST_RESISTOR_VOLTS, Quantity.VOLTAGE),
            volts,
            energy(full.joules()),
            volts);
  }

  /** Joules take the same prefixes as watts. */
  private static String energy(double joules) {
    return text(joules, Quantity.POWER).replace('W', 'J');
  }

  private static String text(double value, Quantity quantity) {
    return new Amount(quantity, value).text(FIGURES);
  }
}
