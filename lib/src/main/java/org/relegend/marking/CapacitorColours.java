package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Capacitors marked by colours, from memory of IEC 60062 and makers' data: tantalum beads (two
 * figures, spot, volts; in microfarads), striped polyester films (two figures, multiplier in
 * picofarads, tolerance, volts) and tubular ceramics (temperature coefficient before the figures).
 * Such parts were made in E24 values only (common practice); other readings are dropped. Coils use
 * the resistors' bands in microhenries.
 */
final class CapacitorColours implements MarkForm {
  private static final Map<BandColour, Integer> BEAD_SPOT =
      Map.of(BandColour.BLACK, 0, BandColour.BROWN, 1, BandColour.GREY, -2, BandColour.WHITE, -1);

  private static final Map<BandColour, Double> BEAD_VOLTS =
      Map.of(
          BandColour.WHITE, 3.0,
          BandColour.YELLOW, 6.3,
          BandColour.BLACK, 10.0,
          BandColour.GREEN, 16.0,
          BandColour.BLUE, 20.0,
          BandColour.GREY, 25.0,
          BandColour.PINK, 35.0);

  private static final Map<BandColour, Double> FILM_TOLERANCE =
      Map.of(BandColour.BLACK, 0.20, BandColour.WHITE, 0.10, BandColour.GREEN, 0.05);

  private static final Map<BandColour, Double> FILM_VOLTS =
      Map.of(BandColour.BROWN, 100.0, BandColour.RED, 250.0, BandColour.YELLOW, 400.0);

  /** Of ceramics above 10 pF; below, sources disagree and none is told. */
  private static final Map<BandColour, Double> CERAMIC_TOLERANCE =
      Map.of(
          BandColour.BLACK, 0.20,
          BandColour.BROWN, 0.01,
          BandColour.RED, 0.02,
          BandColour.GREEN, 0.05,
          BandColour.WHITE, 0.10);

  private static final Map<BandColour, String> COEFFICIENT =
      Map.of(
          BandColour.BLACK, "NP0",
          BandColour.BROWN, "N33",
          BandColour.RED, "N75",
          BandColour.ORANGE, "N150",
          BandColour.YELLOW, "N220",
          BandColour.GREEN, "N330",
          BandColour.BLUE, "N470",
          BandColour.VIOLET, "N750");

  private static final double SMALLEST_CERAMIC_WITH_PERCENT = 10e-12;

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    List<BandColour> colours = BandColour.list(text);
    if (colours.isEmpty()) {
      return Optional.empty();
    }
    List<ValueReading> readings = new ArrayList<>();
    if (context.may(PartClass.CAPACITOR)) {
      bead(colours).ifPresent(readings::add);
      film(colours).ifPresent(readings::add);
      ceramic(colours).ifPresent(readings::add);
      readings.removeIf(each -> !PreferredSeries.E24.contains(each.amount().value()));
    } else if (context.may(PartClass.INDUCTOR)) {
      ColourBands.read(colours).readings().stream()
          .filter(each -> each.value().amount().value() > 0)
          .forEach(each -> readings.add(coil(each.value())));
    }
    return readings.isEmpty() ? Optional.empty() : Optional.of(MarkingReadings.read(readings));
  }

  private static ValueReading coil(ValueReading bands) {
    Amount ohms = bands.amount();
    Amount henries =
        new Amount(Quantity.INDUCTANCE, DecimalParser.value(Math.round(ohms.value() * 1000), -9));
    String why = bands.why() + "; in µH on a coil (from memory)";
    return new ValueReading(henries, bands.tolerance(), List.of(), List.of(), why);
  }

  private static Optional<ValueReading> bead(List<BandColour> colours) {
    if (colours.size() != 4) {
      return Optional.empty();
    }
    Optional<Integer> zeros = Optional.ofNullable(BEAD_SPOT.get(colours.get(2)));
    Optional<Double> volts = Optional.ofNullable(BEAD_VOLTS.get(colours.get(3)));
    String why = "tantalum bead: two figures, spot and volts (from memory)";
    return volts.isEmpty()
        ? Optional.empty()
        : zeros
            .flatMap(spot -> value(colours.get(0), colours.get(1), spot - 6))
            .map(farads -> reading(farads, Optional.empty(), volts, why));
  }

  private static Optional<ValueReading> film(List<BandColour> colours) {
    int size = colours.size();
    if (size < 3 || size > 5 || !multiplies(colours.get(2))) {
      return Optional.empty();
    }
    Optional<Double> tolerance =
        size == 3 ? Optional.of(0.20) : Optional.ofNullable(FILM_TOLERANCE.get(colours.get(3)));
    Optional<Double> volts =
        size < 5 ? Optional.empty() : Optional.ofNullable(FILM_VOLTS.get(colours.get(4)));
    if (tolerance.isEmpty() || (size == 5 && volts.isEmpty())) {
      return Optional.empty();
    }
    String why = "stripes: two figures, multiplier in pF, tolerance, volts (from memory)";
    return value(colours.get(0), colours.get(1), colours.get(2).exponent() - 12)
        .map(farads -> reading(farads, tolerance, volts, why));
  }

  private static Optional<ValueReading> ceramic(List<BandColour> colours) {
    if (colours.size() != 5 || !multiplies(colours.get(3))) {
      return Optional.empty();
    }
    Optional<MarkTrait> coefficient =
        Optional.ofNullable(COEFFICIENT.get(colours.get(0)))
            .map(c -> MarkTrait.of("temperature coefficient", c, "EIA RS-198, from memory"));
    Optional<Double> tolerance = Optional.ofNullable(CERAMIC_TOLERANCE.get(colours.get(4)));
    if (coefficient.isEmpty() || tolerance.isEmpty()) {
      return Optional.empty();
    }
    String why = "tubular ceramic, coefficient first (from memory)";
    return value(colours.get(1), colours.get(2), colours.get(3).exponent() - 12)
        .filter(farads -> farads >= SMALLEST_CERAMIC_WITH_PERCENT)
        .map(farads -> reading(farads, tolerance, Optional.empty(), why))
        .map(plain -> plain.with(List.of(coefficient.get()), ""));
  }

  /** Black to green: 1 to 100 000; more picofarads no striped part has. */
  private static boolean multiplies(BandColour colour) {
    return colour.digit().isPresent() && colour.exponent() <= BandColour.GREEN.exponent();
  }

  private static Optional<Double> value(BandColour tens, BandColour ones, int exponent) {
    if (tens.digit().isEmpty() || ones.digit().isEmpty() || tens == BandColour.BLACK) {
      return Optional.empty();
    }
    int digits = tens.digit().getAsInt() * 10 + ones.digit().getAsInt();
    return Optional.of(DecimalParser.value(digits, exponent));
  }

  private static ValueReading reading(
      double farads, Optional<Double> tolerance, Optional<Double> volts, String why) {
    return new ValueReading(
        new Amount(Quantity.CAPACITANCE, farads),
        tolerance.map(Tolerance::fraction),
        volts.map(result -> new Amount(Quantity.VOLTAGE, result)).stream().toList(),
        List.of(),
        why);
  }
}
