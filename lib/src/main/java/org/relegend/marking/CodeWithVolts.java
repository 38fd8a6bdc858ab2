package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Capacitors with their volts run on or behind a slash (common practice): "104K100", "u1K250", "22n
 * K 100", "0.1/250", "10/16". A second bare number is volts only in these forms. A bare first
 * number below one is microfarads; from one up it may be picofarads as well.
 */
final class CodeWithVolts implements MarkForm {
  private static final String TOLERANCE = "(?<tol>[FGJKMZ])";

  private static final String VOLTS =
      "(?<volts>[0-9]{1,4}(?:\\.[0-9])?) ?(?<wave>V|KV|kV|VDC|VAC|V~)?";

  private static final Pattern CODE =
      Pattern.compile("(?<value>[0-9]{3})" + TOLERANCE + " ?" + VOLTS);

  private static final Pattern PREFIXED =
      Pattern.compile(
          "(?<value>[0-9]*[unpµ][0-9]*|[0-9]{0,2}[.,][0-9]{1,4}[unp]?) ?"
              + TOLERANCE
              + " ?"
              + VOLTS);

  private static final Pattern SLASHED =
      Pattern.compile(
          "(?<value>[0-9]{0,5}(?:[.,][0-9]{1,4})?(?:[unpµ][0-9]{0,2}F?)?)" + "/" + VOLTS);

  /** More than any capacitor of an instrument is rated for: a cathode-ray tube's has 30 kV. */
  private static final double MOST_VOLTS = 50_000;

  /** Less run on is no rating: capacitors of such forms begin at 10 V (common practice). */
  private static final double LEAST_RUN_ON = 10;

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.mayOrOpen(PartClass.CAPACITOR)) {
      return Optional.empty();
    }
    Matcher code = CODE.matcher(text);
    if (code.matches() && volts(code) >= LEAST_RUN_ON) {
      double farads = VoltageCode.farads(code.group("value"));
      return answer(farads > 0 ? List.of(farads) : List.of(), code, code.group("tol"));
    }
    Matcher prefixed = PREFIXED.matcher(text);
    if (prefixed.matches() && volts(prefixed) >= LEAST_RUN_ON) {
      return answer(farads(prefixed.group("value"), context), prefixed, prefixed.group("tol"));
    }
    Matcher slashed = SLASHED.matcher(text);
    return slashed.matches()
        ? answer(farads(slashed.group("value"), context), slashed, "")
        : Optional.empty();
  }

  /** What the value can be: its prefix tells, or else its size and the kind. */
  private static List<Double> farads(String text, MarkContext context) {
    Optional<Numeral> number = Numeral.at(text, 0);
    boolean bare = number.map(found -> found.all(text)).orElse(false);
    List<Double> farads = new ArrayList<>();
    if (number.isPresent() && bare) {
      boolean small = number.get().times(0) < 1;
      if (small || !context.open()) {
        farads.add(number.get().times(-6));
      }
      if (!small && !context.open()) {
        farads.add(number.get().times(-12));
      }
    } else {
      ValueToken.read(text).stream()
          .map(TokenMeaning::amount)
          .filter(amount -> amount.quantity() == Quantity.CAPACITANCE)
          .forEach(amount -> farads.add(amount.value()));
    }
    farads.removeIf(each -> each <= 0);
    return farads;
  }

  private static Optional<MarkingReadings<ValueReading>> answer(
      List<Double> farads, Matcher matcher, String letter) {
    double volts = volts(matcher);
    List<ValueReading> readings = new ArrayList<>();
    for (double each : volts > 0 && volts <= MOST_VOLTS ? farads : List.<Double>of()) {
      Amount amount = new Amount(Quantity.CAPACITANCE, each);
      Optional<Tolerance> tolerance =
          letter.isEmpty()
              ? Optional.empty()
              : ToleranceLetter.of(letter.charAt(0)).stream()
                  .flatMap(known -> known.meanings(Quantity.CAPACITANCE, each).stream())
                  .findFirst();
      String why = "value and rated volts run together (common practice)";
      readings.add(new ValueReading(amount, tolerance, List.of(rating(matcher)), List.of(), why));
    }
    return readings.isEmpty() ? Optional.empty() : Optional.of(MarkingReadings.read(readings));
  }

  private static Amount rating(Matcher matcher) {
    String wave = Optional.ofNullable(matcher.group("wave")).orElse("");
    Waveform form =
        wave.contains("AC") || wave.contains("~")
            ? Waveform.AC
            : wave.contains("DC") ? Waveform.DC : Waveform.UNSTATED;
    return new Amount(Quantity.VOLTAGE, volts(matcher), form);
  }

  private static double volts(Matcher matcher) {
    String wave = Optional.ofNullable(matcher.group("wave")).orElse("");
    int power = wave.equalsIgnoreCase("KV") ? 3 : 0;
    return Numeral.at(matcher.group("volts"), 0).map(volts -> volts.times(power)).orElse(0.0);
  }
}
