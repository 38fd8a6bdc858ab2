package org.relegend.marking;

import java.util.List;
import java.util.Locale;

/** What a number measures. Values are in the coherent SI unit named here, without a prefix. */
public enum Quantity {
  RESISTANCE(
      "Ω",
      DecimalPrefix.MILLI,
      DecimalPrefix.NONE,
      DecimalPrefix.KILO,
      DecimalPrefix.MEGA,
      DecimalPrefix.GIGA,
      DecimalPrefix.TERA),
  /** Millifarads are left out when writing: the trade says 1000 µF (common practice). */
  CAPACITANCE("F", DecimalPrefix.PICO, DecimalPrefix.NANO, DecimalPrefix.MICRO, DecimalPrefix.NONE),
  INDUCTANCE("H", DecimalPrefix.NANO, DecimalPrefix.MICRO, DecimalPrefix.MILLI, DecimalPrefix.NONE),
  VOLTAGE("V", DecimalPrefix.MICRO, DecimalPrefix.MILLI, DecimalPrefix.NONE, DecimalPrefix.KILO),
  CURRENT(
      "A",
      DecimalPrefix.PICO,
      DecimalPrefix.NANO,
      DecimalPrefix.MICRO,
      DecimalPrefix.MILLI,
      DecimalPrefix.NONE,
      DecimalPrefix.KILO),
  POWER("W", DecimalPrefix.MICRO, DecimalPrefix.MILLI, DecimalPrefix.NONE, DecimalPrefix.KILO),
  APPARENT_POWER("VA", DecimalPrefix.MILLI, DecimalPrefix.NONE, DecimalPrefix.KILO),
  FREQUENCY(
      "Hz",
      DecimalPrefix.MILLI,
      DecimalPrefix.NONE,
      DecimalPrefix.KILO,
      DecimalPrefix.MEGA,
      DecimalPrefix.GIGA),
  TIME(
      "s",
      DecimalPrefix.PICO,
      DecimalPrefix.NANO,
      DecimalPrefix.MICRO,
      DecimalPrefix.MILLI,
      DecimalPrefix.NONE),
  /** A plain number: a ratio, a count, or a reading whose unit was not written. */
  NUMBER("", DecimalPrefix.NONE);

  private final String unit;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of enum constants
  private final List<DecimalPrefix> prefixes;

  Quantity(String unit, DecimalPrefix... prefixes) {
    this.unit = unit;
    this.prefixes = List.of(prefixes);
  }

  /** The symbol of the unit, as "Ω" (U+03A9); empty for a plain number. */
  public String unit() {
    return unit;
  }

  /** The quantity in words, as "apparent power". */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The prefixes in use with this unit, from small to large. */
  List<DecimalPrefix> prefixes() {
    return prefixes;
  }
}
