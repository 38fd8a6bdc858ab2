package org.relegend.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Disc varistors (makers' data sheets, from memory): "14D431K" tells the volts at 1 mA by a
 * three-figure code with its tolerance, "S14K275" and "V130LA10A" the highest alternating volts.
 */
final class VaristorMark implements MarkForm {
  private static final Pattern AT_1_MA =
      Pattern.compile("(?<disc>[0-9]{2}D)(?<code>[0-9]{3})(?<tol>[JKLM])");

  private static final Pattern CODE_FIRST =
      Pattern.compile("(?<code>[0-9]{3})(?<tol>[JKLM])(?<disc>D[0-9]{2})");

  private static final Pattern HIGHEST_AC =
      Pattern.compile(
          "(?:(?:SIOV-?)?(?<disc>S[0-9]{2})(?<letter>[JKLM])(?<volts>[0-9]{2,4})"
              + "|V(?<volts2>[0-9]{2,4})(?<series>LA)[0-9]{1,2}[A-C]?)");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.is(PartClass.VARISTOR)) {
      return Optional.empty();
    }
    for (Pattern pattern : List.of(AT_1_MA, CODE_FIRST)) {
      Matcher matcher = pattern.matcher(text);
      if (matcher.matches()) {
        return Optional.of(MarkingReadings.read(List.of(atMilliampere(matcher))));
      }
    }
    Matcher highest = HIGHEST_AC.matcher(text);
    return highest.matches()
        ? Optional.of(MarkingReadings.read(List.of(highest(highest))))
        : Optional.empty();
  }

  private static ValueReading atMilliampere(Matcher matcher) {
    String code = matcher.group("code");
    double volts = DecimalParser.value(Long.parseLong(code.substring(0, 2)), code.charAt(2) - '0');
    Optional<Tolerance> tolerance =
        switch (matcher.group("tol")) {
          case "J" -> Optional.of(Tolerance.fraction(0.05));
          case "K" -> Optional.of(Tolerance.fraction(0.10));
          case "M" -> Optional.of(Tolerance.fraction(0.20));
          default -> Optional.of(Tolerance.fraction(0.15));
        };
    return reading(new Amount(Quantity.VOLTAGE, volts), tolerance, "volts at 1 mA")
        .with(List.of(disc(matcher.group("disc"))), "");
  }

  private static ValueReading highest(Matcher matcher) {
    boolean series = matcher.group("series") != null;
    String volts = series ? matcher.group("volts2") : matcher.group("volts");
    Amount amount = new Amount(Quantity.VOLTAGE, Double.parseDouble(volts), Waveform.AC);
    ValueReading plain = reading(amount, Optional.empty(), "highest alternating volts");
    if (series) {
      MarkTrait la = MarkTrait.of("series", matcher.group("series"), "as its maker defines it");
      return plain.with(List.of(la), "");
    }
    MarkTrait letter =
        MarkTrait.of("tolerance of the volts at 1 mA", matcher.group("letter"), "IEC 60062 letter");
    return plain.with(List.of(disc(matcher.group("disc")), letter), "");
  }

  private static MarkTrait disc(String code) {
    return MarkTrait.of("disc", code, "diameter in millimetres");
  }

  private static ValueReading reading(Amount amount, Optional<Tolerance> tolerance, String what) {
    String why = what + ", as makers' data sheets mark discs (from memory)";
    return new ValueReading(amount, tolerance, List.of(), List.of(), why);
  }
}
