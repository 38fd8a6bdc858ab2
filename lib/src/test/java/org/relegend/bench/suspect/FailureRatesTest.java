package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.bench.Boards;
import org.relegend.circuit.Circuit;
import org.relegend.map.PartId;

/** MIL-HDBK-217F, Appendix A, ground fixed, as transcribed in standards reference 10. */
class FailureRatesTest {
  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "resistor, 4k7, 0.0027",
    "resistor, 4k7_composition, 0.0022",
    "resistor, 10R_wirewound, 0.018",
    "pot, 10k_preset, 0.15",
    "cap, 1u_film, 0.0042",
    "cap, 100n_disc, 0.0074",
    "cap, 47p_polystyrene, 0.0042",
    "cap, 100p_mica, 0.0015",
    "cap-pol, 10u_25V_bead, 0.0039",
    "cap-pol, 1000u_40V, 0.061",
    "diode, small-signal_Si, 0.0075",
    "diode, 1_A, 0.028",
    "bridge, 80_V_1.5_A, 0.028",
    "zener, 16V, 0.024",
    "npn, small-signal_NPN, 0.0011",
    "pnp, medium-power_PNP, 0.042",
    "njfet, N-channel_JFET, 0.099",
    "npn-array, five-NPN, 0.024",
    "dual-opamp, -, 0.024",
    "quad-opamp, -, 0.041",
    "switch-dpst, mains_switch, 0.0030",
    "switch-rotary, -, 0.99",
    "relay, -, 0.28",
    "fuse, T100mA, 0.020",
    "crystal, -, 0.096"
  })
  void ofKindsThatTheTableHas(String kind, String value, double rate) {
    FailureRates.Rate found = rate(kind, value);
    assertThat(found.perMillionHours()).isEqualTo(rate);
    assertThat(found.published()).isTrue();
  }

  /** What the table lacks is assumed, and says so. */
  @ParameterizedTest
  @CsvSource({"jack, input", "transformer, -", "no-such-kind, -"})
  void ofKindsThatItHasNot(String kind, String value) {
    assertThat(rate(kind, value).published()).isFalse();
  }

  private static FailureRates.Rate rate(String kind, String value) {
    Circuit circuit = new Boards().parts("X1 %s %s 1=A".formatted(kind, value)).circuit();
    return FailureRates.of(circuit, circuit.map().part(new PartId("X1")).orElseThrow());
  }
}
