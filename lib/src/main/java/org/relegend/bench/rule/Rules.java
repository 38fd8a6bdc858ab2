package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All rules, in the order of their reports: what is wrong, then what misleads. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new HighReading(),
          new Rails(),
          new CapacitorPassesDirect(),
          new CurrentSum(),
          new JunctionDrop(),
          new OutputAtRail(),
          new InputsEqual(),
          new NoCurrent(),
          new UnexplainedVoltage(),
          new TwinDiffers(),
          new OutOfCircuitValue(),
          new LaterDate(),
          new TwinReplaced(),
          new TouchClue(),
          new ReworkedPads(),
          new ReadingsDisagree(),
          new FragileNode(),
          new CoarseRange(),
          new PinCountedOtherwise(),
          new CapacitorNotTested(),
          new UntoldSupply(),
          new UnknownPlace());

  private Rules() {}

  /** What all rules find in a unit, the gravest first. */
  public static List<Finding> inspect(Unit unit) {
    List<Finding> found = new ArrayList<>();
    ALL.forEach(rule -> found.addAll(rule.inspect(unit)));
    found.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(found);
  }
}
