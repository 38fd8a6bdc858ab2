package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Type designations of United States military specifications (from memory of each): style, size,
 * characteristic, value, tolerance letter and failure rate run together, as RC07GF472J. Ratings are
 * told where the style alone fixes them: of composition resistors the watts (at 70 °C).
 */
final class MilitaryStyle implements MarkForm {
  private static final String THREE = "(?<value>[0-9]{3}|[0-9]R[0-9]|R[0-9]{2})";
  private static final String FOUR =
      "(?<value>[0-9]{4}|[0-9]R[0-9]{2}|[0-9]{2}R[0-9]|[0-9]{3}R|R[0-9]{3})";
  private static final String RATE = "(?<rate>[LMPRSTV])";

  /** A designation with the specification it stands in. */
  private record Style(String specification, Quantity quantity, Pattern pattern) {
    static Style of(String specification, Quantity quantity, String regex) {
      return new Style(specification, quantity, Pattern.compile(regex));
    }
  }

  private static final List<Style> STYLES =
      List.of(
          resistor("MIL-R-55182", "(?<style>RN[CRN][0-9]{2})(?<char>[A-Z])", FOUR, "[BCDF]", RATE),
          resistor("MIL-R-10509", "(?<style>RN[0-9]{2})(?<char>[A-Z])", FOUR, "[BCDFG]", ""),
          resistor("MIL-R-39017", "(?<style>RLR[0-9]{2})(?<char>[A-Z])", FOUR, "[FG]", RATE),
          resistor("MIL-R-22684", "(?<style>RL[0-9]{2})(?<char>[A-Z])", THREE, "[GJ]", ""),
          resistor("MIL-R-39008", "(?<style>RCR[0-9]{2})(?<char>[A-Z])", THREE, "[JKM]", RATE),
          resistor("MIL-R-11", "(?<style>RC[0-9]{2})(?<char>[A-Z]{2})", THREE, "[JKM]", ""),
          capacitor("MIL-C-11015", "(?<style>CK[0-9]{2})(?<char>[A-Z]{2})", "", "[JKM]", ""),
          capacitor("MIL-C-39003", "(?<style>CSR[0-9]{2})", "(?<volts>[B-J])", "[JKM]", RATE),
          capacitor(
              "MIL-C-5",
              "(?<style>CM[0-9]{2})(?<char>[A-F])",
              "(?<volts>[A-E])",
              "[FGJKM]",
              "(?:[0-9N][0-9])?"));

  private static final Map<String, Double> COMPOSITION_WATTS =
      Map.of("05", 0.125, "07", 0.25, "20", 0.5, "32", 1.0, "42", 2.0);

  private static final Map<String, Double> TANTALUM_VOLTS =
      Map.of(
          "B", 6.0, "C", 10.0, "D", 15.0, "E", 20.0, "F", 35.0, "G", 50.0, "H", 75.0, "J", 100.0);

  private static final Map<String, Double> MICA_VOLTS =
      Map.of("A", 100.0, "B", 250.0, "C", 300.0, "D", 500.0, "E", 600.0);

  private static Style resistor(
      String specification, String style, String value, String tolerances, String rate) {
    String regex = style + value + "(?<tol>" + tolerances + ")" + rate;
    return Style.of(specification, Quantity.RESISTANCE, regex);
  }

  private static Style capacitor(
      String specification, String style, String volts, String tolerances, String rate) {
    String regex = style + volts + THREE + "(?<tol>" + tolerances + ")" + rate;
    return Style.of(specification, Quantity.CAPACITANCE, regex);
  }

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (text.length() < 9 || text.length() > 13) {
      return Optional.empty();
    }
    for (Style style : STYLES) {
      Matcher matcher = style.pattern().matcher(text);
      if (matcher.matches()) {
        return reading(style, matcher).map(each -> MarkingReadings.read(List.of(each)));
      }
    }
    return Optional.empty();
  }

  private static Optional<ValueReading> reading(Style style, Matcher matcher) {
    char letter = matcher.group("tol").charAt(0);
    double value = value(matcher.group("value"), style.quantity());
    Optional<Tolerance> tolerance =
        ToleranceLetter.of(letter)
            .flatMap(l -> l.meanings(style.quantity(), value).stream().findFirst());
    String why = "type designation of " + style.specification() + " (from memory)";
    ValueReading plain =
        new ValueReading(
            new Amount(style.quantity(), value), tolerance, ratings(matcher), List.of(), why);
    return Optional.of(plain.with(traits(style, matcher), ""));
  }

  /** Three or four characters: figures and the count of zeros, or R in place of the point. */
  private static double value(String code, Quantity quantity) {
    int unit = quantity == Quantity.CAPACITANCE ? -12 : 0;
    int point = code.indexOf('R');
    if (point >= 0) {
      long digits = Long.parseLong(code.replace("R", ""));
      return DecimalParser.value(digits, unit - (code.length() - 1 - point));
    }
    int last = code.length() - 1;
    return DecimalParser.value(
        Long.parseLong(code.substring(0, last)), unit + code.charAt(last) - '0');
  }

  private static List<Amount> ratings(Matcher matcher) {
    String style = group(matcher, "style");
    String volts = group(matcher, "volts");
    String size = style.substring(style.length() - 2);
    if (style.startsWith("RC") && COMPOSITION_WATTS.containsKey(size)) {
      return List.of(new Amount(Quantity.POWER, COMPOSITION_WATTS.getOrDefault(size, 0.0)));
    }
    Map<String, Double> table = style.startsWith("CSR") ? TANTALUM_VOLTS : MICA_VOLTS;
    return Optional.ofNullable(table.get(volts)).stream()
        .map(result -> new Amount(Quantity.VOLTAGE, result))
        .toList();
  }

  private static List<MarkTrait> traits(Style style, Matcher matcher) {
    List<MarkTrait> traits = new ArrayList<>();
    String name = matcher.group("style");
    traits.add(MarkTrait.of("style", name, "as " + style.specification() + " defines it"));
    String characteristic = group(matcher, "char");
    if (!characteristic.isEmpty()) {
      traits.add(
          MarkTrait.of(
              "characteristic", characteristic, "as " + style.specification() + " defines it"));
    }
    String rate = group(matcher, "rate");
    if (!rate.isEmpty()) {
      traits.add(MarkTrait.of("failure rate", rate, rate(rate)));
    }
    return traits;
  }

  private static String rate(String letter) {
    return switch (letter) {
      case "M" -> "1 % in 1000 h";
      case "P" -> "0.1 % in 1000 h";
      case "R" -> "0.01 % in 1000 h";
      case "S" -> "0.001 % in 1000 h";
      default -> "as the specification defines it";
    };
  }

  /** A group that this style may not have; its absence is no error. */
  private static String group(Matcher matcher, String name) {
    if (!matcher.pattern().pattern().contains("?<" + name + ">")) {
      return "";
    }
    return Optional.ofNullable(matcher.group(name)).orElse("");
  }
}
