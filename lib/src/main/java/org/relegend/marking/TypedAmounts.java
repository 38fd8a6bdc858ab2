package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a reading as typed beside a meter: "-0.62", "101 mV", "4.7k", "−12,5 V", "22 M", "230 V
 * AC", "1.2E-3". Prefixes count exactly as written: m is milli and M is mega. A comma is a decimal
 * comma; where it may also part thousands ("1,250") that reading comes second.
 */
public final class TypedAmounts {
  /** Two digits are enough for every unit here. */
  private static final Pattern EXPONENT = Pattern.compile("[eE]([+-]?[0-9]{1,2})");

  private TypedAmounts() {}

  /** Every reading; a number without unit is an amount of {@link Quantity#NUMBER}. */
  public static MarkingReadings<Amount> read(String text) {
    return read(text, Quantity.NUMBER);
  }

  /** Every reading; a number without unit is of the assumed quantity. */
  public static MarkingReadings<Amount> read(String text, Quantity assumed) {
    String fault = MarkingText.fault(text);
    if (!fault.isEmpty()) {
      return MarkingReadings.malformed(fault);
    }
    String plain = MarkingText.plain(text);
    if (plain.isEmpty()) {
      return MarkingReadings.noValue("No reading is typed.");
    }
    List<Amount> all = amounts(plain, assumed);
    if (all.isEmpty()) {
      return MarkingReadings.malformed(
          MarkingText.quoted(plain) + " is no reading. " + hint(assumed));
    }
    Quantity found = all.get(0).quantity();
    return assumed == Quantity.NUMBER || assumed == found
        ? MarkingReadings.read(all)
        : MarkingReadings.other(all, other(plain, found, assumed));
  }

  /**
   * An example that fits what is read there: a prefix alone is only shown where it can't mislead.
   */
  private static String hint(Quantity assumed) {
    String like =
        switch (assumed) {
          case VOLTAGE -> "-0.62 V or 101 mV";
          case RESISTANCE -> "4.7k or 220 ohm";
          case CAPACITANCE -> "10u or 100 nF";
          case CURRENT -> "20 mA";
          default -> "-0.62 V, 101 mV or 4.7 kohm";
        };
    return "Type a number with its unit, like %s.".formatted(like);
  }

  private static String other(String text, Quantity found, Quantity assumed) {
    return "%s tells %s, where %s is expected. Change the unit or the quantity."
        .formatted(MarkingText.quoted(text), found.label(), assumed.label());
  }

  private static List<Amount> amounts(String text, Quantity assumed) {
    boolean signed = text.charAt(0) == '-' || text.charAt(0) == '+';
    int start = signed ? 1 : 0;
    while (start < text.length() && text.charAt(start) == ' ') {
      start++;
    }
    List<Amount> found = new ArrayList<>();
    Optional<Numeral> number = Numeral.at(text, start);
    if (number.isPresent()) {
      read(text, number.get(), assumed, found);
      if (number.get().maybeGrouped()) {
        read(text, number.get().grouped(), assumed, found);
      }
    }
    return text.charAt(0) == '-' ? found.stream().map(TypedAmounts::negated).toList() : found;
  }

  private static void read(String text, Numeral number, Quantity assumed, List<Amount> into) {
    Matcher exponent = EXPONENT.matcher(text).region(number.end(), text.length());
    boolean powered = exponent.lookingAt();
    int power = powered ? Integer.parseInt(exponent.group(1)) : 0;
    String rest = text.substring(powered ? exponent.end() : number.end());
    if (rest.isEmpty()) {
      into.add(new Amount(assumed, number.times(power)));
    } else if (Character.isLetter(rest.charAt(0)) && power == 0 && Numeral.digit(rest, 1)) {
      Numeral.at(rest, 1)
          .flatMap(number::pointed)
          .ifPresent(
              joined -> {
                String letters = rest.charAt(0) + rest.substring(joined.end());
                united(letters, joined, 0, assumed, into);
              });
    } else {
      united(rest, number, power, assumed, into);
    }
  }

  /** A unit, or a prefix alone, which leaves the quantity to what is assumed. */
  private static void united(
      String rest, Numeral number, int power, Quantity assumed, List<Amount> into) {
    String letters = rest.replace(" ", "");
    for (DecimalPrefix prefix : DecimalPrefix.values()) {
      if (prefix.named(letters)) {
        into.add(new Amount(assumed, number.times(power + prefix.exponent)));
        return;
      }
    }
    for (UnitOfMeasure unit : UnitOfMeasure.of(letters)) {
      if (unit.remark().isEmpty() && !unit.expected()) {
        double value = number.times(power + unit.exponent());
        into.add(new Amount(unit.quantity(), value, unit.waveform()));
      }
    }
  }

  private static Amount negated(Amount amount) {
    return new Amount(amount.quantity(), -amount.value(), amount.waveform());
  }
}
