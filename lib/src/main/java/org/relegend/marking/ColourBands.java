package org.relegend.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Resistor colour bands to values and back, after IEC 60062: three bands are two figures and the
 * multiplier (±20 %), a fourth is the tolerance; five have three figures; a sixth is the
 * temperature coefficient.
 */
public final class ColourBands {
  /** Per cent per 1000 hours: 1, 0.1, 0.01, 0.001 (military reliability bands, from memory). */
  private static final Set<BandColour> FAILURE_RATES =
      Set.of(BandColour.BROWN, BandColour.RED, BandColour.ORANGE, BandColour.YELLOW);

  private ColourBands() {}

  /**
   * Every reading of the bands, those whose value is in a preferred series first. The first band is
   * the one nearest the end of the body; as that is often hard to see, the bands are read from the
   * other end too.
   */
  public static MarkingReadings<BandReading> read(List<BandColour> bands) {
    if (bands.equals(List.of(BandColour.BLACK))) {
      return MarkingReadings.read(List.of(link()));
    }
    if (bands.size() < 3 || bands.size() > 6) {
      return MarkingReadings.malformed(
          "%d bands: a resistor has 3 to 6, or one black band as a link.".formatted(bands.size()));
    }
    List<BandReading> readings = new ArrayList<>(oneWay(bands, false));
    List<BandColour> reversed = new ArrayList<>(bands);
    Collections.reverse(reversed);
    if (!reversed.equals(bands)) {
      readings.addAll(oneWay(reversed, true));
    }
    if (readings.isEmpty()) {
      return MarkingReadings.malformed(
          "%s: from neither end do these bands make figures, a multiplier and a tolerance. Check the colours."
              .formatted(names(bands)));
    }
    readings.sort(Comparator.comparing(ColourBands::unusual));
    return MarkingReadings.read(readings);
  }

  /**
   * The bands that a resistor of this value carries: two figures from 5 % up, three below; three
   * bands for 20 %. Orange, yellow and grey tolerances are those of the 2016 edition.
   *
   * @param ohms zero for a link, which has one black band
   * @param tolerance as a fraction: 0.05 is ±5 %
   * @throws IllegalArgumentException if no bands can tell that value or tolerance
   */
  public static List<BandColour> of(double ohms, double tolerance) {
    if (ohms == 0) {
      return List.of(BandColour.BLACK);
    }
    int figures = tolerance >= 0.05 ? 2 : 3;
    List<BandColour> bands = new ArrayList<>(figureBands(ohms, figures));
    if (tolerance != 0.20) {
      bands.add(toleranceBand(tolerance));
    }
    return List.copyOf(bands);
  }

  private static List<BandColour> figureBands(double ohms, int figures) {
    if (!(ohms > 0) || ohms > 1e12) {
      throw new IllegalArgumentException("no colour bands for " + ohms + " ohms");
    }
    int exponent = (int) Math.floor(Math.log10(ohms) + 1e-9) - figures + 1;
    long digits = Math.round(ohms / Math.pow(10, exponent));
    double result = DecimalParser.value(digits, exponent);
    if (Math.abs(result - ohms) > 1e-9 * ohms) {
      throw new IllegalArgumentException(
          "%s ohms has more than the %d figures of its bands".formatted(ohms, figures));
    }
    List<BandColour> bands = new ArrayList<>();
    for (char figure : Long.toString(digits).toCharArray()) {
      bands.add(colour(each -> each.digit().equals(OptionalInt.of(figure - '0'))).orElseThrow());
    }
    bands.add(
        colour(each -> each.exponent() == exponent)
            .orElseThrow(
                () -> new IllegalArgumentException("no colour multiplies for " + ohms + " ohms")));
    return bands;
  }

  private static Optional<BandColour> colour(Predicate<BandColour> wanted) {
    return Arrays.stream(BandColour.values()).filter(wanted).findFirst();
  }

  private static BandColour toleranceBand(double tolerance) {
    return colour(each -> newest(each).filter(result -> result.fraction() == tolerance).isPresent())
        .orElseThrow(
            () -> new IllegalArgumentException("no colour tells a tolerance of " + tolerance));
  }

  /** The meaning in the newest edition, which stands last. */
  private static Optional<BandColour.StatedTolerance> newest(BandColour colour) {
    List<BandColour.StatedTolerance> meanings = colour.tolerances();
    return meanings.isEmpty() ? Optional.empty() : Optional.of(meanings.get(meanings.size() - 1));
  }

  private static List<BandReading> oneWay(List<BandColour> bands, boolean reversed) {
    List<BandReading> readings = new ArrayList<>();
    int count = bands.size();
    int figures = count < 5 ? 2 : 3;
    if (count == 3) {
      add(
          bands,
          figures,
          new BandColour.StatedTolerance(0.20, "for want of a fourth band"),
          "",
          reversed,
          readings);
      return readings;
    }
    for (BandColour.StatedTolerance result : bands.get(figures + 1).tolerances()) {
      add(bands, figures, result, "", reversed, readings);
    }
    if (count == 5 && FAILURE_RATES.contains(bands.get(4))) {
      String note = "; the fifth band taken as a failure rate, as on some vintage parts";
      bands.get(3).tolerances().stream()
          .filter(result -> result.fraction() >= 0.05)
          .forEach(result -> add(bands, 2, result, note, reversed, readings));
    }
    return readings;
  }

  private static void add(
      List<BandColour> bands,
      int figures,
      BandColour.StatedTolerance result,
      String note,
      boolean reversed,
      List<BandReading> into) {
    long digits = 0;
    for (BandColour band : bands.subList(0, figures)) {
      if (band.digit().isEmpty()) {
        return;
      }
      digits = digits * 10 + band.digit().getAsInt();
    }
    boolean sixth = bands.size() == 6;
    OptionalInt coefficient = sixth ? bands.get(5).coefficient() : OptionalInt.empty();
    if (bands.get(0) == BandColour.BLACK || (sixth && coefficient.isEmpty())) {
      return;
    }
    double ohms = DecimalParser.value(digits, bands.get(figures).exponent());
    String why =
        (reversed ? "from the other end: " : "")
            + names(bands)
            + ", tolerance "
            + result.by()
            + note;
    Tolerance tolerance = Tolerance.fraction(result.fraction());
    ValueReading value =
        new ValueReading(
            new Amount(Quantity.RESISTANCE, ohms),
            Optional.of(tolerance),
            List.of(),
            List.of(),
            why);
    into.add(new BandReading(value, coefficient, bands, reversed));
  }

  private static BandReading link() {
    ValueReading value =
        new ValueReading(
            new Amount(Quantity.RESISTANCE, 0),
            Optional.empty(),
            List.of(),
            List.of(),
            "one black band marks a link (common practice)");
    return new BandReading(value, OptionalInt.empty(), List.of(BandColour.BLACK), false);
  }

  private static boolean unusual(BandReading reading) {
    return PreferredSeries.coarsestWith(reading.value().amount().value()).isEmpty();
  }

  private static String names(List<BandColour> bands) {
    List<String> names = bands.stream().map(BandColour::label).toList();
    return String.join(" ", names);
  }
}
