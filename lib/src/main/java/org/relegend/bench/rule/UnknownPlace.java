package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import org.relegend.bench.Condition;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/** A reading or condition of something that the map hasn't got: kept, and of no account. */
final class UnknownPlace implements ReadingRule {
  @Override
  public String code() {
    return "not-in-the-map";
  }

  @Override
  public String source() {
    return "the map this job lies over";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Reading reading : unit.job().readings()) {
      if (!known(unit.map(), reading.at())) {
        found.add(finding(reading.at(), "reading %s is of".formatted(reading.id())));
      }
      String against = reading.setting().against();
      if (!against.isEmpty() && unit.map().net(new NetId(against)).isEmpty()) {
        found.add(
            finding(
                Subject.of(new NetId(against)),
                "reading %s was taken against".formatted(reading.id())));
      }
    }
    for (Condition condition : unit.job().conditions()) {
      if (!has(unit.map(), condition.part())) {
        found.add(finding(Subject.of(condition.part()), "a condition is of"));
      }
    }
    return found;
  }

  private static boolean has(BoardMap map, PartId part) {
    return map.parts().has(part);
  }

  private static boolean known(BoardMap map, Subject at) {
    if (at instanceof Subject.OfNet of) {
      return map.nets().has(of.net());
    }
    if (at instanceof Subject.OfPin of) {
      return map.part(of.pin().part()).flatMap(part -> part.pin(of.pin().pin())).isPresent();
    }
    if (at instanceof Subject.OfSection of) {
      return map.part(of.part()).flatMap(part -> part.section(of.section())).isPresent();
    }
    return has(map, ((Subject.OfPart) at).part());
  }

  private RuleFinding finding(Subject at, String what) {
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(at),
        "Not in the map: %s %s. It is kept and not counted.".formatted(what, at),
        "Mend the map, or enter it again at the right place.",
        source(),
        List.of());
  }
}
