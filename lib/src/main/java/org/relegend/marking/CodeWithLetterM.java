package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Three digits and an M on a capacitor, as "222M" or "222M Y2 250VAC": a code in picofarads with
 * ±20 % (IEC 60062). Where the digits end in a nought, older lists' M for microfarads is as likely
 * (common practice), and both are kept.
 */
final class CodeWithLetterM implements MarkForm {
  private static final Pattern SAFETY_CLASS = Pattern.compile("(?:^|\\s)[XY][12](?=\\s|$)");

  private static final Pattern CODE =
      Pattern.compile("(?<value>[1-9][0-9]{2})M(?: (?<volts>[0-9]{1,4}) ?V(?<wave>AC|DC|~)?)?");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    String bare = SAFETY_CLASS.matcher(text).replaceAll("").strip();
    Matcher matcher = CODE.matcher(bare);
    if (!context.may(PartClass.CAPACITOR) || !matcher.matches()) {
      return Optional.empty();
    }
    return Optional.of(MarkingReadings.read(readings(matcher)));
  }

  private static List<ValueReading> readings(Matcher matcher) {
    List<ValueReading> readings = new ArrayList<>();
    double farads = VoltageCode.farads(matcher.group("value"));
    if (farads > 0) {
      Amount amount = new Amount(Quantity.CAPACITANCE, farads);
      Optional<Tolerance> tolerance =
          ToleranceLetter.of('M').stream()
              .flatMap(known -> known.meanings(Quantity.CAPACITANCE, farads).stream())
              .findFirst();
      String why = "capacitor code in pF with a tolerance letter (IEC 60062)";
      readings.add(new ValueReading(amount, tolerance, ratings(matcher), List.of(), why));
    }
    if (matcher.group("value").endsWith("0")) {
      double old = Double.parseDouble(matcher.group("value")) * 1e-6;
      String why = "M for microfarads, as older lists have it (common practice)";
      readings.add(
          new ValueReading(
              new Amount(Quantity.CAPACITANCE, old),
              Optional.empty(),
              ratings(matcher),
              List.of(),
              why));
    }
    return readings;
  }

  private static List<Amount> ratings(Matcher matcher) {
    if (matcher.group("volts") == null) {
      return List.of();
    }
    String wave = Optional.ofNullable(matcher.group("wave")).orElse("");
    Waveform form =
        switch (wave) {
          case "AC", "~" -> Waveform.AC;
          case "DC" -> Waveform.DC;
          default -> Waveform.UNSTATED;
        };
    return List.of(new Amount(Quantity.VOLTAGE, Double.parseDouble(matcher.group("volts")), form));
  }
}
