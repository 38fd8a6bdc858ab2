package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * The currents into a node of resistors add up to nothing. Where they don't, a resistor is open or
 * has drifted: open, where the rest adds up without it. At the one pin of a transistor or circuit
 * the sum is that pin's current, and must not be many times what a healthy one takes.
 */
final class CurrentSum implements Rule {
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
  public List<Finding> inspect(Unit unit) {
    List<Finding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      NodeSum.asRead(unit, net)
          .filter(sum -> sum.complete() && !sum.branches().isEmpty())
          .flatMap(sum -> sum.closed() ? closed(unit, sum) : atDevice(unit, sum))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<Finding> closed(Unit unit, NodeSum sum) {
    if (sum.branches().size() < 2 || Math.abs(sum.amps()) <= sum.tolerance()) {
      return Optional.empty();
    }
    List<Blame> blames = new ArrayList<>();
    for (NodeSum.Branch branch : sum.branches()) {
      double rest = sum.without(branch);
      if (Math.abs(rest) <= sum.toleranceWithout(branch)) {
        blames.add(open(unit, sum, branch));
      } else {
        drifted(unit, sum, branch, rest).ifPresent(blames::add);
      }
    }
    for (PinRef input : sum.inputs()) {
      blames.add(
          new Blame(
              input.part(),
              Blame.WEAK,
              "its input %s would have to take %s, and should take next to nothing"
                  .formatted(unit.name(input), Volts.amps(sum.amps()))));
    }
    String message =
        "At %s (%s) the resistors' currents leave %s over, and nothing else there takes any."
            .formatted(unit.name(sum.net()), Volts.text(sum.volts()), Volts.amps(sum.amps()));
    return Optional.of(finding(sum, message, blames));
  }

  private static Blame open(Unit unit, NodeSum sum, NodeSum.Branch branch) {
    return new Blame(
        branch.part(),
        Blame.STRONG,
        "if it is open, the currents at %s add up; as marked (%s) it would carry %s"
            .formatted(unit.name(sum.net()), Volts.ohms(branch.ohms()), Volts.amps(branch.amps())));
  }

  /** The value that the resistor would need for the sum to be nothing. */
  private static Optional<Blame> drifted(
      Unit unit, NodeSum sum, NodeSum.Branch branch, double rest) {
    double needed = (branch.volts() - sum.volts()) / -rest;
    if (!(needed >= 0) || Double.isInfinite(needed)) {
      return Optional.empty();
    }
    boolean up = needed > branch.ohms();
    return Optional.of(
        new Blame(
            branch.part(),
            up ? Blame.MEDIUM : Blame.WEAK,
            "the currents at %s would add up if it had %s and not %s%s"
                .formatted(
                    unit.name(sum.net()),
                    Volts.ohms(needed),
                    Volts.ohms(branch.ohms()),
                    up ? "" : "; resistors rarely fall")));
  }

  private Optional<Finding> atDevice(Unit unit, NodeSum sum) {
    Optional<NodeSum> healthy = NodeSum.healthy(unit, sum.net());
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
    List<Blame> blames = new ArrayList<>();
    for (NodeSum.Branch branch : sum.branches()) {
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
                Volts.amps(sum.amps()),
                usual <= healthy.get().tolerance() ? "next to nothing" : Volts.amps(usual));
    blames.add(new Blame(pin.part(), blames.isEmpty() ? Blame.MEDIUM : Blame.WEAK, much));
    String message =
        "At %s (%s) %s.".formatted(unit.name(sum.net()), Volts.text(sum.volts()), much);
    return Optional.of(finding(sum, message, blames));
  }

  private Finding finding(NodeSum sum, String message, List<Blame> blames) {
    return new Finding(
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
