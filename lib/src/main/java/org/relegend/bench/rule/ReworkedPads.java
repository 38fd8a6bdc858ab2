package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import org.relegend.bench.Condition;
import org.relegend.bench.PartState;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/**
 * Where somebody unsoldered a part or lifted a pad, copper may be gone that served more than this
 * one joint: all that its nets join is to be beeped out again. A socket is one more contact.
 */
final class ReworkedPads implements ReadingRule {
  @Override
  public String code() {
    return "beep-again";
  }

  @Override
  public String source() {
    return "common practice: pads and barrels pulled while unsoldering leave other pins of the net"
        + " open";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Condition condition : unit.job().conditions()) {
      boolean pads = condition.is(PartState.REPLACED) || condition.is(PartState.DAMAGED);
      boolean known = unit.map().parts().has(condition.part());
      if (known && (pads || condition.is(PartState.SOCKETED))) {
        found.add(finding(unit, condition));
      }
    }
    return found;
  }

  private RuleFinding finding(UnitReadings unit, Condition condition) {
    List<String> nets = new ArrayList<>();
    for (NetId net : unit.circuit().netsOf(condition.part())) {
      nets.add(
          unit.isRail(net)
              ? unit.name(net)
              : "%s (%s)"
                  .formatted(
                      unit.name(net),
                      String.join(" ", unit.pins(net).stream().map(unit::name).toList())));
    }
    String socket =
        condition.is(PartState.SOCKETED)
            ? " A socket is one more contact: read at the leg of the part and at the pad, before"
                + " anything is reseated."
            : "";
    return new RuleFinding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(condition.part())),
        "%s is %s: its pads may have lost copper. Its nets: %s."
            .formatted(unit.name(condition.part()), condition.text(), String.join(", ", nets)),
        UnitHazards.BEFORE_TOUCHING
            + "beep out these nets from pin to pin, and look for less than half an ohm,"
            + " not just a beep."
            + socket,
        source(),
        List.of());
  }
}
