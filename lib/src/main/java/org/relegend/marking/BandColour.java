package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The colours of bands and what each stands for at each place (IEC 60062, colour code). Digits,
 * multipliers and temperature coefficients agree over all sources seen; tolerances do not, see
 * {@link #tolerances}. Short names are those of IEC 60757 (from memory).
 */
public enum BandColour {
  PINK("PK", -1, -3, -1),
  SILVER("SR", -1, -2, -1),
  GOLD("GD", -1, -1, -1),
  BLACK("BK", 0, 0, 250),
  BROWN("BN", 1, 1, 100),
  RED("RD", 2, 2, 50),
  ORANGE("OG", 3, 3, 15),
  YELLOW("YE", 4, 4, 25),
  GREEN("GN", 5, 5, 20),
  BLUE("BU", 6, 6, 10),
  VIOLET("VT", 7, 7, 5),
  GREY("GY", 8, 8, 1),
  WHITE("WH", 9, 9, -1);

  /** A tolerance and by what it is told, as "after IEC 60062". */
  record StatedTolerance(double fraction, String by) {}

  private static final Pattern BETWEEN = Pattern.compile("[ ,;/-]+");

  private static final String EVERY = "after IEC 60062";
  private static final String NEW = "after IEC 60062 of 2016";
  private static final String OLD = "after tables before 2016";

  private final String shortName;
  private final int digit;
  private final int exponent;
  private final int coefficient;

  BandColour(String shortName, int digit, int exponent, int coefficient) {
    this.shortName = shortName;
    this.digit = digit;
    this.exponent = exponent;
    this.coefficient = coefficient;
  }

  /** The colour in words, as "grey". */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The figure it stands for, 0 to 9; pink, silver and gold have none. */
  public OptionalInt digit() {
    return some(digit);
  }

  /** The power of ten it multiplies by. */
  public int exponent() {
    return exponent;
  }

  /** As temperature coefficient, in parts per million per kelvin; some colours have none. */
  public OptionalInt coefficient() {
    return some(coefficient);
  }

  /**
   * As tolerance band. The 2016 edition gave orange and yellow a meaning and, from memory, changed
   * grey from 0.05 % to 0.01 %; many tables mix the two, so grey has both. Meanings found on the
   * web that no edition has (orange 3 %, yellow 4 %, violet 0.5 %, grey 0.1 %) are left out on
   * purpose.
   */
  List<StatedTolerance> tolerances() {
    return switch (this) {
      case SILVER -> List.of(new StatedTolerance(0.10, EVERY));
      case GOLD -> List.of(new StatedTolerance(0.05, EVERY));
      case BROWN -> List.of(new StatedTolerance(0.01, EVERY));
      case RED -> List.of(new StatedTolerance(0.02, EVERY));
      case GREEN -> List.of(new StatedTolerance(0.005, EVERY));
      case BLUE -> List.of(new StatedTolerance(0.0025, EVERY));
      case VIOLET -> List.of(new StatedTolerance(0.001, EVERY));
      case ORANGE -> List.of(new StatedTolerance(0.0005, NEW));
      case YELLOW -> List.of(new StatedTolerance(0.0002, NEW));
      case GREY -> List.of(new StatedTolerance(0.0005, OLD), new StatedTolerance(0.0001, NEW));
      case PINK, BLACK, WHITE -> List.of();
    };
  }

  /** The colour of this name, as "grey", "gray" or "GY". */
  public static Optional<BandColour> named(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    for (BandColour colour : values()) {
      if (colour.name().equals(upper) || colour.shortName.equals(upper)) {
        return Optional.of(colour);
      }
    }
    return switch (upper) {
      case "GRAY" -> Optional.of(GREY);
      case "PURPLE" -> Optional.of(VIOLET);
      default -> Optional.empty();
    };
  }

  /** The colours of a text that names two or more and nothing else; else none. */
  static List<BandColour> list(String text) {
    List<BandColour> colours = new ArrayList<>();
    if (text.isEmpty() || !Character.isLetter(text.charAt(0))) {
      return colours; // most values begin with a digit and need no splitting
    }
    for (String word : BETWEEN.split(text)) {
      Optional<BandColour> colour = named(word);
      if (colour.isEmpty()) {
        return List.of();
      }
      colours.add(colour.get());
    }
    return colours.size() < 2 ? List.of() : colours;
  }

  private static OptionalInt some(int value) {
    return value < 0 ? OptionalInt.empty() : OptionalInt.of(value);
  }
}
