package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A supply rail must have its voltage before any reading behind it means anything. What feeds the
 * rail is under suspicion, what it feeds may load it.
 */
final class SupplyRails implements ReadingRule {
  @Override
  public String code() {
    return "rail";
  }

  @Override
  public String source() {
    return "common practice: regulated within 5 %; order of checks, US Army IT0338";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    return unit.netsRead().stream()
        .filter(unit::isRail)
        .filter(net -> !unit.isReference(net) && unit.isBad(net) && unit.nominal(net).isPresent())
        .map(net -> finding(unit, net))
        .toList();
  }

  private RuleFinding finding(UnitReadings unit, NetId rail) {
    double should = unit.nominal(rail).orElseThrow();
    double is = unit.volts(rail).orElseThrow().value();
    String message =
        "Rail %s is at %s and should be at %s."
            .formatted(unit.name(rail), NetVoltage.text(is), NetVoltage.text(should));
    List<LikelihoodRatio> blames = new ArrayList<>();
    Set<PartId> parts = new LinkedHashSet<>();
    unit.pins(rail).stream().map(PinRef::part).forEach(parts::add);
    for (PartId part : parts) {
      boolean feeds = unit.map().part(part).map(p -> p.channel().isEmpty()).orElse(false);
      blames.add(
          new LikelihoodRatio(
              part,
              feeds ? LikelihoodRatio.MEDIUM : LikelihoodRatio.WEAK,
              (feeds ? "belongs to the supply of rail %s, which is off" : "may load rail %s")
                  .formatted(unit.name(rail))));
    }
    return new RuleFinding(
        code(),
        Severity.ERROR,
        List.of(Subject.of(rail)),
        message,
        "Put the rail right first: readings behind it mean little until then.",
        source(),
        blames);
  }
}
