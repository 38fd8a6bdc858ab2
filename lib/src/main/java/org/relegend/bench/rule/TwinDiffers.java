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
 * A node that differs from its twin while all its neighbours that were read are as theirs: the
 * difference is made there, by the parts on it.
 */
final class TwinDiffers implements ReadingRule {
  /** So many equal neighbours are needed. */
  private static final int NEIGHBOURS = 2;

  @Override
  public String code() {
    return "twin-differs";
  }

  @Override
  public String source() {
    return "twin comparison, common practice: the first node that differs between equal neighbours";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      if (unit.isBad(net) && unit.twin(net).isPresent() && !unit.isRail(net)) {
        List<NetId> neighbours = neighbours(unit, net);
        boolean equal = neighbours.stream().allMatch(n -> unit.verdict(n) == NodeVerdict.GOOD);
        if (equal && neighbours.size() >= NEIGHBOURS) {
          found.add(finding(unit, net, neighbours));
        }
      }
    }
    return found;
  }

  /** The nets that were read and compared, one part away. */
  private static List<NetId> neighbours(UnitReadings unit, NetId net) {
    Set<NetId> near = new LinkedHashSet<>();
    for (PinRef pin : unit.pins(net)) {
      near.addAll(unit.circuit().netsOf(pin.part()));
    }
    near.remove(net);
    return near.stream()
        .filter(other -> !unit.isRail(other) && unit.verdict(other) != NodeVerdict.UNKNOWN)
        .toList();
  }

  private RuleFinding finding(UnitReadings unit, NetId net, List<NetId> neighbours) {
    Set<PartId> parts = new LinkedHashSet<>();
    unit.pins(net).stream().map(PinRef::part).forEach(parts::add);
    String reason =
        "on %s, which differs from its twin by %s while %s around it do not"
            .formatted(
                unit.name(net),
                NetVoltage.text(unit.difference(net).orElse(0)),
                String.join(", ", neighbours.stream().map(unit::name).toList()));
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(net)),
        "%s has %s, its twin %s, and its neighbours are as theirs."
            .formatted(
                unit.name(net),
                unit.volts(net).orElseThrow().text(),
                unit.twin(net).orElseThrow().text()),
        "The difference is made at this node: compare its parts with their twins.",
        source(),
        parts.stream()
            .map(part -> new LikelihoodRatio(part, LikelihoodRatio.WEAK, reason))
            .toList());
  }
}
