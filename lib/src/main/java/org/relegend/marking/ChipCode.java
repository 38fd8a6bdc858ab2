package org.relegend.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The three-character code of 1 % chip resistors (EIA-96, from memory): two figures count the
 * member of E96, a letter multiplies. R for x0.01, which some tables have beside Y, isn't read: 10R
 * is 10 Ω after IEC 60062.
 */
final class ChipCode {
  private static final Pattern CODE = Pattern.compile("(?<rank>[0-9]{2})(?<letter>[ZYXSABHCDEF])");

  private ChipCode() {}

  /** The one reading; none where the text or the part is another. */
  static List<ValueReading> readings(String text, MarkContext context) {
    Matcher matcher = CODE.matcher(text);
    boolean chip = !context.open() && context.may(PartClass.RESISTOR);
    if (!chip || !matcher.matches()) {
      return List.of();
    }
    List<Integer> members = PreferredSeries.E96.members();
    int rank = Integer.parseInt(matcher.group("rank"));
    if (rank < 1 || rank > members.size()) {
      return List.of();
    }
    double ohms = DecimalParser.value(members.get(rank - 1), exponent(matcher.group("letter")));
    String why = "code %s of EIA-96 (from memory): member %d of E96".formatted(text, rank);
    return List.of(
        new ValueReading(
            new Amount(Quantity.RESISTANCE, ohms),
            Optional.of(Tolerance.fraction(0.01)),
            List.of(),
            List.of(),
            why));
  }

  private static int exponent(String letter) {
    return switch (letter) {
      case "Z" -> -3;
      case "Y" -> -2;
      case "X", "S" -> -1;
      case "A" -> 0;
      case "B", "H" -> 1;
      case "C" -> 2;
      case "D" -> 3;
      case "E" -> 4;
      default -> 5;
    };
  }
}
