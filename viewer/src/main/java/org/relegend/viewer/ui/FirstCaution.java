package org.relegend.viewer.ui;

import java.util.function.Consumer;
import org.relegend.circuit.Circuit;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Potential;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.work.TaskRunner;

/** Whether a map calls for the cautions as soon as it is opened. */
final class FirstCaution {
  private FirstCaution() {}

  /**
   * Tells at once where the map says so itself, else after following its nets beside the screen.
   */
  static void run(TaskRunner jobs, BoardMap map, Consumer<Boolean> called) {
    if (isTold(map)) {
      called.accept(true);
      return;
    }
    jobs.run(
        Messages.of("findings.checking"),
        watch -> isFound(map),
        called,
        problem -> called.accept(true)); // what couldn't be looked at may be dangerous
  }

  /** Nets declared as mains, and zones of any kind. */
  private static boolean isTold(BoardMap map) {
    return map.nets().stream().anyMatch(net -> net.potential().nature() == Potential.Nature.MAINS)
        || map.zones().stream().anyMatch(zone -> zone.kind() != HazardZone.Kind.HOT);
  }

  static boolean isFound(BoardMap map) {
    return Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS).callForCautions();
  }
}
