package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The code of figure and letter for rated voltage before a capacitor's value: "2A104J" is 100 nF ±5
 * % for 100 V (EIA RS-198 and JIS C 5101, from memory). The letter is a step of the R10 series, the
 * figure counts the zeros.
 */
final class VoltageCode implements MarkForm {
  private static final String LETTERS = "ABCDEFGHJKVW";

  /** Hundredths of a volt where the figure is 0. */
  private static final int[] STEPS = {100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 350, 450};

  private static final Pattern CODE =
      Pattern.compile(
          "(?<zeros>[0-3])(?<letter>["
              + LETTERS
              + "]) ?(?<value>[0-9]{3}|[0-9]R[0-9]|R[0-9]{2})"
              + "(?<tol>[BCDFGJKMZ])?");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    Matcher matcher = CODE.matcher(text);
    boolean open = context.open() && matcher.matches() && matcher.group("tol") != null;
    if (!(open || context.may(PartClass.CAPACITOR)) || !matcher.matches()) {
      return Optional.empty();
    }
    double farads = farads(matcher.group("value"));
    if (farads <= 0) {
      return Optional.empty();
    }
    Amount amount = new Amount(Quantity.CAPACITANCE, farads);
    String letters = matcher.group("zeros") + matcher.group("letter");
    Amount volts = new Amount(Quantity.VOLTAGE, volts(letters));
    String why = letters + " is " + volts.text() + " (EIA and JIS voltage code, from memory)";
    List<ValueReading> readings = new ArrayList<>();
    for (Optional<Tolerance> each : tolerances(matcher.group("tol"), farads)) {
      readings.add(new ValueReading(amount, each, List.of(volts), List.of(), why));
    }
    return Optional.of(MarkingReadings.read(readings));
  }

  /** In volts, of a code that the pattern let through. */
  private static double volts(String code) {
    int step = STEPS[LETTERS.indexOf(code.charAt(1))];
    return DecimalParser.value(step, code.charAt(0) - '0' - 2);
  }

  /** In farads: two figures and the count of zeros, from picofarads; 8 and 9 divide. */
  static double farads(String code) {
    int point = code.indexOf('R');
    if (point >= 0) {
      return DecimalParser.value(Long.parseLong(code.replace("R", "")), point - 2 - 12);
    }
    int last = code.charAt(2) - '0';
    return DecimalParser.value(
        Long.parseLong(code.substring(0, 2)), (last >= 8 ? last - 10 : last) - 12);
  }

  private static List<Optional<Tolerance>> tolerances(@Nullable String letter, double farads) {
    if (letter == null) {
      return List.of(Optional.empty());
    }
    return ToleranceLetter.of(letter.charAt(0)).stream()
        .flatMap(each -> each.meanings(Quantity.CAPACITANCE, farads).stream())
        .map(Optional::of)
        .toList();
  }
}
