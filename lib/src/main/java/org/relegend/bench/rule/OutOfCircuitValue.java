package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Quantity;
import org.relegend.marking.Tolerance;
import org.relegend.marking.ValueReading;

/**
 * A part measured out of circuit must have the value it is marked with, within its tolerance. In
 * circuit only a resistor that reads too high is proof: nothing beside it can raise a resistance.
 */
final class OutOfCircuitValue implements ReadingRule {
  private static final Tolerance RESISTOR = Tolerance.fraction(NodeCurrents.USUAL_TOLERANCE);

  /** Electrolytics are delivered -20 to +80 %, others within 20 %. */
  private static final Tolerance ELECTROLYTIC = new Tolerance(-0.2, 0.8, Tolerance.Basis.FRACTION);

  private static final Tolerance CAPACITOR = Tolerance.fraction(0.2);

  @Override
  public String code() {
    return "value";
  }

  @Override
  public String source() {
    return "tolerance as marked (IEC 60062); else film resistors 5 %, capacitors 20 %, electrolytics"
        + " -20 to +80 % (standards reference 10)";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Reading reading : unit.job().currentReadings()) {
      boolean value =
          reading.quantity() == Quantity.RESISTANCE || reading.quantity() == Quantity.CAPACITANCE;
      if (value && reading.at() instanceof Subject.OfPart of) {
        unit.marking(of.part(), reading.quantity())
            // of a can with several sections nobody told which was measured
            .filter(marking -> marking.sections().isEmpty())
            .flatMap(marking -> compare(unit, of.part(), reading, marking))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<RuleFinding> compare(
      UnitReadings unit, PartId part, Reading reading, ValueReading marking) {
    double nominal = marking.amount().value();
    Tolerance tolerance = marking.tolerance().orElse(usual(unit, part));
    boolean high = reading.value() > tolerance.highest(nominal);
    boolean low = reading.value() < tolerance.lowest(nominal);
    if (!high && !low) {
      return Optional.empty();
    }
    boolean resistor = reading.quantity() == Quantity.RESISTANCE;
    boolean proof = reading.setting().lifted() || resistor && high;
    String text =
        "%s is marked %s (%s) and reads %s"
            .formatted(
                unit.name(part),
                marking.amount().text(),
                tolerance.text(),
                reading.amount().text(4));
    return Optional.of(proof ? proof(part, text, high, resistor) : trap(part, text));
  }

  private static Tolerance usual(UnitReadings unit, PartId part) {
    if (unit.isFamily(part, "resistor")) {
      return RESISTOR;
    }
    boolean electrolytic = unit.kind(part).map(kind -> kind.name().equals("cap-pol")).orElse(false);
    return electrolytic ? ELECTROLYTIC : CAPACITOR;
  }

  private RuleFinding proof(PartId part, String text, boolean high, boolean resistor) {
    String why =
        high && resistor ? ": too high, and nothing beside it can raise it" : ": outside of it";
    return new RuleFinding(
        code(),
        Severity.ERROR,
        List.of(Subject.of(part)),
        text + why + ".",
        "Renew it, and ask why it went.",
        source(),
        List.of(new LikelihoodRatio(part, LikelihoodRatio.STRONG, text)));
  }

  private RuleFinding trap(PartId part, String text) {
    return new RuleFinding(
        "in-circuit-value",
        Severity.INFORMATION,
        List.of(Subject.of(part)),
        text + " in circuit: other parts lie beside it, so this proves nothing.",
        "Lift one leg and measure again, or compare with its twin in circuit.",
        source(),
        List.of());
  }
}
