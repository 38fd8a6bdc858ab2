package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.bench.LogEntry;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * Touching, pressing or cooling something changed the fault. That is a clue to an area and never to
 * the part touched alone: what is joined there and what sits beside it on the photo counts alike.
 */
final class TouchResponse implements ReadingRule {
  /** So many neighbours on the photo are named. */
  private static final int BESIDE = 4;

  @Override
  public String code() {
    return "touch";
  }

  @Override
  public String source() {
    return "common practice: a circuit that cleared on touch was renewed, and the capacitor beside it"
        + " was the fault";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (LogEntry entry : unit.job().log()) {
      boolean since = !entry.at().isBefore(unit.job().lastRepair());
      if (entry.kind() == LogEntry.Kind.TOUCH && since && !entry.about().isEmpty()) {
        found.add(finding(unit, entry));
      }
    }
    return found;
  }

  private RuleFinding finding(UnitReadings unit, LogEntry entry) {
    Set<PartId> area = new LinkedHashSet<>();
    for (Subject touched : entry.about()) {
      List<PartId> parts = parts(unit, touched);
      area.addAll(parts);
      parts.forEach(part -> area.addAll(beside(unit, part)));
    }
    String names = String.join(", ", area.stream().map(unit::name).toList());
    return new RuleFinding(
        code(),
        Severity.INFORMATION,
        entry.about(),
        "Touching changed something (log, line %s). In that area are %s."
            .formatted(entry.id(), names),
        "A probe or finger is a part of the circuit: narrow the area down, one small place at a time,"
            + " before renewing anything.",
        source(),
        area.stream()
            .map(
                part ->
                    new LikelihoodRatio(
                        part, LikelihoodRatio.WEAK, "lies where touching changed something"))
            .toList());
  }

  private static List<PartId> parts(UnitReadings unit, Subject touched) {
    if (touched instanceof Subject.OfPart of) {
      return List.of(of.part());
    }
    if (touched instanceof Subject.OfSection of) {
      return List.of(of.part());
    }
    return unit.netOf(touched).stream()
        .flatMap(net -> unit.pins(net).stream())
        .map(PinRef::part)
        .distinct()
        .toList();
  }

  /** The parts whose bodies lie nearest on a photo that shows this one. */
  private static List<PartId> beside(UnitReadings unit, PartId part) {
    for (Placement here : unit.circuit().index().placementsOf(Subject.of(part))) {
      if (unit.map().picture(here.picture()).orElse(null) instanceof org.relegend.map.Photo) {
        return unit.map().parts().stream()
            .map(Part::id)
            .filter(other -> !other.equals(part))
            .flatMap(other -> unit.circuit().index().placementsOf(Subject.of(other)).stream())
            .filter(other -> other.picture().equals(here.picture()))
            .sorted(Comparator.comparingDouble(other -> other.at().distance(here.at())))
            .limit(BESIDE)
            .map(other -> ((Subject.OfPart) other.subject()).part())
            .toList();
      }
    }
    return List.of();
  }
}
