package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** Two readings of one place under the same conditions that differ: the later one counts. */
final class ReadingsDisagree implements ReadingRule {
  private record Place(Subject at, Quantity quantity) {}

  @Override
  public String code() {
    return "readings-disagree";
  }

  @Override
  public String source() {
    return "common practice: an intermittent fault, a changed setting, or a slipped probe";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    Map<Place, List<Reading>> byPlace = new LinkedHashMap<>();
    for (Reading reading : unit.job().currentReadings()) {
      byPlace
          .computeIfAbsent(new Place(reading.at(), reading.quantity()), p -> new ArrayList<>())
          .add(reading);
    }
    List<RuleFinding> found = new ArrayList<>();
    for (List<Reading> readings : byPlace.values()) {
      Reading first = readings.get(0);
      for (Reading later : readings) {
        if (first.setting().alike(later.setting()) && differ(unit, first, later)) {
          found.add(finding(unit, first, later));
          break;
        }
      }
    }
    return found;
  }

  private static boolean differ(UnitReadings unit, Reading a, Reading b) {
    double difference = Math.abs(a.value() - b.value());
    return a.quantity() == Quantity.VOLTAGE
        ? difference
            > unit.job().limit(a.at()).at(Math.max(Math.abs(a.value()), Math.abs(b.value())))
        : difference > 0.05 * Math.max(Math.abs(a.value()), Math.abs(b.value()));
  }

  private RuleFinding finding(UnitReadings unit, Reading first, Reading later) {
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(first.at()),
        "%s read %s and, under the same conditions, %s (readings %s and %s). Both are kept; the last one counts."
            .formatted(
                unit.map().nameOf(first.at()),
                text(first.amount()),
                text(later.amount()),
                first.id(),
                later.id()),
        "Read it once more without touching anything else: pressure on a joint, warmth or a setting"
            + " may have changed.",
        source(),
        List.of());
  }

  private static String text(Amount amount) {
    return amount.text(4);
  }
}
