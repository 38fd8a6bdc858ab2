package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * The currents into a node of resistors add up to nothing. Where they don't, a resistor is open or
 * has drifted: open, where the rest adds up without it. At the one pin of a transistor or circuit
 * the sum is that pin's current, and must not be many times what a healthy one takes.
 */
final class CurrentSum implements ReadingRule {
  /** A pin that takes so many times a healthy one's current is no longer working as it should. */
  private static final double TOO_MUCH = 3;

  /** And so many times it may take where a resistor is open. */
  private static final double STILL_USUAL = 1.5;

  @Override
  public String code() {
    return "current-sum";
  }

  @Override
  public String source() {
    return "Kirchhoff's current law; resistors age upwards or open, rarely low (common practice)";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      NodeCurrents.asRead(unit, net)
          .filter(sum -> sum.complete() && !sum.branches().isEmpty())
          .flatMap(sum -> sum.closed() ? closed(unit, sum) : atDevice(unit, sum))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<RuleFinding> closed(UnitReadings unit, NodeCurrents sum) {
    if (sum.branches().size() < 2 || Math.abs(sum.amps()) <= sum.tolerance()) {
      return Optional.empty();
    }
    List<LikelihoodRatio> blames = new ArrayList<>();
    for (NodeCurrents.Branch branch : sum.branches()) {
      double rest = sum.without(branch);
      if (Math.abs(rest) <= sum.toleranceWithout(branch)) {
        blames.add(open(unit, sum, branch));
      } else {
        drifted(unit, sum, branch, rest).ifPresent(blames::add);
      }
    }
    for (PinRef input : sum.inputs()) {
      blames.add(
          new LikelihoodRatio(
              input.part(),
              LikelihoodRatio.WEAK,
              "its input %s would have to take %s, and should take next to nothing"
                  .formatted(unit.name(input), NetVoltage.amps(sum.amps()))));
    }
    String message =
        "At %s (%s) the resistors' currents leave %s over, and nothing else there takes any."
            .formatted(
                unit.name(sum.net()), NetVoltage.text(sum.volts()), NetVoltage.amps(sum.amps()));
    return Optional.of(finding(sum, message, blames));
  }

  private static LikelihoodRatio open(
      UnitReadings unit, NodeCurrents sum, NodeCurrents.Branch branch) {
    return new LikelihoodRatio(
        branch.part(),
        LikelihoodRatio.STRONG,
        "if it is open, the currents at %s add up; as marked (%s) it would carry %s"
            .formatted(
                unit.name(sum.net()),
                NetVoltage.ohms(branch.ohms()),
                NetVoltage.amps(branch.amps())));
  }

  /** The value that the resistor would need for the sum to be nothing. */
  private static Optional<LikelihoodRatio> drifted(
      UnitReadings unit, NodeCurrents sum, NodeCurrents.Branch branch, double rest) {
    double needed = (branch.volts() - sum.volts()) / -rest;
    if (!(needed >= 0) || Double.isInfinite(needed)) {
      return Optional.empty();
    }
    boolean up = needed > branch.ohms();
    return Optional.of(
        new LikelihoodRatio(
            branch.part(),
            up ? LikelihoodRatio.MEDIUM : LikelihoodRatio.WEAK,
            "the currents at %s would add up if it had %s and not %s%s"
                .formatted(
                    unit.name(sum.net()),
                    NetVoltage.ohms(needed),
                    NetVoltage.ohms(branch.ohms()),
                    up ? "" : "; resistors rarely fall")));
  }

  private Optional<RuleFinding> atDevice(UnitReadings unit, NodeCurrents sum) {
    Optional<NodeCurrents> healthy = NodeCurrents.healthy(unit, sum.net());
    LinkedHashSet<PartId> devices = new LinkedHashSet<>();
    sum.devices().forEach(pin -> devices.add(pin.part()));
    if (devices.size() != 1 || healthy.isEmpty() || !healthy.get().complete()) {
      return Optional.empty();
    }
    double usual = Math.abs(healthy.get().amps());
    double slack = sum.tolerance() + healthy.get().tolerance();
    if (Math.abs(sum.amps()) <= TOO_MUCH * usual + slack) {
      return Optional.empty();
    }
    List<LikelihoodRatio> blames = new ArrayList<>();
    for (NodeCurrents.Branch branch : sum.branches()) {
      double rest = Math.abs(sum.without(branch));
      if (rest <= STILL_USUAL * usual + slack) {
        blames.add(open(unit, sum, branch));
      }
    }
    PinRef pin = sum.devices().get(0);
    String much =
        "%s would have to take %s, where a healthy one takes %s"
            .formatted(
                unit.name(pin),
                NetVoltage.amps(sum.amps()),
                usual <= healthy.get().tolerance() ? "next to nothing" : NetVoltage.amps(usual));
    blames.add(
        new LikelihoodRatio(
            pin.part(), blames.isEmpty() ? LikelihoodRatio.MEDIUM : LikelihoodRatio.WEAK, much));
    String message =
        "At %s (%s) %s.".formatted(unit.name(sum.net()), NetVoltage.text(sum.volts()), much);
    return Optional.of(finding(sum, message, blames));
  }

  private RuleFinding finding(NodeCurrents sum, String message, List<LikelihoodRatio> blames) {
    return new RuleFinding(
        code(),
        Severity.ERROR,
        List.of(Subject.of(sum.net())),
        message,
        UnitHazards.BEFORE_TOUCHING
            + "measure the resistors named; in circuit only a value that is too high"
            + " proves anything.",
        source(),
        blames);
  }
}
