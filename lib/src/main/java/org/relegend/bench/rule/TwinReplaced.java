package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Condition;
import org.relegend.bench.PartState;
import org.relegend.finding.Severity;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/**
 * A part still original whose twin was renewed: somebody had a reason, and the two are of an age.
 */
final class TwinReplaced implements ReadingRule {
  @Override
  public String code() {
    return "twin-replaced";
  }

  @Override
  public String source() {
    return "common practice: twins are of one make and age, and tend to fail alike";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Condition condition : unit.job().conditions()) {
      Optional<PartId> twin = unit.twins().part(condition.part());
      boolean renewed =
          twin.flatMap(unit.job()::condition).map(c -> c.is(PartState.REPLACED)).orElse(false);
      if (condition.is(PartState.REPLACED) && twin.isPresent() && !renewed) {
        found.add(finding(unit, condition.part(), twin.get()));
      }
    }
    return found;
  }

  private RuleFinding finding(UnitReadings unit, PartId renewed, PartId old) {
    return new RuleFinding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(renewed), Subject.of(old)),
        "%s was replaced and its twin %s was not.".formatted(unit.name(renewed), unit.name(old)),
        "Ask why, and look at %s.".formatted(unit.name(old)),
        source(),
        List.of(
            new LikelihoodRatio(
                old,
                LikelihoodRatio.WEAK,
                "its twin %s was replaced by somebody, for some reason"
                    .formatted(unit.name(renewed)))));
  }
}
