package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.rule.Amplifiers.Amp;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * An output at its rail with unequal inputs. In the direction of the inputs the amplifier obeys:
 * the loop is broken, or it is driven beyond its range. Against them the amplifier or its supply is
 * at fault.
 */
final class OutputAtRail implements ReadingRule {
  @Override
  public String code() {
    return "output-at-rail";
  }

  @Override
  public String source() {
    return "op amp without feedback: + input above - input, output to the high rail, else to the low"
        + " one (lecture notes, standards reference 10)";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Amp amp : Amplifiers.all(unit)) {
      if (amp.rail() != 0 && amp.unequal()) {
        boolean obeys = Math.signum(amp.between()) == amp.rail();
        found.add(obeys ? obeys(unit, amp) : against(amp));
      }
    }
    return found;
  }

  private RuleFinding obeys(UnitReadings unit, Amp amp) {
    CircuitElement element = amp.element();
    String reason =
        "obeys its inputs: + %s %s -, output %s at the rail"
            .formatted(
                NetVoltage.text(Math.abs(amp.between())),
                amp.between() > 0 ? "above" : "below",
                amp.out().text());
    List<LikelihoodRatio> blames = new ArrayList<>();
    blames.add(new LikelihoodRatio(element.part(), LikelihoodRatio.EXCUSED, reason));
    feedback(unit, element)
        .forEach(
            part ->
                blames.add(
                    new LikelihoodRatio(
                        part,
                        1.5,
                        "feedback of %s, whose loop doesn't close".formatted(element.name()))));
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(element.part())),
        "%s %s.".formatted(element.name(), reason),
        "Leave it in. Look at what feeds its inputs, then at its feedback part and the joints"
            + " there.",
        source(),
        blames);
  }

  /** Parts of two pins between output and inverting input. */
  private static Set<PartId> feedback(UnitReadings unit, CircuitElement element) {
    Set<PartId> parts = new LinkedHashSet<>();
    Optional<NetId> out = element.net("out");
    Optional<NetId> minus = element.net("-in");
    if (out.isPresent() && minus.isPresent()) {
      for (PinRef pin : unit.pins(out.get())) {
        if (unit.otherEnd(pin).equals(minus)) {
          parts.add(pin.part());
        }
      }
    }
    return parts;
  }

  private RuleFinding against(Amp amp) {
    CircuitElement element = amp.element();
    String reason =
        "its output is at %s against its inputs (+ is %s %s -)"
            .formatted(
                amp.out().text(),
                NetVoltage.text(Math.abs(amp.between())),
                amp.between() > 0 ? "above" : "below");
    return new RuleFinding(
        code(),
        Severity.ERROR,
        List.of(Subject.of(element.part())),
        "%s: %s.".formatted(element.name(), reason),
        "Read both its supplies at its own pins, and whether the output is held by a short; then"
            + " suspect the amplifier.",
        source(),
        List.of(new LikelihoodRatio(element.part(), LikelihoodRatio.STRONG, reason)));
  }
}
