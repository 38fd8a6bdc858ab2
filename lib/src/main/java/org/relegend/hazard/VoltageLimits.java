package org.relegend.hazard;

import java.util.List;
import java.util.Optional;

/**
 * From which voltage on something counts as high voltage, by one rule. Which rule holds depends on
 * the work and the place: the set is chosen by a person and named with every answer.
 *
 * @param name the word for the command line
 * @param title what people call it
 * @param acVolts root mean square
 * @param dcVolts ripple-free direct voltage
 * @param included whether the limit itself counts as high already
 * @param source where the figures are from; says so where they are from memory
 */
public record VoltageLimits(
    String name, String title, double acVolts, double dcVolts, boolean included, String source) {
  /** IEC 61010-1, measuring instruments, in normal condition: the usual choice on a bench. */
  public static final VoltageLimits INSTRUMENTS =
      new VoltageLimits(
          "iec-61010", "IEC 61010-1, normal condition", 30, 60, false, "IEC 61010-1, clause 6.3.1");

  /** All that can be chosen, the usual one first. */
  public static final List<VoltageLimits> ALL =
      List.of(
          INSTRUMENTS,
          new VoltageLimits(
              "iec-61010-wet",
              "IEC 61010-1, wet locations",
              16,
              35,
              false,
              "IEC 61010-1, clause 6.3.1; figures from memory"),
          new VoltageLimits(
              "iec-61010-fault",
              "IEC 61010-1, single fault condition",
              50,
              120,
              false,
              "IEC 61010-1, clause 6.3.2; figures from memory"),
          new VoltageLimits(
              "iec-62368-es1", "IEC 62368-1, class ES1", 30, 60, false, "IEC 62368-1, table 4"),
          new VoltageLimits(
              "iec-62368-es2", "IEC 62368-1, class ES2", 50, 120, false, "IEC 62368-1, table 4"),
          new VoltageLimits(
              "elv",
              "extra-low voltage, IEC 61140",
              50,
              120,
              false,
              "IEC 61140, clause 7.4.1.1; ripple-free direct voltage"),
          new VoltageLimits(
              "dry-touch",
              "touchable without basic protection, dry",
              25,
              60,
              false,
              "EN 60204-1 on protective extra-low voltage, as stated second-hand"),
          new VoltageLimits(
              "osha", "OSHA, guarding of live parts", 50, 50, true, "29 CFR 1910.303(g)(2)(i)"),
          new VoltageLimits(
              "us-navy",
              "US Navy, be aware above 15 V",
              15,
              15,
              false,
              "US Navy training course NAVEDTRA 14009"));

  /** The set of this name. */
  public static Optional<VoltageLimits> find(String name) {
    return ALL.stream().filter(set -> set.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /** Whether an alternating voltage, root mean square, counts as high. */
  public boolean isHighAc(double volts) {
    return isHigh(Math.abs(volts), acVolts);
  }

  /** Whether a direct voltage of either sign counts as high. */
  public boolean isHighDc(double volts) {
    return isHigh(Math.abs(volts), dcVolts);
  }

  private boolean isHigh(double volts, double limit) {
    return included ? volts >= limit : volts > limit;
  }
}
