package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All rules, in the order of their reports: what is wrong, then what misleads. */
public final class ReadingRules {
  public static final List<ReadingRule> ALL =
      List.of(
          new VoltageAboveLimits(),
          new SupplyRails(),
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
          new TouchResponse(),
          new ReworkedPads(),
          new ReadingsDisagree(),
          new FragileNode(),
          new CoarseRange(),
          new PinCountedOtherwise(),
          new CapacitorNotTested(),
          new UntoldSupply(),
          new UnknownPlace());

  private ReadingRules() {}

  /** What all rules find in a unit, the gravest first. */
  public static List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    ALL.forEach(rule -> found.addAll(rule.inspect(unit)));
    found.sort(Comparator.comparing(RuleFinding::severity));
    return List.copyOf(found);
  }
}
