package org.relegend.bench.rule;

import java.util.List;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/**
 * Nets on the supply side of which nobody told the voltage: no reading there is proposed before
 * that is known.
 */
final class UntoldSupply implements ReadingRule {
  /** So many names are listed before the rest is counted. */
  private static final int LISTED = 8;

  @Override
  public String code() {
    return "supply-voltage-unknown";
  }

  @Override
  public String source() {
    return "common practice: what a supply gives is taken as high until it is known";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<NetId> nets = unit.hazards().untoldNets();
    if (nets.isEmpty()) {
      return List.of();
    }
    String names =
        String.join(", ", nets.stream().limit(LISTED).map(unit::name).toList())
            + (nets.size() > LISTED ? " and %d more".formatted(nets.size() - LISTED) : "");
    return List.of(
        new RuleFinding(
            code(),
            Severity.INFORMATION,
            nets.stream().limit(LISTED).map(Subject::of).toList(),
            "Nobody told what these nets carry, and a supply or a capacitor made for high voltage is joined to them: %s. Take them as high: no reading there is proposed."
                .formatted(names),
            "What do they carry? Tell the voltage of each (from the drawing, or what the transformer is marked); then ask again.",
            source(),
            List.of()));
  }
}
