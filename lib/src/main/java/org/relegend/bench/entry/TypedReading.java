package org.relegend.bench.entry;

import java.util.Locale;
import org.relegend.map.NameRules;
import org.relegend.marking.Amount;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.TypedAmounts;
import org.relegend.marking.Waveform;

/** Reads what a technician types beside a meter: {@code -0.62}, {@code 101m}, {@code 4k7}. */
public final class TypedReading {
  private TypedReading() {}

  /**
   * The amount typed; without a unit it is of the assumed quantity.
   *
   * @throws IllegalArgumentException with one sentence for the user where it is none, or of another
   *     quantity
   */
  public static Amount parse(String text, Quantity assumed) {
    String plain = text.strip();
    if (plain.equalsIgnoreCase("OL") || plain.equalsIgnoreCase("over")) {
      throw new IllegalArgumentException(
          "\"%s\" is no value: type the largest that the range shows, like 20M, and say so in the conditions"
              .formatted(NameRules.printable(plain)));
    }
    MarkingReadings<Amount> read = TypedAmounts.read(plain, assumed);
    if (read.outcome() != MarkingReadings.Outcome.READ) {
      throw new IllegalArgumentException(read.reason());
    }
    return read.first().orElseThrow();
  }

  /**
   * The amount of a table's cells.
   *
   * @param quantity in words, as "voltage", "dc voltage", "resistance"; empty where the unit tells
   * @param unit as "mV"; empty where value or quantity tell
   * @throws IllegalArgumentException as {@link #parse(String, Quantity)}
   */
  public static Amount parse(String quantity, String value, String unit) {
    Quantity assumed = quantity.isEmpty() ? Quantity.NUMBER : quantity(quantity);
    Amount amount = parse(unit.isEmpty() ? value : value + " " + unit, assumed);
    if (amount.quantity() == Quantity.NUMBER) {
      throw new IllegalArgumentException(
          "\"%s\" has no unit: give one, as V, mV, ohm, or name the quantity"
              .formatted(NameRules.printable(value)));
    }
    Waveform waveform = waveform(quantity);
    return waveform == Waveform.UNSTATED
        ? amount
        : new Amount(amount.quantity(), amount.value(), waveform);
  }

  /** Whether a number was typed without a unit: "12", "4.7k". */
  static boolean isBare(String text) {
    return TypedAmounts.read(text.strip())
        .first()
        .map(amount -> amount.quantity() == Quantity.NUMBER)
        .orElse(false);
  }

  private static Waveform waveform(String quantity) {
    String word = quantity.toLowerCase(Locale.ROOT);
    return word.startsWith("ac")
        ? Waveform.AC
        : word.startsWith("dc") ? Waveform.DC : Waveform.UNSTATED;
  }

  private static Quantity quantity(String words) {
    String word = words.strip().toLowerCase(Locale.ROOT).replaceFirst("^(ac|dc)\\b\\s*", "");
    return switch (word) {
      case "", "v", "volts", "volt", "voltage", "drop", "diode test" -> Quantity.VOLTAGE;
      case "ohms", "ohm", "r", "resistance" -> Quantity.RESISTANCE;
      case "farads", "c", "capacitance" -> Quantity.CAPACITANCE;
      case "amps", "ampere", "a", "i", "current" -> Quantity.CURRENT;
      case "hz", "frequency" -> Quantity.FREQUENCY;
      case "henry", "l", "inductance" -> Quantity.INDUCTANCE;
      case "watts", "power" -> Quantity.POWER;
      case "seconds", "time" -> Quantity.TIME;
      default ->
          throw new IllegalArgumentException(
              "\"%s\" is no quantity: it is one of voltage, resistance, capacitance, current, frequency, inductance, power, time"
                  .formatted(NameRules.printable(words)));
    };
  }
}
