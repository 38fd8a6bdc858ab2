package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.PreferredSeries;
import org.relegend.marking.Tolerance;
import org.relegend.marking.ValueReading;

/**
 * Values that the preferred series of IEC 60063 don't have: often a digit misread, sometimes an old
 * or a selected part. Where a tolerance is told, its own series counts, and E24, in which close
 * parts are sold too (common practice); else any series does.
 */
final class ValueOutsideSeries implements Check {
  @Override
  public String code() {
    return "value-outside-series";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : context.map().parts()) {
      if (context.kind(part).filter(ValueOutsideSeries::isMadeInSeries).isPresent()) {
        inspect(part, KindValues.read(context, part).readings(), findings);
      }
    }
    return findings;
  }

  private static boolean isMadeInSeries(Kind kind) {
    return switch (kind.quantity()) {
      case OHM, FARAD, HENRY ->
          List.of("resistor", "capacitor", "inductor").contains(kind.family());
      default -> false;
    };
  }

  /** A text with several readings is outside only if none of them is inside. */
  private void inspect(Part part, List<ValueReading> readings, List<Finding> findings) {
    if (readings.isEmpty() || readings.stream().anyMatch(ValueOutsideSeries::isInside)) {
      return;
    }
    ValueReading likeliest = readings.get(0);
    findings.add(
        new Finding(
            code(),
            Severity.INFORMATION,
            List.of(Subject.of(part.id())),
            "%s: %s is not in %s; the nearest is %s"
                .formatted(
                    part.designator(),
                    likeliest.amount().text(),
                    series(likeliest)
                        .map(s -> "the %s series of its tolerance".formatted(s.name()))
                        .orElse("any preferred series"),
                    nearest(likeliest)),
            "Look again at the marking; old and selected parts may well have such a value."));
  }

  private static boolean isInside(ValueReading reading) {
    double value = reading.amount().value();
    boolean isPart = value > 1e-15 && value < 1e15;
    // a can's value is the sum of its sections
    return !isPart
        || !reading.sections().isEmpty()
        || series(reading)
            .map(series -> series.contains(value) || PreferredSeries.E24.contains(value))
            .orElseGet(() -> PreferredSeries.coarsestWith(value).isPresent());
  }

  /** The series of the tolerance; none where no tolerance is told as a fraction. */
  private static Optional<PreferredSeries> series(ValueReading reading) {
    return reading
        .tolerance()
        .filter(tolerance -> tolerance.basis() == Tolerance.Basis.FRACTION)
        .map(t -> PreferredSeries.pairedWith(Math.max(-t.low(), t.high())));
  }

  private static String nearest(ValueReading reading) {
    PreferredSeries series = series(reading).orElse(PreferredSeries.E24);
    double nearest = series.around(reading.amount().value()).nearest();
    return new Amount(reading.amount().quantity(), nearest).text();
  }
}
