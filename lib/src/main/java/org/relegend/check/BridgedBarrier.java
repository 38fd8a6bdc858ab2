package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.MainsReach;
import org.relegend.map.Subject;

/** Capacitors from the mains to what an isolating part should keep from it. */
final class BridgedBarrier implements Check {
  @Override
  public String code() {
    return "bridged-barrier";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (MainsReach.Bridge bridge : context.hazards().mains().bridges()) {
      findings.add(
          new Finding(
              code(),
              bridge.walked() ? Severity.ERROR : Severity.WARNING,
              List.of(Subject.of(bridge.near()), Subject.of(bridge.far())),
              "%s bridges the isolation from the mains%s"
                  .formatted(context.map().nameOf(bridge.near().part()), passing(bridge)),
              bridge.walked()
                  ? "Treat the far side as mains. Enter its value if that is unknown."
                  : "Expect leakage on the far side; it must be a part made for this place."));
    }
    return findings;
  }

  private static String passing(MainsReach.Bridge bridge) {
    OptionalDouble amps = bridge.amps();
    return amps.isEmpty()
        ? "; its value isn't known"
        : String.format(Locale.ROOT, " and passes up to %.2g mA", amps.getAsDouble() * 1000);
  }
}
