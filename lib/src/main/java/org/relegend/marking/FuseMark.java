package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fuses: characteristic, rated current, breaking capacity and voltage as IEC 60127 orders them
 * (from memory), "T3.15AL250V"; and the fractions and type prefixes of American lists, "MDL 1 1/2".
 */
final class FuseMark implements MarkForm {
  private static final String TYPES = "3AG|5AG|8AG|AGC|AGX|MDL|MDX|MDA|ABC|GMA|GMC|GDA|GDB|GDC";

  private static final String AMPS =
      "(?:(?:(?<whole>[0-9]{1,2})[ -])?(?<above>[0-9]{1,2})/(?<below>[0-9]{1,3})"
          + "|(?<ampere>[0-9]{1,2}A[0-9]{1,2})"
          + "|(?<plain>[0-9]{1,5}(?:[.,][0-9]{1,3})?))";

  private static final Pattern FUSE =
      Pattern.compile(
          "(?:(?<type>"
              + TYPES
              + ")[ -]?)?"
              + "(?:(?<speed>FF|F|M|TT|T) ?)?"
              + AMPS
              + " ?(?<unit>mA|A)?"
              + "(?: ?(?<behind>FF|F|M|TT|T))?"
              + "(?: ?(?<breaking>[LHE]))?"
              + "(?:(?: ?/ ?| ?)(?<![0-9])(?<volts>[0-9]{2,4}) ?(?<wave>V ?AC|V ?DC|V~|V=|V)?)?");

  /** A number, a slash and a number, which only this form may read on a fuse. */
  private static final Pattern FRACTION = Pattern.compile(".*[0-9]/[0-9].*");

  /** The largest rating of the small American sizes; IEC 60127 begins at 32 mA (from memory). */
  private static final double MOST_AMPERES_BARE = 32;

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.mayOrOpen(PartClass.FUSE)) {
      return Optional.empty();
    }
    Matcher matcher = FUSE.matcher(text);
    boolean fuse = matcher.matches() && (!context.open() || sure(matcher));
    List<ValueReading> readings = fuse ? readings(matcher) : List.of();
    if (!readings.isEmpty()) {
      return Optional.of(MarkingReadings.read(readings));
    }
    if (context.may(PartClass.FUSE) && FRACTION.matcher(text).matches()) {
      return Optional.of(
          MarkingReadings.malformed(
              MarkingText.quoted(text)
                  + " tells no current. Write it like 1/2A, T1.6A 250V or F500mA."));
    }
    return Optional.empty();
  }

  /** Where the kind isn't known: a speed and a unit together. */
  private static boolean sure(Matcher matcher) {
    return matcher.group("speed") != null && matcher.group("unit") != null;
  }

  private static List<ValueReading> readings(Matcher matcher) {
    if (!clear(matcher)) {
      return List.of();
    }
    List<ValueReading> readings = new ArrayList<>();
    for (double amperes : amperes(matcher)) {
      if (amperes > 0) {
        Amount amount = new Amount(Quantity.CURRENT, amperes);
        ValueReading plain =
            new ValueReading(amount, Optional.empty(), ratings(matcher), List.of(), why(matcher));
        readings.add(plain.with(traits(matcher), ""));
      }
    }
    return readings;
  }

  /** Volts run on to the amperes only behind a letter or with their own V. */
  private static boolean clear(Matcher matcher) {
    boolean volts = matcher.group("volts") != null;
    boolean parted =
        matcher.group("wave") != null
            || matcher.group("breaking") != null
            || matcher.group("speed") != null;
    boolean twoSpeeds = matcher.group("speed") != null && matcher.group("behind") != null;
    return !twoSpeeds && (!volts || parted);
  }

  private static String why(Matcher matcher) {
    return matcher.group("above") != null
        ? "a fraction of an ampere (common practice)"
        : "rated current of a fuse (IEC 60127, from memory)";
  }

  private static List<Double> amperes(Matcher matcher) {
    if (matcher.group("above") != null) {
      return fraction(matcher);
    }
    boolean milli = "mA".equals(matcher.group("unit"));
    boolean bare = matcher.group("unit") == null;
    String ampere = matcher.group("ampere");
    String text = ampere != null ? ampere.replace('A', '.') : matcher.group("plain");
    Optional<Numeral> number = Numeral.at(text, 0);
    if (number.isEmpty() || (ampere != null && !bare)) {
      return List.of();
    }
    double plain = number.get().times(milli ? -3 : 0);
    boolean open = bare && ampere == null && plain >= MOST_AMPERES_BARE;
    return open ? List.of(number.get().times(-3), plain) : List.of(plain);
  }

  private static List<Double> fraction(Matcher matcher) {
    double above = Double.parseDouble(matcher.group("above"));
    double below = Double.parseDouble(matcher.group("below"));
    String whole = Optional.ofNullable(matcher.group("whole")).orElse("0");
    boolean proper = above > 0 && above < below && !"mA".equals(matcher.group("unit"));
    return proper ? List.of(Double.parseDouble(whole) + above / below) : List.of();
  }

  private static List<Amount> ratings(Matcher matcher) {
    String volts = matcher.group("volts");
    if (volts == null) {
      return List.of();
    }
    String wave = Optional.ofNullable(matcher.group("wave")).orElse("");
    Waveform form =
        wave.contains("AC") || wave.contains("~")
            ? Waveform.AC
            : wave.contains("DC") || wave.contains("=") ? Waveform.DC : Waveform.UNSTATED;
    return List.of(new Amount(Quantity.VOLTAGE, Double.parseDouble(volts), form));
  }

  private static List<MarkTrait> traits(Matcher matcher) {
    List<MarkTrait> traits = new ArrayList<>();
    String type = matcher.group("type");
    if (type != null) {
      traits.add(MarkTrait.of("fuse type", type, "as makers' lists define it"));
    }
    String speed = Optional.ofNullable(matcher.group("speed")).orElse(matcher.group("behind"));
    if (speed != null) {
      traits.add(MarkTrait.of("fuse characteristic", speed, speed(speed)));
    }
    String breaking = matcher.group("breaking");
    if (breaking != null) {
      traits.add(MarkTrait.of("breaking capacity", breaking, breaking(breaking)));
    }
    return traits;
  }

  /** IEC 60127-1, from memory. */
  private static String speed(String letters) {
    return switch (letters) {
      case "FF" -> "very quick acting";
      case "F" -> "quick acting";
      case "M" -> "medium time-lag";
      case "T" -> "time-lag";
      default -> "long time-lag";
    };
  }

  /** IEC 60127-2, from memory. */
  private static String breaking(String letter) {
    return switch (letter) {
      case "L" -> "low";
      case "H" -> "high";
      default -> "enhanced";
    };
  }
}
