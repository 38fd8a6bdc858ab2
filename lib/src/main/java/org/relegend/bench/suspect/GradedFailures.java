package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.List;
import org.relegend.solve.Capacitance;
import org.relegend.solve.ChangedLaw;
import org.relegend.solve.Device;
import org.relegend.solve.FailureMode;
import org.relegend.solve.Fault;
import org.relegend.solve.Netlist;
import org.relegend.solve.Resistance;
import org.relegend.solve.StrayResistance;
import org.relegend.solve.UsualFailures;

/**
 * The usual failures, those that come in any degree in several: a leak of 1 kΩ and one of 1 MΩ show
 * different voltages. The grades lie about half a decade apart, so that none is far from the truth.
 */
final class GradedFailures {
  private static final double[] LEAKS = {1e3, 3.3e3, 33e3, 75e3, 470e3, 1.5e6};
  private static final double[] LEAKS_OF_JUNCTIONS = {1e3, 100e3};
  private static final double[] DRIFTS = {0.6, 1.6, 6};

  private GradedFailures() {}

  static List<Fault> of(Netlist netlist) {
    List<Fault> faults = new ArrayList<>();
    for (Fault fault : UsualFailures.of(netlist)) {
      faults.add(fault);
      if (fault instanceof StrayResistance leak && leak.mode() == FailureMode.LEAK) {
        leaks(leak, faults);
      }
    }
    for (Device device : netlist.devices()) {
      if (device.law() instanceof Resistance law && law.ohms() > 1) {
        drifts(device, law, faults);
      } else if (device.law() instanceof Capacitance) {
        capacitorLeaks(netlist, device, faults);
      }
    }
    return List.copyOf(faults);
  }

  private static void leaks(StrayResistance leak, List<Fault> into) {
    if (leak.text().endsWith("leaks")
        && leak.ohms() == 10e3) { // a junction's; a capacitor's are made below
      for (double ohms : LEAKS_OF_JUNCTIONS) {
        into.add(
            new StrayResistance(leak.part(), leak.mode(), leak.text(), leak.a(), leak.b(), ohms));
      }
    }
  }

  private static void capacitorLeaks(Netlist netlist, Device device, List<Fault> into) {
    String a = device.nodes().get(0);
    String b = device.nodes().get(1);
    boolean silent =
        a.equals(b) || netlist.known().containsKey(a) && netlist.known().containsKey(b);
    if (!silent) {
      for (double ohms : LEAKS) {
        into.add(new StrayResistance(device.part(), FailureMode.LEAK, "leaks", a, b, ohms));
      }
    }
  }

  private static void drifts(Device device, Resistance law, List<Fault> into) {
    for (double factor : DRIFTS) {
      into.add(
          new ChangedLaw(
              device.part(),
              factor > 1 ? FailureMode.HIGH : FailureMode.LOW,
              factor > 1
                  ? "risen to %s times its value".formatted(factor)
                  : "fallen to %s of its value".formatted(factor),
              device.name(),
              new Resistance(law.ohms() * factor, law.tolerance())));
    }
  }
}
