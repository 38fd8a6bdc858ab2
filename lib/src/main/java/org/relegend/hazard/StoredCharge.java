package org.relegend.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.relegend.circuit.Node;
import org.relegend.map.PartId;

/**
 * The charge that a capacitor, or several side by side, can hold when the instrument has worked.
 * Whatever stands here, it is measured before anyone touches.
 *
 * @param capacitors in the order of the map
 * @param ends the two nodes it lies between
 * @param farads of those whose value is known, together; 0 where none is
 * @param unread those whose value isn't known: there is more charge than the figures say
 * @param volts the most that can stand across it; empty while unknown
 * @param basis where the voltage is from
 * @param rated the highest voltage that any of them is made for; empty where none tells
 * @param bleeder the resistors by which it discharges; empty where none was found
 */
public record StoredCharge(
    List<PartId> capacitors,
    List<Node> ends,
    double farads,
    List<PartId> unread,
    OptionalDouble volts,
    Basis basis,
    OptionalDouble rated,
    Optional<Bleeder> bleeder) {
  /**
   * Energy from which charge counts as a danger at any voltage: our choice. DOE-HDBK-1092-2013 has
   * this figure for impulses above 400 V (from memory); below, it stands for sparks and burns.
   */
  public static final double NOTEWORTHY_JOULES = 0.25;

  /** Charge from which it counts as a danger above the limits; IEC 61010-1, 6.3.1. */
  public static final double NOTEWORTHY_COULOMBS = 45e-6;

  /** Where the voltage across a capacitor is from. */
  public enum Basis {
    /** The nets of both ends say it. */
    DECLARED,
    /** Worked out from what nets nearby say; the capacitor isn't made for more. */
    COMPUTED,
    /** Nobody said, or less: the figures are for the voltage that the capacitor is made for. */
    RATED,
    /** Nobody said, and the capacitor doesn't tell: no figures, but it may be charged. */
    UNKNOWN;

    /** Whether voltages of the map lead to it. */
    public boolean isFromVoltages() {
      return this == DECLARED || this == COMPUTED;
    }

    /** Where the voltage is from, in a few words. */
    public String words() {
      return switch (this) {
        case DECLARED -> "voltages of the map";
        case COMPUTED -> "at most, computed from voltages of the map";
        case RATED -> "its rating";
        case UNKNOWN -> "not known";
      };
    }
  }

  /**
   * Resistors by which it discharges.
   *
   * @param ohms between the two ends; what else conducts there isn't relied on
   * @param resistors those with most of the current first
   */
  public record Bleeder(double ohms, List<PartId> resistors) {
    public Bleeder {
      resistors = List.copyOf(resistors);
    }
  }

  public StoredCharge {
    capacitors = List.copyOf(capacitors);
    ends = List.copyOf(ends);
    unread = List.copyOf(unread);
  }

  /** With its physics, where value and voltage are known. */
  public Optional<Discharge> discharge() {
    return farads > 0 && volts.isPresent()
        ? Optional.of(new Discharge(farads, volts.getAsDouble()))
        : Optional.empty();
  }

  /**
   * Seconds until no more than this voltage is left, at the least; empty where no bleeder was found
   * or a figure is missing.
   */
  public OptionalDouble secondsTo(double lower) {
    return bleeder.isPresent() && discharge().isPresent()
        ? OptionalDouble.of(discharge().get().secondsTo(lower, bleeder.get().ohms()))
        : OptionalDouble.empty();
  }

  /** Whether it can hurt or spark by these limits; true where too little is known to say. */
  public boolean isNoteworthy(VoltageLimits limits) {
    if (discharge().isEmpty()) {
      return basis != Basis.DECLARED || limits.isHighDc(volts.orElse(0));
    }
    Discharge full = discharge().get();
    boolean more = !unread.isEmpty() || full.coulombs() > NOTEWORTHY_COULOMBS;
    boolean high = limits.isHighDc(full.volts()) && more;
    return high || full.joules() >= NOTEWORTHY_JOULES;
  }
}
