package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The law of a potentiometer before or behind its value: "B100K", "50KA", "10K LOG" (common
 * practice). What the letters mean changed with age and region, so each keeps all its meanings.
 * Where only the quantity is known, a letter that tells a tolerance as well is read both ways.
 */
final class PotentiometerLaw implements MarkForm {
  private static final String WORDS =
      "LINEAR|LIN|LOGARITHMIC|ANTI-?LOG|REV(?:ERSE)? ?LOG|LOG|AUDIO|RD";

  private static final String VALUE =
      "(?<value>(?:[2-4]x)?[0-9]+(?:[.,][0-9]+)?(?: ?[kKMRΩ][0-9]*| ?kΩ| ?MΩ)?)";

  private static final Pattern BEFORE = Pattern.compile("(?<law>[ABCDW]) ?" + VALUE);
  private static final Pattern BEHIND = Pattern.compile(VALUE + " ?(?<law>[ABCDW])");
  private static final Pattern WORD =
      Pattern.compile("(?<![a-z&&[^kmr]])(?:" + WORDS + ")(?![a-z])", Pattern.CASE_INSENSITIVE);

  /** Figures behind the letter in place of the point: 1K0B has a tolerance (IEC 60062). */
  private static final Pattern POINTED = Pattern.compile(".*[kKMR][0-9]+");

  private static final String DECIDES =
      "the resistance from end to wiper at half turn decides: about half is linear, about a tenth"
          + " logarithmic";

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.may(PartClass.POTENTIOMETER)) {
      return Optional.empty();
    }
    Matcher before = BEFORE.matcher(text);
    if (before.matches()) {
      return text(before.group("value"), before.group("law"), List.of());
    }
    Matcher behind = BEHIND.matcher(text);
    if (behind.matches() && lawBehind(behind.group("value"), context)) {
      String value = behind.group("value");
      return text(value, behind.group("law"), asTolerance(text, context));
    }
    return word(text, context);
  }

  private static boolean lawBehind(String value, MarkContext context) {
    boolean pot = context.is(PartClass.POTENTIOMETER);
    boolean bare = value.chars().allMatch(c -> c >= '0' && c <= '9');
    return !bare && (pot || !POINTED.matcher(value).matches());
  }

  /** Of a part that may be a fixed resistor too: B, C, D and W tell tolerances there. */
  private static List<ValueReading> asTolerance(String text, MarkContext context) {
    return context.is(PartClass.POTENTIOMETER)
        ? List.of()
        : ValueParts.of(text, context.quantity()).readings().readings().stream()
            .filter(each -> each.amount().quantity() == Quantity.RESISTANCE)
            .toList();
  }

  private static Optional<MarkingReadings<ValueReading>> word(String text, MarkContext context) {
    Matcher matcher = WORD.matcher(text);
    if (!matcher.find()) {
      return Optional.empty();
    }
    String law = matcher.group();
    String rest = text.substring(0, matcher.start()) + " " + text.substring(matcher.end());
    MarkingReadings<ValueReading> plain =
        ValueParts.of(rest.strip(), context.quantity()).readings();
    return plain.outcome() == MarkingReadings.Outcome.READ
        ? Optional.of(with(plain.readings(), law, List.of()))
        : Optional.empty();
  }

  private static Optional<MarkingReadings<ValueReading>> text(
      String value, String law, List<ValueReading> more) {
    MarkingReadings<ValueReading> plain =
        ValueParts.of(value, Optional.of(Quantity.RESISTANCE)).readings();
    if (plain.outcome() != MarkingReadings.Outcome.READ) {
      return Optional.empty();
    }
    // three figures behind a letter of law are always the code: B503
    boolean code = value.matches("[0-9]{3}");
    List<ValueReading> readings =
        plain.readings().stream().filter(each -> !code || each.why().contains("code")).toList();
    return readings.isEmpty() ? Optional.empty() : Optional.of(with(readings, law, more));
  }

  private static MarkingReadings<ValueReading> with(
      List<ValueReading> plain, String law, List<ValueReading> more) {
    List<ValueReading> readings = new ArrayList<>();
    String code = law.toUpperCase(Locale.ROOT);
    List<String> meanings = meanings(code);
    MarkTrait trait = new MarkTrait("law", code, meanings, meanings.size() > 1 ? DECIDES : "");
    for (ValueReading each : plain) {
      readings.add(each.with(List.of(trait), code + " is the law of a potentiometer"));
    }
    readings.addAll(more);
    return MarkingReadings.read(readings);
  }

  /** By common practice of each time and region; from memory. */
  private static List<String> meanings(String code) {
    return switch (code) {
      case "A" ->
          List.of(
              "logarithmic (Asian and American parts, newer European ones)",
              "linear (older European parts, and MIL-R-94)");
      case "B" ->
          List.of(
              "linear (Asian and American parts, newer European ones)",
              "logarithmic (older European parts)");
      case "C" ->
          List.of(
              "reverse logarithmic (Asian parts, older European ones)",
              "logarithmic (MIL-R-94 and older American parts)");
      case "D" -> List.of("logarithmic, flatter than A (Asian parts)", "as its maker defines it");
      case "W" -> List.of("S-shaped, for balance and tone (Asian parts)");
      case "LIN", "LINEAR" -> List.of("linear");
      case "LOG", "LOGARITHMIC", "AUDIO" -> List.of("logarithmic");
      default -> List.of("reverse logarithmic");
    };
  }
}
