package org.relegend.marking;

import java.util.List;
import java.util.Locale;

/** What a number measures. Values are in the coherent SI unit named here, without a prefix. */
public enum Quantity {
  RESISTANCE("Ω", Prefix.MILLI, Prefix.NONE, Prefix.KILO, Prefix.MEGA, Prefix.GIGA, Prefix.TERA),
  /** Millifarads are left out when writing: the trade says 1000 µF (common practice). */
  CAPACITANCE("F", Prefix.PICO, Prefix.NANO, Prefix.MICRO, Prefix.NONE),
  INDUCTANCE("H", Prefix.NANO, Prefix.MICRO, Prefix.MILLI, Prefix.NONE),
  VOLTAGE("V", Prefix.MICRO, Prefix.MILLI, Prefix.NONE, Prefix.KILO),
  CURRENT("A", Prefix.PICO, Prefix.NANO, Prefix.MICRO, Prefix.MILLI, Prefix.NONE, Prefix.KILO),
  POWER("W", Prefix.MICRO, Prefix.MILLI, Prefix.NONE, Prefix.KILO),
  APPARENT_POWER("VA", Prefix.MILLI, Prefix.NONE, Prefix.KILO),
  FREQUENCY("Hz", Prefix.MILLI, Prefix.NONE, Prefix.KILO, Prefix.MEGA, Prefix.GIGA),
  TIME("s", Prefix.PICO, Prefix.NANO, Prefix.MICRO, Prefix.MILLI, Prefix.NONE),
  /** A plain number: a ratio, a count, or a reading whose unit was not written. */
  NUMBER("", Prefix.NONE);

  private final String unit;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of enum constants
  private final List<Prefix> prefixes;

  Quantity(String unit, Prefix... prefixes) {
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
  List<Prefix> prefixes() {
    return prefixes;
  }
}
