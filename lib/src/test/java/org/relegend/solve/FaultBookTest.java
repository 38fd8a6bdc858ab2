package org.relegend.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FaultBookTest {
  static List<ChannelCircuit> circuits() {
    return SampleCircuits.all();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void nearlyEveryFault_hasASolution(ChannelCircuit circuit) {
    FaultBook book = FaultBook.of(circuit.mapped().netlist());
    List<String> unsolved =
        book.faults().stream()
            .filter(fault -> !fault.solved())
            .map(fault -> fault.fault().part() + " " + fault.fault().text())
            .toList();
    assertThat(book.faults()).hasSizeGreaterThan(100);
    assertThat(unsolved).hasSizeLessThanOrEqualTo(book.faults().size() / 50);
  }

  private static final Netlist DIVIDER =
      new Netlist(
          List.of(
              Device.of("R1", new Resistance(1000, 0.03), "V", "M"),
              Device.of("R2", new Resistance(1000, 0.03), "M", "0"),
              Device.of("C1", new Capacitance(1e-6, 1e10), "M", "0")),
          Map.of("0", 0.0, "V", 10.0));

  private static PredictedFault find(FaultBook book, String part, String text) {
    return book.faults().stream()
        .filter(fault -> fault.fault().part().equals(part) && fault.fault().text().equals(text))
        .findFirst()
        .orElseThrow();
  }

  /** By Ohm's law. */
  @Test
  void faultsOfADivider() {
    FaultBook book = FaultBook.of(DIVIDER);
    assertThat(find(book, "R1", "open").volts("M").orElseThrow()).isCloseTo(0, within(1e-3));
    assertThat(find(book, "R2", "open").volts("M").orElseThrow()).isCloseTo(10, within(1e-3));
    assertThat(find(book, "R2", "risen to three times its value").volts("M").orElseThrow())
        .isCloseTo(7.5, within(1e-3));
    assertThat(find(book, "C1", "shorted").volts("M").orElseThrow())
        .isCloseTo(10 / 1001.998, within(1e-4));
    assertThat(find(book, "C1", "open").volts("M").orElseThrow()).isCloseTo(5, within(1e-3));
    assertThat(book.spread("M")).isCloseTo(2.5 * 0.03 * Math.sqrt(2), within(2e-3));
    assertThat(book.spread("V")).isZero();
  }

  /** Behind 10 megohms of a resistor that is open, a meter of 10 megohms shows half. */
  @Test
  void whatAMeterShows_allowsForItsLoad() {
    Netlist high =
        new Netlist(
            List.of(
                Device.of("R1", new Resistance(10e6), "V", "M"),
                Device.of("R2", new Resistance(1e6), "M", "0")),
            Map.of("0", 0.0, "V", 10.0));
    PredictedFault open = find(FaultBook.of(high), "R2", "open");
    assertThat(open.volts("M").orElseThrow()).isCloseTo(10, within(1e-2));
    assertThat(open.shown("M", 10e6).orElseThrow()).isCloseTo(5, within(1e-2));
  }

  @Test
  void bridgesAndBrokenConductors() {
    Fault bridge = UsualFailures.bridge("V", "M");
    Fault broken = UsualFailures.broken("M", List.of(new DeviceTerminal("R2", 0)));
    FaultBook book = FaultBook.of(DIVIDER, List.of(bridge, broken));
    assertThat(book.faults().get(0).volts("M").orElseThrow()).isCloseTo(10, within(0.01));
    assertThat(book.faults().get(1).volts("M").orElseThrow()).isCloseTo(10, within(0.01));
    assertThat(broken.text()).isEqualTo("M broken before R2");
  }

  @Test
  void aFaultOfSomethingElse_isRefused() {
    Fault other = UsualFailures.broken("M", List.of(new DeviceTerminal("R9", 0)));
    assertThatThrownBy(() -> other.appliedTo(DIVIDER)).hasMessageContaining("no device R9");
  }

  /** A fault is a value: the healthy circuit stays as it is. */
  @Test
  void theHealthyCircuit_staysAsItIs() {
    FaultBook book = FaultBook.of(DIVIDER);
    assertThat(book.healthy().netlist()).isEqualTo(DIVIDER);
    assertThat(book.healthy().volts("M").orElseThrow()).isCloseTo(5, within(1e-3));
  }
}
