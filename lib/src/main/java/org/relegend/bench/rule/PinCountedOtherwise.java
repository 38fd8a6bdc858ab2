package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;

/** A reading at a pin that the drawing has on another net: which of the two was meant? */
final class PinCountedOtherwise implements ReadingRule {
  @Override
  public String code() {
    return "pin-drawn-otherwise";
  }

  @Override
  public String source() {
    return "common practice: pins counted from a drawing that the board doesn't follow";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Reading reading : unit.job().currentReadings()) {
      if (reading.at() instanceof Subject.OfPin of) {
        unit.circuit()
            .index()
            .drawnOtherwise(of.pin())
            .ifPresent(
                other ->
                    found.add(
                        new RuleFinding(
                            code(),
                            Severity.WARNING,
                            List.of(reading.at()),
                            "The reading at %s counts for %s, which the copper joins it to; the drawing has %s there."
                                .formatted(
                                    unit.name(of.pin()),
                                    unit.netOf(of.pin()).map(unit::name).orElse("no net"),
                                    other.drawn()),
                            "If the pin was counted from the drawing, read again at the net's other"
                                + " parts.",
                            source(),
                            List.of())));
      }
    }
    return found;
  }
}
