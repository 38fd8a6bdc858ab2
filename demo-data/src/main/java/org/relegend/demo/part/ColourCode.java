package org.relegend.demo.part;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.demo.ray.Paint;

/** Resistor bands by IEC 60062: two figures, multiplier, 5 % gold. */
final class ColourCode {
  private static final List<Paint> FIGURES =
      List.of(
          Paint.of(0x161413, 0.4),
          Paint.of(0x5E2F17, 0.4),
          Paint.of(0xB3201C, 0.4),
          Paint.of(0xDD6A18, 0.4),
          Paint.of(0xE3C21C, 0.4),
          Paint.of(0x2C7A35, 0.4),
          Paint.of(0x2446A0, 0.4),
          Paint.of(0x6F3A8C, 0.4),
          Paint.of(0x7E7F82, 0.4),
          Paint.of(0xE9E7E0, 0.4));
  private static final Paint GOLD = Paint.metal(0xB98A35, 0.4);
  private static final Pattern VALUE = Pattern.compile("(\\d+)([RkM])(\\d*).*");

  private ColourCode() {}

  /** The four bands of a value written like 4k7, 100R or 1M, from the end where reading starts. */
  static List<Paint> bands(String value) {
    List<Integer> digits = digits(value);
    return List.of(
        FIGURES.get(digits.get(0)), FIGURES.get(digits.get(1)), FIGURES.get(digits.get(2)), GOLD);
  }

  /** Two figures and the power of ten. */
  static List<Integer> digits(String value) {
    Matcher parts = VALUE.matcher(value);
    if (!parts.matches()) {
      throw new IllegalArgumentException("not a resistor value: " + value);
    }
    String whole = parts.group(1) + parts.group(3);
    int power = parts.group(2).equals("M") ? 6 : parts.group(2).equals("k") ? 3 : 0;
    power -= parts.group(3).length();
    String figures = whole;
    while (figures.length() < 2) {
      figures += "0";
      power--;
    }
    power += figures.length() - 2;
    return List.of(figures.charAt(0) - '0', figures.charAt(1) - '0', power);
  }
}
