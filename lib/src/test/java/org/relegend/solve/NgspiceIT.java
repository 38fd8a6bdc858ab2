package org.relegend.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against ngspice, an independent simulator, which has its own equations of diodes and transistors;
 * what it has no device for is written as controlled sources. Within 1 % or 10 mV. Skipped where
 * the program isn't there (Debian: apt-get install ngspice).
 */
class NgspiceIT {
  /** Each circuit has some 200 faults or more; nine circuits, 24 or more of each. */
  private static final int FAULTS_EACH = 24;

  /**
   * In ohms: a node above this is moved by 10 mV by a nanoampere, the leak of junctions that are
   * off, which each simulator has in its own way.
   */
  private static final double MOVED_BY_LEAKS = 1e7;

  static List<ChannelCircuit> circuits() {
    return SampleCircuits.all();
  }

  @BeforeEach
  void isThere() {
    assumeTrue(Ngspice.isThere(), "skipped: /usr/bin/ngspice isn't there");
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void healthy_allNodesAgree(ChannelCircuit circuit) throws Exception {
    Netlist netlist = circuit.mapped().netlist();
    OperatingPoint point = OperatingPoint.of(netlist);
    assertThat(point.unsolved()).isEmpty();
    Map<String, Double> theirs = Ngspice.direct(netlist);
    assertThat(theirs).as("ngspice has a solution").hasSameSizeAs(netlist.nodes());
    assertThat(differing(theirs, point)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void faulty_allNodesAgree(ChannelCircuit circuit) throws Exception {
    Netlist netlist = channelA(circuit);
    OperatingPoint healthy = OperatingPoint.of(netlist);
    List<Fault> faults = UsualFailures.of(netlist);
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    int others = 0;
    for (int k = 0; k < faults.size() && compared < FAULTS_EACH; k += faults.size() / 40) {
      Fault fault = faults.get(k);
      Netlist faulty = fault.appliedTo(netlist);
      Map<String, Double> theirs = Ngspice.direct(faulty);
      if (theirs.isEmpty()) {
        continue; // ngspice found no solution
      }
      compared++;
      List<String> differing = differing(theirs, healthy.changedTo(faulty));
      if (!differing.isEmpty() && isAnotherState(faulty, theirs)) {
        others++;
      } else {
        differing.forEach(node -> wrong.add(fault.part() + " " + fault.text() + ": " + node));
      }
    }
    assertThat(others).isLessThanOrEqualTo(1);
    assertThat(compared).isEqualTo(FAULTS_EACH);
    assertThat(wrong).isEmpty();
  }

  /** Half the circuit, for the simulator's sake. */
  private static Netlist channelA(ChannelCircuit circuit) {
    Netlist both = circuit.mapped().netlist();
    return both.withDevices(
        both.devices().stream()
            .filter(device -> device.nodes().stream().noneMatch(node -> node.startsWith("B_")))
            .toList());
  }

  /**
   * Whether these volts satisfy our equations, too: with hysteresis there are two states, and each
   * program is right to come to either.
   */
  private static boolean isAnotherState(Netlist netlist, Map<String, Double> theirs) {
    for (Netlist island : netlist.islands()) {
      NodalSystem system = new NodalSystem(island);
      double[] x =
          system.nodes().stream()
              .mapToDouble(node -> theirs.getOrDefault(node, Double.NaN))
              .toArray();
      double[] solution = x.clone();
      if (!new Newton(system, new DenseStep()).run(solution, 50)) {
        return false;
      }
      for (int n = 0; n < x.length; n++) {
        if (!(Math.abs(solution[n] - x[n]) <= Math.max(0.01, 0.01 * Math.abs(x[n])))) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<String> differing(Map<String, Double> theirs, OperatingPoint point) {
    List<String> differing = new ArrayList<>();
    theirs.forEach(
        (node, volts) -> {
          if (point.ohms(node).orElse(0) > MOVED_BY_LEAKS) {
            return;
          }
          double ours = point.volts(node).orElse(Double.NaN);
          if (!(Math.abs(ours - volts) <= Math.max(0.01, 0.01 * Math.abs(volts)))) {
            differing.add("%s: %s here, %s there".formatted(node, ours, volts));
          }
        });
    return differing;
  }

  /** Without op-amps, whose bandwidth the decks don't have. */
  @Test
  void smallSignals_agreeInLevelAndPhase() throws Exception {
    Netlist netlist = SampleCircuits.PREAMPLIFIER.mapped().netlist();
    OperatingPoint point = OperatingPoint.of(netlist);
    // the generator, which has no direct voltage of its own, holds what the input rests at
    double rest = point.volts("A_IN").orElseThrow();
    SpiceDeck deck = new SpiceDeck(netlist.withKnown("A_IN", rest));
    for (double hertz : new double[] {20, 1000, 20000}) {
      for (String node : List.of("A_B1", "A_C1N", "A_C2N", "A_OUT")) {
        Map<String, Double> printed = Ngspice.run(deck.alternating("A_IN", node, hertz));
        String name = deck.nodes().getOrDefault(node, "");
        Complex ours = point.at(hertz).gain("A_IN", node).orElseThrow();
        assertThat(ours.getReal())
            .isCloseTo(printed.get("vr(" + name + ")"), within(tolerance(ours)));
        assertThat(ours.getImaginary())
            .isCloseTo(printed.get("vi(" + name + ")"), within(tolerance(ours)));
      }
    }
  }

  private static double tolerance(Complex value) {
    return 0.01 * value.norm() + 1e-6;
  }
}
