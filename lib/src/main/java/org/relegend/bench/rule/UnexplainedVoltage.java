package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A node to which no part brings direct current stands at nothing, or at its resistors' other ends.
 * At another voltage something feeds it that shouldn't: a leak, a bridge, an input.
 */
final class UnexplainedVoltage implements ReadingRule {
  @Override
  public String code() {
    return "unexplained-voltage";
  }

  @Override
  public String source() {
    return "Ohm's law: no current, no voltage across a resistor";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      NodeCurrents.asRead(unit, net)
          .filter(sum -> sum.complete() && sum.closed() && sum.branches().size() < 2)
          .flatMap(sum -> finding(unit, sum))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<RuleFinding> finding(UnitReadings unit, NodeCurrents sum) {
    boolean alone = sum.branches().isEmpty();
    double should = alone ? 0 : sum.branches().get(0).volts();
    double off = Math.abs(sum.volts() - should);
    double slack = Math.max(unit.limit(sum.net()), new NetVoltage(should, true).uncertainty());
    boolean fits = alone && unit.verdict(sum.net()) == NodeVerdict.GOOD;
    if (off <= slack || fits || sum.capacitors().isEmpty() && sum.inputs().isEmpty()) {
      return Optional.empty();
    }
    List<LikelihoodRatio> blames = new ArrayList<>();
    Set<PartId> parts = new LinkedHashSet<>();
    sum.capacitors().stream().map(PinRef::part).forEach(parts::add);
    sum.inputs().stream().map(PinRef::part).forEach(parts::add);
    sum.branches().forEach(branch -> parts.add(branch.part()));
    for (PartId part : parts) {
      blames.add(
          new LikelihoodRatio(
              part,
              LikelihoodRatio.WEAK,
              "joined to %s, whose voltage nothing explains".formatted(unit.name(sum.net()))));
    }
    String message =
        alone
            ? "%s is at %s, and no resistor or driver is known there."
                .formatted(unit.name(sum.net()), NetVoltage.text(sum.volts()))
            : "%s is at %s, and without current it would stand at the %s of %s."
                .formatted(
                    unit.name(sum.net()),
                    NetVoltage.text(sum.volts()),
                    NetVoltage.text(should),
                    unit.name(sum.branches().get(0).other()));
    return Optional.of(
        new RuleFinding(
            code(),
            Severity.WARNING,
            List.of(Subject.of(sum.net())),
            message,
            "Look for what feeds it: a leaking part, a bridge of solder or dirt, a joint missing in"
                + " the map.",
            source(),
            blames));
  }
}
