package org.relegend.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bias points of textbooks, and laws that hold for every circuit. */
class OperatingPointTest {
  private static final double VOLTS_OF_1_MA = 1e-3 / Math.exp(0.7 / Exponential.THERMAL_VOLTS);

  static List<ChannelCircuit> circuits() {
    return SampleCircuits.all();
  }

  private static Netlist netlist(Map<String, Double> known, Device... devices) {
    return new Netlist(List.of(devices), known);
  }

  private static Device resistor(String name, double ohms, String a, String b) {
    return Device.of(name, new Resistance(ohms), a, b);
  }

  private static double volts(OperatingPoint point, String node) {
    return point.volts(node).orElseThrow();
  }

  /**
   * Sedra and Smith, Microelectronic Circuits, 5th edition, example 5.4: base at 4 V, collector 4.7
   * kilohms to 10 V, emitter 3.3 kilohms; 0.7 V at 1 mA: VE = 3.3 V, VC = 5.3 V (from memory).
   */
  @Test
  void transistorWithEmitterResistor_asInTheTextbook() {
    BipolarTransistor npn =
        new BipolarTransistor(1, VOLTS_OF_1_MA, 100, 1, Double.POSITIVE_INFINITY, 0, 0);
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                Map.of("0", 0.0, "VCC", 10.0, "B", 4.0),
                resistor("RC", 4700, "VCC", "C"),
                resistor("RE", 3300, "E", "0"),
                Device.of("Q1", npn, "C", "B", "E")));
    assertThat(volts(point, "E")).isCloseTo(3.3, within(0.02));
    assertThat(volts(point, "C")).isCloseTo(5.3, within(0.08));
  }

  /**
   * Boylestad and Nashelsky, Electronic Devices and Circuit Theory, example of voltage-divider
   * bias: 22 V, 39k and 3.9k, RC 10k, RE 1.5k, beta 140: IC = 0.85 mA, VCE = 12.22 V (from memory).
   */
  @Test
  void voltageDividerBias_asInTheTextbook() {
    BipolarTransistor npn =
        new BipolarTransistor(1, VOLTS_OF_1_MA, 140, 1, Double.POSITIVE_INFINITY, 0, 0);
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                Map.of("0", 0.0, "VCC", 22.0),
                resistor("R1", 39e3, "VCC", "B"),
                resistor("R2", 3.9e3, "B", "0"),
                resistor("RC", 10e3, "VCC", "C"),
                resistor("RE", 1.5e3, "E", "0"),
                Device.of("Q1", npn, "C", "B", "E")));
    assertThat(point.amperes("Q1", 0).orElseThrow()).isCloseTo(0.85e-3, within(0.01e-3));
    assertThat(volts(point, "C") - volts(point, "E")).isCloseTo(12.22, within(0.15));
  }

  /**
   * Boylestad and Nashelsky, example of self-bias: IDSS 8 mA, VP -6 V, RD 3.3k, RS 1k, 20 V: VGS =
   * -2.6 V, ID = 2.6 mA, VDS = 8.82 V (from memory; read off a drawing there).
   */
  @Test
  void selfBiasOfAJunctionFet_asInTheTextbook() {
    FieldEffectTransistor fet = new FieldEffectTransistor(1, false, -6, 8e-3 / 36, 0, 1e-14, 0, 0);
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                Map.of("0", 0.0, "VDD", 20.0),
                resistor("RG", 1e6, "G", "0"),
                resistor("RD", 3300, "VDD", "D"),
                resistor("RS", 1000, "S", "0"),
                Device.of("Q1", fet, "D", "G", "S")));
    assertThat(volts(point, "S")).isCloseTo(2.6, within(0.03));
    assertThat(volts(point, "D") - volts(point, "S")).isCloseTo(8.82, within(0.1));
  }

  /**
   * ECC83 with 100k at 250 V and 1.5k in the cathode: makers' tables of resistance-coupled
   * amplifiers give 0.86 mA (Philips; from memory), the model's own spread being 10 %.
   */
  @Test
  void triodeStage_nearTheMakersTable() {
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                Map.of("0", 0.0, "HT", 250.0),
                resistor("RG", 1e6, "G", "0"),
                resistor("RA", 100e3, "HT", "A"),
                resistor("RK", 1500, "K", "0"),
                Device.of("V1", HandbookModels.valve(false, "ECC83"), "A", "G", "K")));
    assertThat(volts(point, "K") / 1500).isCloseTo(0.86e-3, within(0.26e-3));
  }

  @Test
  void opampOutputs_endBesideTheirSupplies() {
    Map<String, Double> known = Map.of("0", 0.0, "V+", 15.0, "V-", -15.0, "IN", 1.0);
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                known,
                Device.of("U1", HandbookModels.amplifier("TL072"), "IN", "0", "OUT", "V+", "V-")));
    assertThat(volts(point, "OUT")).isCloseTo(13.5, within(0.05));
  }

  @Test
  void aMeter_showsWhatALoadOfItsResistanceGives() {
    Netlist netlist = SampleCircuits.PREAMPLIFIER.mapped().netlist();
    OperatingPoint point = OperatingPoint.of(netlist);
    for (String node : List.of("A_C1N", "A_B1", "A_E3")) {
      double loaded =
          volts(OperatingPoint.of(netlist.with(resistor("meter", 10e6, node, "GND"))), node);
      assertThat(point.voltsUnderMeter(node, 10e6).orElseThrow()).isCloseTo(loaded, within(0.01));
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void currentsOfEveryNode_addUpToNothing(ChannelCircuit circuit) {
    Netlist netlist = circuit.mapped().netlist();
    OperatingPoint point = OperatingPoint.of(netlist);
    for (String node : netlist.nodes()) {
      if (netlist.known().containsKey(node)) {
        continue;
      }
      double sum = 0;
      double largest = 0;
      for (Device device : netlist.devices()) {
        for (int k = 0; k < device.nodes().size(); k++) {
          if (device.nodes().get(k).equals(node)) {
            double current = point.amperes(device.name(), k).orElseThrow();
            sum += current;
            largest = Math.max(largest, Math.abs(current));
          }
        }
      }
      assertThat(sum).as(node).isCloseTo(0, within(1e-9 + 1e-4 * largest));
    }
  }

  /** The circuit solved anew is the oracle of the one solved from the healthy factors. */
  @Test
  void aFaultFromTheHealthySolution_isThatFromNothing() {
    for (ChannelCircuit circuit :
        List.of(SampleCircuits.POWER_AMPLIFIER, SampleCircuits.PREAMPLIFIER)) {
      Netlist netlist = circuit.mapped().netlist();
      OperatingPoint healthy = OperatingPoint.of(netlist);
      List<Fault> faults = UsualFailures.of(netlist);
      for (int k = 0; k < faults.size(); k += 7) {
        Netlist faulty = faults.get(k).appliedTo(netlist);
        OperatingPoint quick = healthy.changedTo(faulty);
        OperatingPoint slow = OperatingPoint.of(faulty);
        for (String node : faulty.nodes()) {
          assertThat(volts(quick, node))
              .as(faults.get(k) + " " + node)
              .isCloseTo(volts(slow, node), within(1e-3));
        }
      }
    }
  }

  /** Resistors of 5 % drawn evenly, by seed, are the oracle of the first-order spread. */
  @Test
  void spread_isThatOfDrawnUnits() {
    double sigma = 0.05 / Math.sqrt(3);
    Map<String, Double> known = Map.of("0", 0.0, "V", 12.0);
    List<Double> values = List.of(10e3, 3.3e3, 2.2e3, 1e3);
    BipolarTransistor npn = new BipolarTransistor(1, 1e-14, 200, 4, 80, 0, 0);
    double result =
        OperatingPoint.of(stage(values, sigma, npn, known)).spread().getOrDefault("C", 0.0);
    Random random = new Random(7);
    double sum = 0;
    double squares = 0;
    int count = 500;
    for (int k = 0; k < count; k++) {
      List<Double> drawn =
          values.stream().map(v -> v * (1 + 0.05 * (2 * random.nextDouble() - 1))).toList();
      double v = volts(OperatingPoint.of(stage(drawn, 0, npn, known)), "C");
      sum += v;
      squares += v * v;
    }
    double mean = sum / count;
    assertThat(result).isCloseTo(Math.sqrt(squares / count - mean * mean), within(0.15 * result));
    assertThat(result).isGreaterThan(0.05);
  }

  private static Netlist stage(
      List<Double> ohms, double sigma, BipolarTransistor npn, Map<String, Double> known) {
    List<Device> devices = new ArrayList<>();
    String[][] at = {{"V", "B"}, {"B", "0"}, {"V", "C"}, {"E", "0"}};
    for (int k = 0; k < 4; k++) {
      devices.add(Device.of("R" + k, new Resistance(ohms.get(k), sigma), at[k][0], at[k][1]));
    }
    devices.add(Device.of("Q1", npn, "C", "B", "E"));
    return new Netlist(devices, known);
  }

  @Test
  void islands_areJoinedByKnownNodesOnly() {
    List<Netlist> islands = SampleCircuits.COMPARATOR.mapped().netlist().islands();
    assertThat(islands).hasSizeGreaterThanOrEqualTo(2);
    for (Netlist island : islands) {
      boolean a = island.nodes().stream().anyMatch(node -> node.startsWith("A_"));
      boolean b = island.nodes().stream().anyMatch(node -> node.startsWith("B_"));
      assertThat(a && b).isFalse();
    }
  }

  /** An RC low-pass at its corner: 1 / sqrt 2 and 45 degrees (any textbook). */
  @Test
  void smallSignal_ofALowPass() {
    double hertz = 1 / (2 * Math.PI * 10e3 * 10e-9);
    SmallSignal signal =
        OperatingPoint.of(
                netlist(
                    Map.of("0", 0.0),
                    resistor("R0", 50, "IN", "0"),
                    resistor("R1", 10e3, "IN", "OUT"),
                    Device.of("C1", new Capacitance(10e-9, 1e12), "OUT", "0")))
            .at(hertz);
    assertThat(signal.level("IN", 1, "OUT").orElseThrow()).isCloseTo(Math.sqrt(0.5), within(1e-4));
    assertThat(signal.gain("IN", "OUT").orElseThrow().getArgument())
        .isCloseTo(-Math.PI / 4, within(1e-4));
  }

  /** Gain of -10 with a bandwidth of 1 MHz over 11: 3 dB down at 91 kHz. */
  @Test
  void smallSignal_ofAnInvertingStage() {
    OperatingPoint point =
        OperatingPoint.of(
            netlist(
                Map.of("0", 0.0, "V+", 15.0, "V-", -15.0),
                resistor("R0", 50, "IN", "0"),
                resistor("R1", 1e3, "IN", "M"),
                resistor("R2", 10e3, "M", "OUT"),
                Device.of("U1", HandbookModels.amplifier("741"), "0", "M", "OUT", "V+", "V-")));
    assertThat(point.at(100).gain("IN", "OUT").orElseThrow().getReal()).isCloseTo(-10, within(0.1));
    assertThat(point.at(1e6 / 11).level("IN", 1, "OUT").orElseThrow())
        .isCloseTo(10 * Math.sqrt(0.5), within(0.3));
  }

  @Test
  void badCircuits_areRefusedAtTheDoor() {
    assertThatThrownBy(
            () -> netlist(Map.of(), resistor("R1", 1, "A", "B"), resistor("R1", 1, "A", "B")))
        .hasMessageContaining("two devices are called R1");
    assertThatThrownBy(() -> netlist(Map.of("A", Double.NaN))).hasMessageContaining("node A");
    assertThatThrownBy(() -> resistor("R1", 0, "A", "B")).hasMessageContaining("no resistance");
    assertThatThrownBy(() -> Device.of("Q1", new Resistance(1), "A"))
        .hasMessageContaining("1 nodes for 2 terminals");
    assertThatThrownBy(() -> OperatingPoint.of(netlist(Map.of())).at(0))
        .hasMessageContaining("need a frequency");
  }

  @Test
  void anEmptyCircuit_hasAnEmptySolution() {
    OperatingPoint point = OperatingPoint.of(netlist(Map.of("0", 0.0)));
    assertThat(point.solved()).isTrue();
    assertThat(point.volts("nowhere")).isEmpty();
    assertThat(point.volts("0")).hasValue(0);
  }
}
