package org.relegend.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Type numbers of zener diodes that tell the voltage: JEDEC families by their lists, Pro Electron
 * types by the letter and figures behind the family (BZX79C5V1), makers' ZPD and ZPY likewise. All
 * from memory of the JEDEC register, the Pro Electron rules and data books.
 */
final class ZenerType implements MarkForm {
  /** A JEDEC family: its first number and the volts from there on, as data books list them. */
  private record Family(int first, List<Double> volts) {
    boolean has(int number) {
      return number >= first && number < first + volts.size();
    }
  }

  private static final List<Family> FAMILIES =
      List.of(
          new Family(746, list("3.3 3.6 3.9 4.3 4.7 5.1 5.6 6.2 6.8 7.5 8.2 9.1 10 12")),
          new Family(
              957,
              list(
                  "6.8 7.5 8.2 9.1 10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68"
                      + " 75 82 91 100 110 120 130 150 160 180 200")),
          new Family(
              4728,
              list(
                  "3.3 3.6 3.9 4.3 4.7 5.1 5.6 6.2 6.8 7.5 8.2 9.1 10 11 12 13 15 16 18 20 22 24"
                      + " 27 30 33 36 39 43 47 51 56 62 68 75 82 91 100")),
          new Family(
              5221,
              list(
                  "2.4 2.5 2.7 2.8 3 3.3 3.6 3.9 4.3 4.7 5.1 5.6 6 6.2 6.8 7.5 8.2 8.7 9.1 10 11"
                      + " 12 13 14 15 16 17 18 19 20 22 24 25 27 28 30 33 36 39 43 47 51 56 60 62"
                      + " 68 75 82 87 91 100 110 120 130 140 150 160 170 180 190 200")),
          new Family(
              5333,
              list(
                  "3.3 3.6 3.9 4.3 4.7 5.1 5.6 6 6.2 6.8 7.5 8.2 8.7 9.1 10 11 12 13 14 15 16 17"
                      + " 18 19 20 22 24 25 27 28 30 33 36 39 43 47 51 56 60 62 68 75 82 87 91 100"
                      + " 110 120 130 140 150 160 170 180 190 200")));

  private static final Pattern JEDEC = Pattern.compile("1N(?<number>[0-9]{3,4})(?<suffix>[A-D]?)");

  private static final Pattern PRO_ELECTRON =
      Pattern.compile(
          "B(?:Z[A-Z][0-9]{2,3}|ZX|ZY)[ /-]?(?<tol>[A-E])(?<volts>[0-9]{1,3}(?:V[0-9])?)");

  private static final Pattern OTHER =
      Pattern.compile("(?:ZPD|ZPY|ZPU|ZF|ZD|MTZJ?) ?(?<volts>[0-9]{1,3}(?:[V.,][0-9])?)");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.mayOrOpen(PartClass.DIODE)) {
      return Optional.empty();
    }
    Matcher jedec = JEDEC.matcher(text);
    if (jedec.matches()) {
      return jedec(Integer.parseInt(jedec.group("number")), jedec.group("suffix"));
    }
    Matcher european = PRO_ELECTRON.matcher(text);
    if (european.matches()) {
      return text(
          volts(european.group("volts")),
          letter(european.group("tol")),
          "Pro Electron type number");
    }
    Matcher other = OTHER.matcher(text);
    return other.matches()
        ? text(volts(other.group("volts")), Optional.empty(), "maker's zener type number")
        : Optional.empty();
  }

  private static Optional<MarkingReadings<ValueReading>> jedec(int number, String suffix) {
    for (Family family : FAMILIES) {
      if (family.has(number)) {
        Optional<Tolerance> tolerance = tolerance(family.first(), suffix);
        return tolerance.isEmpty()
            ? Optional.empty()
            : text(
                family.volts().get(number - family.first()), tolerance, "JEDEC zener type number");
      }
    }
    return Optional.empty();
  }

  /** What the suffix tells differs by family; a suffix that the family hasn't leaves it unread. */
  private static Optional<Tolerance> tolerance(int first, String suffix) {
    boolean small = first == 746 || first == 4728; // bare ±10 %, A ±5 %
    return switch (suffix) {
      case "" -> Optional.of(Tolerance.fraction(small ? 0.1 : 0.2));
      case "A" -> Optional.of(Tolerance.fraction(small ? 0.05 : 0.1));
      case "B" -> small ? Optional.empty() : Optional.of(Tolerance.fraction(0.05));
      case "C" -> Optional.of(Tolerance.fraction(0.02));
      default -> Optional.of(Tolerance.fraction(0.01));
    };
  }

  /** The tolerance letters of Pro Electron diodes, which are not those of IEC 60062. */
  private static Optional<Tolerance> letter(String letter) {
    return switch (letter) {
      case "A" -> Optional.of(Tolerance.fraction(0.01));
      case "B" -> Optional.of(Tolerance.fraction(0.02));
      case "C" -> Optional.of(Tolerance.fraction(0.05));
      case "D" -> Optional.of(Tolerance.fraction(0.10));
      case "E" -> Optional.of(Tolerance.fraction(0.20));
      default -> Optional.empty();
    };
  }

  private static Optional<MarkingReadings<ValueReading>> text(
      double volts, Optional<Tolerance> tolerance, String why) {
    if (volts <= 0) {
      return Optional.empty();
    }
    Amount amount = new Amount(Quantity.VOLTAGE, volts);
    return Optional.of(
        MarkingReadings.read(
            List.of(
                new ValueReading(
                    amount, tolerance, List.of(), List.of(), why + " (from memory)"))));
  }

  private static double volts(String text) {
    return Double.parseDouble(text.replace('V', '.').replace(',', '.'));
  }

  private static List<Double> list(String volts) {
    return Stream.of(volts.split(" ", -1)).map(Double::valueOf).toList();
  }
}
