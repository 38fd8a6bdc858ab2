package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of OpenStax College Physics, modules m42363 and m42395, and others by hand. */
class DischargeTest {
  /**
   * m42363: a heart defibrillator, 8.00 uF through 1.00 kilohm, 10.0 kV to 500 V: 24.0 ms by steps
   * of 0.368, exactly 23.97; tau 10.0 ms, 8.00 uF, 12.0 kV to 600 V: R 1.25 kilohm, 30.0 ms; a
   * bleeder of 250 kilohm on 80 uF: to 0.250 % in 120 s.
   */
  @ParameterizedTest
  @CsvSource({
    "8e-6, 1e3, 10e3, 500, 8.00e-3, 23.97e-3",
    "8e-6, 1.25e3, 12e3, 600, 10.0e-3, 29.96e-3",
    "80e-6, 250e3, 1000, 2.5, 20.0, 119.8"
  })
  void secondsTo_asPublished(
      double farads, double ohms, double from, double to, double tau, double seconds) {
    Discharge discharge = new Discharge(farads, from);
    assertThat(discharge.timeConstant(ohms)).isCloseTo(tau, within(tau * 1e-9));
    assertThat(discharge.secondsTo(to, ohms)).isCloseTo(seconds, within(seconds * 5e-4));
  }

  /** m42395: 8.00 uF at 10.0 kV 400 J; 10.0 uF at 9.00 kV 405 J and 90.0 mC; 80 uF at 2.5 kV. */
  @ParameterizedTest
  @CsvSource({"8e-6, 10e3, 400, 0.080", "10e-6, 9e3, 405, 0.090", "80e-6, 2.5e3, 250, 0.200"})
  void energyAndCharge_asPublished(double farads, double volts, double joules, double coulombs) {
    Discharge discharge = new Discharge(farads, volts);
    assertThat(discharge.joules()).isCloseTo(joules, within(joules * 1e-9));
    assertThat(discharge.coulombs()).isCloseTo(coulombs, within(coulombs * 1e-9));
  }

  /** From the peak of 230 V mains: 1.689, 1.872, 2.257 time constants, computed apart. */
  @ParameterizedTest
  @CsvSource({"60, 1.690", "50, 1.873", "34, 2.258"})
  void mainsPeak_inTimeConstants(double volts, double constants) {
    Discharge discharge = new Discharge(1e-6, 230 * Math.sqrt(2));
    assertThat(discharge.secondsTo(volts, 1e6)).isCloseTo(constants, within(2e-3));
  }

  /** 1000 uF at 23.1 V: 5 s / (1 mF x ln 23.1) = 1592 ohm, so 1k5, and 23.1^2 / 1500 = 0.356 W. */
  @Test
  void proposal_byHand() {
    Discharge.Resistor resistor = new Discharge(1e-3, 23.1).proposal().orElseThrow();
    assertThat(resistor.ohms()).isEqualTo(1500);
    assertThat(resistor.watts()).isCloseTo(0.3557, within(1e-4));
    assertThat(resistor.joules()).isCloseTo(0.2668, within(1e-4));
    assertThat(resistor.seconds()).isCloseTo(4.71, within(0.01));
  }

  @Test
  void proposal_neverTakesMoreThanOneAmpere_norMoreThan100Kilohms() {
    assertThat(new Discharge(10, 400).proposal().orElseThrow().ohms()).isEqualTo(470);
    assertThat(new Discharge(1e-9, 325).proposal().orElseThrow().ohms()).isEqualTo(100e3);
    assertThat(new Discharge(1e-3, 0.5).proposal().orElseThrow().seconds()).isZero();
  }

  /**
   * Limiting element voltages of film resistors, by the data sheets of their makers (from memory):
   * 250 V at 0.25 W, 350 to 500 V at 0.5 W and more. 430 V takes two in series, 25 kV a probe.
   */
  @ParameterizedTest
  @CsvSource({"23, 1", "250, 1", "251, 2", "430, 2", "500, 2", "501, 0", "25e3, 0"})
  void resistorsOwnVoltage_dividesIt_orThereIsNoResistor(double volts, int inSeries) {
    Discharge full = new Discharge(47e-6, volts);
    assertThat(full.proposal().map(Discharge.Resistor::inSeries).orElse(0)).isEqualTo(inSeries);
    assertThat(full.needsProbe()).isEqualTo(inSeries == 0);
    full.proposal()
        .ifPresent(
            by ->
                assertThat(by.volts() / by.inSeries())
                    .isLessThanOrEqualTo(Discharge.RESISTOR_VOLTS));
  }

  @Test
  void nonsense_isRefusedAtTheDoor() {
    assertThatThrownBy(() -> new Discharge(0, 5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Discharge(1e-6, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    Discharge discharge = new Discharge(1e-6, 10);
    assertThatThrownBy(() -> discharge.secondsTo(0, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(discharge.secondsTo(20, 5)).isZero();
  }
}
