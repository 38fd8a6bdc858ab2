package org.relegend.bench.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.bench.Boards;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.Instrument;
import org.relegend.bench.JobSamples;
import org.relegend.map.NetId;

/** Probe loading against published worked examples and the demo's independent solver. */
class ProbeLoadTest {
  private static double side(double a, double b) {
    return a * b / (a + b);
  }

  /**
   * Meters on dividers. Sources: SS0602 (Army): 120 V, 50k + 70k, 1 kohm/V on 100 V and 500 V reads
   * 38.8 and 47.2 V, true 50 V (exact 38.71, 47.24); elect99: 30 V across two 400k, 20 kohm/V on 20
   * V reads 10 V for 15 V; mm03246 (Army): 15 V, two 100k, 5 V range, 20 kohm/V and 1 kohm/V, the
   * second exact 0.68; NEETS 3 fig. 1-26: 25 V, 15 + 10 ohm, meter 10 ohm and 10k, 6.25 and 9.99 V.
   */
  @ParameterizedTest(name = "{0} V, {1} + {2} ohm, meter {3} ohm reads {4} V")
  @CsvSource({
    "120, 70e3, 50e3, 100e3, 38.71",
    "120, 70e3, 50e3, 500e3, 47.24",
    "30, 400e3, 400e3, 400e3, 10",
    "15, 100e3, 100e3, 100e3, 5",
    "15, 100e3, 100e3, 5e3, 0.68",
    "25, 15, 10, 10, 6.25",
    "25, 15, 10, 10e3, 9.99"
  })
  void dividersOfPublishedExamples(
      double supply, double upper, double lower, double meter, double reads) {
    double open = supply * lower / (upper + lower);
    double source = side(upper, lower);
    assertThat(ProbeLoad.read(open, source, meter)).isCloseTo(reads, within(0.006));
    assertThat(ProbeLoad.corrected(ProbeLoad.read(open, source, meter), source, meter))
        .isCloseTo(open, within(1e-9));
    UnitReadings unit =
        new Boards()
            .parts(
                "R1 resistor %sR 1=VP 2=A_X".formatted(plain(upper)),
                "R2 resistor %sR 1=A_X 2=0V".formatted(plain(lower)))
            .nominal("VP", supply)
            .unit();
    ProbeLoad loading = ProbeLoad.of(unit, new NetId("A_X"));
    assertThat(loading.ohms().orElseThrow()).isCloseTo(source, within(source * 1e-9));
    assertThat(loading.reads(new Instrument("", meter, 0)).orElseThrow())
        .isCloseTo(reads, within(0.006));
  }

  private static String plain(double ohms) {
    return Long.toString(Math.round(ohms));
  }

  /** 10 megohms with 15 pF across, computed in standards reference 7b: reading and -3 dB. */
  @ParameterizedTest(name = "source {0} ohm")
  @CsvSource({
    "1e3, 99.990, 10.6e6",
    "10e3, 99.900, 1.06e6",
    "100e3, 99.010, 107e3",
    "1e6, 90.909, 11.7e3"
  })
  void tenMegohmsAnd15Picofarads(double source, double percent, double hertz) {
    assertThat(ProbeLoad.read(100, source, 10e6)).isCloseTo(percent, within(0.001));
    assertThat(ProbeLoad.bandwidth(source, 10e6, 15e-12)).isCloseTo(hertz, within(hertz * 0.01));
  }

  /** Probe resistance nine times the source: down about 10 % (HP 83480A manual, p. 13-14). */
  @Test
  void nineTimes_takesATenth() {
    assertThat(ProbeLoad.read(1, 1e3, 9e3)).isCloseTo(0.9, within(1e-12));
  }

  /** The demo's traps, solved by an independent program: -12.58 V for -15.35, -4.80 at x1. */
  @Test
  void demo_timeNode_readsAsTheSolverSays() {
    UnitReadings unit = DemoUnit.unit(JobSamples.blank());
    ProbeLoad time = ProbeLoad.of(unit, new NetId("B_TIME"));
    assertThat(time.nodeClass()).isEqualTo(NodeClass.HIGH_IMPEDANCE);
    assertThat(time.reads(Instrument.DIGITAL_METER).orElseThrow()).isCloseTo(-12.58, within(0.01));
    assertThat(time.reads(new Instrument("x1", 1e6, 0)).orElseThrow())
        .isCloseTo(-4.80, within(0.01));
    assertThat(time.firm()).contains(new NetId("VN"));
    String warning = time.warning(unit, Instrument.DIGITAL_METER).orElseThrow();
    assertThat(warning)
        .contains("R222 (2.2 M\u03a9)")
        .contains("-12.58 V and not -15.35 V")
        .contains("muting the channel")
        .contains("touching this node may change what you see")
        .contains("doesn't mean that the fault is here")
        .contains("against VN");
  }

  /** B1 with a 200k moving-coil meter: 2.14 V by the solver; the base's share isn't computed. */
  @Test
  void demo_b1Node_isResistive_andItsFigureALimit() {
    UnitReadings unit = DemoUnit.unit(JobSamples.blank());
    ProbeLoad b1 = ProbeLoad.of(unit, new NetId("A_B1"));
    assertThat(b1.nodeClass()).isEqualTo(NodeClass.RESISTIVE);
    assertThat(b1.exact()).isFalse();
    assertThat(b1.ohms().orElseThrow()).isCloseTo(side(220e3, 47e3), within(1.0));
    double reads = ProbeLoad.read(2.51, b1.ohms().orElseThrow(), 200e3);
    assertThat(reads).isCloseTo(2.14, within(0.05)).isLessThan(2.14);
    assertThat(b1.fragileFor(new Instrument("20 kohm/V", 200e3, 0))).isTrue();
    assertThat(b1.fragileFor(Instrument.DIGITAL_METER)).isFalse();
  }

  @Test
  void nodesAreClassed() {
    UnitReadings unit = DemoUnit.unit(JobSamples.blank());
    assertThat(ProbeLoad.of(unit, new NetId("VP")).nodeClass()).isEqualTo(NodeClass.DRIVEN);
    assertThat(ProbeLoad.of(unit, new NetId("A_DOUT")).nodeClass()).isEqualTo(NodeClass.DRIVEN);
    assertThat(ProbeLoad.of(unit, new NetId("A_VB1")).nodeClass()).isEqualTo(NodeClass.RESISTIVE);
    assertThat(ProbeLoad.of(unit, new NetId("A_DOUT")).warning(unit, Instrument.UNKNOWN)).isEmpty();
  }

  /** A node that no resistor holds has no figure, and is warned of all the same. */
  @Test
  void aNodeOfGatesAlone_isHighImpedance_withoutAFigure() {
    UnitReadings unit =
        new Boards().parts("Q1 njfet - D=VP G=A_G S=A_S", "C1 cap 1n 1=A_G 2=0V").unit();
    ProbeLoad gate = ProbeLoad.of(unit, new NetId("A_G"));
    assertThat(gate.nodeClass()).isEqualTo(NodeClass.HIGH_IMPEDANCE);
    assertThat(gate.ohms()).isEmpty();
    assertThat(gate.warning(unit, Instrument.DIGITAL_METER).orElseThrow())
        .contains("high impedance");
  }

  /** Nobody told the rails, but a fifth of an ohm to each side is no high impedance. */
  @Test
  void aNodeBehindLowResistors_isNotHighImpedance() {
    UnitReadings unit =
        new Boards().parts("R1 resistor 0R22 1=E1 2=A_OUT", "R2 resistor 0R22 1=A_OUT 2=E2").unit();
    ProbeLoad out = ProbeLoad.of(unit, new NetId("A_OUT"));
    assertThat(out.nodeClass()).isEqualTo(NodeClass.RESISTIVE);
    assertThat(out.warning(unit, Instrument.DIGITAL_METER)).isEmpty();
  }
}
