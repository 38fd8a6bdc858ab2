package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Condition;
import org.relegend.bench.State;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/**
 * A part still original whose twin was renewed: somebody had a reason, and the two are of an age.
 */
final class TwinReplaced implements Rule {
  @Override
  public String code() {
    return "twin-replaced";
  }

  @Override
  public String source() {
    return "common practice: twins are of one make and age, and tend to fail alike";
  }

  @Override
  public List<Finding> inspect(Unit unit) {
    List<Finding> found = new ArrayList<>();
    for (Condition condition : unit.job().conditions()) {
      Optional<PartId> twin = unit.twins().part(condition.part());
      boolean renewed =
          twin.flatMap(unit.job()::condition).map(c -> c.is(State.REPLACED)).orElse(false);
      if (condition.is(State.REPLACED) && twin.isPresent() && !renewed) {
        found.add(finding(unit, condition.part(), twin.get()));
      }
    }
    return found;
  }

  private Finding finding(Unit unit, PartId renewed, PartId old) {
    return new Finding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(renewed), Subject.of(old)),
        "%s was replaced and its twin %s was not.".formatted(unit.name(renewed), unit.name(old)),
        "Ask why, and look at %s.".formatted(unit.name(old)),
        source(),
        List.of(
            new Blame(
                old,
                Blame.WEAK,
                "its twin %s was replaced by somebody, for some reason"
                    .formatted(unit.name(renewed)))));
  }
}
