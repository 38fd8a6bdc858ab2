package org.relegend.bench.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.bench.Instrument;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.map.NameRules;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * Reads the conditions of a reading as people write them, divided by semicolons or commas: {@code
 * power on; against VN; meter 10M; x10 probe 15p; lifted; limit 5 mV}. What isn't understood is
 * kept as words.
 *
 * @param limit how far the node may lie from its twin, where that was said
 */
public record TypedSetup(MeasurementSetup setting, Optional<Limit> limit) {
  /** A limit, as a fraction or in volts. */
  public record Limit(double fraction, double volts) {
    /** For this node. */
    public NodeLimit at(Subject subject) {
      return new NodeLimit(subject, fraction, volts);
    }
  }

  /** No meter for volts takes less (common practice: 1 kilohm per volt and up). */
  private static final double LEAST_OHMS = 1000;

  private static final Pattern POWER = Pattern.compile("(?:power(?:ed)?\\s*(on|off)?|(unpowered))");
  private static final Pattern AGAINST =
      Pattern.compile("(?i)(?:node\\s+)?(?:against|to|ref(?:erence)?)\\s+(\\S+)");
  private static final Pattern METER =
      Pattern.compile("(?i)(?:meter\\s+([0-9].*)|([0-9.]+\\s*[kMG]?\\S*)\\s+(?:meter|input))");
  private static final Pattern PROBE =
      Pattern.compile("(?i)(?:x\\s*(10?)\\s*probe|probe\\s*x\\s*(10?))\\s*([0-9.]+\\s*p\\S*)?");
  private static final Pattern SENSITIVITY =
      Pattern.compile(
          "(?i)([0-9.]+\\s*k?)\\s*(?:ohm|\u03a9)?\\s*/\\s*V(?:\\s+meter)?\\s*,?\\s+([0-9.]+)\\s*V\\s+range");
  private static final Pattern LIMIT = Pattern.compile("(?i)limit\\s+(\\S+(?:\\s*\\S+)?)");

  /**
   * Reads conditions.
   *
   * @param usual the instrument while none is named
   * @throws IllegalArgumentException with one sentence where a figure in it is none
   */
  public static TypedSetup parse(String text, Instrument usual) {
    return new Parser(usual).parse(text);
  }

  /**
   * Reads a limit alone: "5 mV", "2 %".
   *
   * @throws IllegalArgumentException with one sentence where it is none
   */
  public static Limit limit(String text) {
    try {
      Optional<Limit> limit = parse("limit " + text.strip(), Instrument.UNKNOWN).limit();
      if (limit.isPresent()) {
        return limit.get();
      }
    } catch (IllegalArgumentException unread) {
      throw new IllegalArgumentException(noLimit(text), unread);
    }
    throw new IllegalArgumentException(noLimit(text));
  }

  /**
   * Reads the input resistance of a meter, "10M", in ohms.
   *
   * @throws IllegalArgumentException with one sentence where it is none, or none that a meter has
   */
  public static double inputOhms(String text) {
    String plain = text.strip().replaceFirst("(?i)\\s*ohms?\\s*$", "").replace("Mohm", "M");
    return requireInput(TypedReading.parse(plain, Quantity.RESISTANCE).value(), text);
  }

  /**
   * The ohms that were read from this text, if a meter can have them; 0 stands for unknown.
   *
   * @throws IllegalArgumentException with one sentence where no meter has so little
   */
  public static double requireInput(double ohms, String text) {
    if (ohms != 0 && ohms < LEAST_OHMS) {
      throw new IllegalArgumentException(
          "\"%s\" is too little for the input of a meter: M stands for millions of ohms, m for thousandths, so write 10M"
              .formatted(NameRules.printable(text.strip())));
    }
    return ohms;
  }

  private static String noLimit(String text) {
    return "\"%s\" is no limit: write it like 5 mV or 2 %%".formatted(NameRules.printable(text));
  }

  private static final class Parser {
    private String against = "";
    private Instrument instrument;
    private MeasurementSetup.Power power = MeasurementSetup.Power.UNSTATED;
    private boolean lifted;
    private Optional<Limit> limit = Optional.empty();
    private final List<String> words = new ArrayList<>();

    Parser(Instrument usual) {
      instrument = usual;
    }

    TypedSetup parse(String text) {
      for (String piece : withoutSensitivity(text).split("[;\n]", -1)) {
        if (!understood(piece.strip())) {
          for (String part : piece.split(",", -1)) {
            String plain = part.strip();
            if (!plain.isEmpty() && !understood(plain)) {
              words.add(plain);
            }
          }
        }
      }
      return new TypedSetup(
          new MeasurementSetup(against, instrument, power, lifted, String.join("; ", words)),
          limit);
    }

    private boolean understood(String piece) {
      return power(piece)
          || lifted(piece)
          || against(piece)
          || probe(piece)
          || meter(piece)
          || limit(piece);
    }

    private boolean power(String piece) {
      Matcher found = POWER.matcher(piece.toLowerCase(Locale.ROOT));
      if (found.matches()) {
        boolean off = "off".equals(found.group(1)) || found.group(2) != null;
        power = off ? MeasurementSetup.Power.OFF : MeasurementSetup.Power.ON;
      }
      return found.matches();
    }

    private boolean lifted(String piece) {
      switch (piece.toLowerCase(Locale.ROOT)) {
        case "lifted", "one leg lifted", "out of circuit", "out-of-circuit", "removed" ->
            lifted = true;
        case "in circuit", "in-circuit" -> lifted = false;
        default -> {
          return false;
        }
      }
      return true;
    }

    private boolean against(String piece) {
      Matcher found = AGAINST.matcher(piece);
      if (found.matches()) {
        against = found.group(1);
      }
      return found.matches();
    }

    /** A moving-coil meter: ohms per volt times its range. It may be written with a comma. */
    private String withoutSensitivity(String text) {
      Matcher found = SENSITIVITY.matcher(text);
      if (!found.find()) {
        return text;
      }
      double perVolt = amount(found.group(1), Quantity.RESISTANCE);
      instrument =
          new Instrument(found.group(), perVolt * amount(found.group(2), Quantity.VOLTAGE), 0);
      return text.substring(0, found.start()) + text.substring(found.end());
    }

    private boolean probe(String piece) {
      Matcher found = PROBE.matcher(piece);
      if (!found.matches()) {
        return false;
      }
      String times = found.group(1) == null ? found.group(2) : found.group(1);
      String farads = found.group(3);
      instrument =
          new Instrument(
              piece,
              times.equals("10") ? 10e6 : 1e6,
              farads == null ? 0 : amount(farads, Quantity.CAPACITANCE));
      return true;
    }

    private boolean meter(String piece) {
      Matcher found = METER.matcher(piece);
      if (found.matches()) {
        String text = found.group(1) == null ? found.group(2) : found.group(1);
        instrument = new Instrument("", inputOhms(text), 0);
      }
      return found.matches();
    }

    private boolean limit(String piece) {
      Matcher found = LIMIT.matcher(piece);
      if (!found.matches()) {
        return false;
      }
      String text = found.group(1).strip();
      limit =
          Optional.of(
              text.endsWith("%")
                  ? new Limit(amount(text.replace("%", ""), Quantity.NUMBER) / 100, 0)
                  : new Limit(0, amount(text, Quantity.VOLTAGE)));
      return true;
    }

    private static double amount(String text, Quantity quantity) {
      Amount amount = TypedReading.parse(text.strip(), quantity);
      if (amount.value() < 0) {
        throw new IllegalArgumentException("\"%s\" can't be negative here".formatted(text.strip()));
      }
      return amount.value();
    }
  }
}
