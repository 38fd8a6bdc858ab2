package org.relegend.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.PartId;

class MappedCircuitTest {
  private static MappedCircuit mapped(String lines) {
    return new ChannelCircuit("sample", Map.of("V+", 10.0), lines).mapped();
  }

  private static double volts(MappedCircuit mapped, String node) {
    return OperatingPoint.of(mapped.netlist()).volts(node).orElseThrow();
  }

  @Test
  void rails_areBoundaries_andPartsAreDevices() {
    MappedCircuit mapped =
        mapped(
            """
            R1 resistor 4k7 V+ M
            R2 resistor 4k7 M GND
            """);
    assertThat(mapped.gaps()).isEmpty();
    assertThat(mapped.open()).isEmpty();
    assertThat(mapped.netlist().known()).containsEntry("V+", 10.0).containsEntry("GND", 0.0);
    assertThat(volts(mapped, "A_M")).isCloseTo(5, within(1e-6));
  }

  @Test
  void aPartWithoutValue_isAGap_andItsNodesAreOpen() {
    MappedCircuit mapped =
        mapped(
            """
            R1 resistor 4k7 V+ M
            R2 resistor 4k7 M GND
            R3 resistor - M N
            R4 resistor 1k N GND
            """);
    assertThat(mapped.gaps()).contains(new Gap(new PartId("R103"), "its value isn't known"));
    assertThat(mapped.open()).contains("A_M", "A_N");
    OperatingPoint point = OperatingPoint.of(mapped.netlist());
    assertThat(mapped.doubt(point, "A_M")).isGreaterThanOrEqualTo(10);
    assertThat(mapped.doubt(point, "V+")).isZero();
  }

  @Test
  void kindsThatNobodyKnows_andThoseWithoutModel_areGaps() {
    MappedCircuit mapped =
        mapped(
            """
            R1 resistor 4k7 V+ M
            X1 gizmo - M GND
            Q1 scr C106 A=M K=GND G=GND
            """);
    assertThat(mapped.gaps().stream().map(Gap::why))
        .contains("its kind isn't known", "there is no model of its kind");
    assertThat(mapped.open()).contains("A_M");
  }

  @Test
  void loosePins_areOpen() {
    BoardMap map =
        new ChannelCircuit(
                "sample", Map.of("V+", 10.0), "R1 resistor 4k7 V+ M\nR2 resistor 1k M GND")
            .map();
    BoardMap loose =
        map.with(
            MapTables.NETS,
            map.nets()
                .with(
                    map.net(new NetId("A_M"))
                        .orElseThrow()
                        .without(org.relegend.map.PinRef.parse("R102.1"))));
    MappedCircuit mapped = MappedCircuit.of(Circuit.of(loose), OperatingState.declared(loose));
    assertThat(mapped.open()).contains("R102.1", "A_M");
  }

  /** A stage that is read at both ends is solved by itself, whatever lies beyond. */
  @Test
  void nodesThatWereRead_areBoundaries() {
    BoardMap map =
        new ChannelCircuit(
                "sample",
                Map.of("V+", 10.0),
                """
                R1 resistor - V+ M
                R2 resistor 1k M N
                R3 resistor 3k N GND
                """)
            .map();
    OperatingState state = OperatingState.declared(map).withKnown(new NetId("A_M"), 8);
    MappedCircuit mapped = MappedCircuit.of(Circuit.of(map), state);
    OperatingPoint point = OperatingPoint.of(mapped.netlist());
    assertThat(point.volts("A_N").orElseThrow()).isCloseTo(6, within(1e-6));
    assertThat(mapped.doubt(point, "A_N")).isZero();
    assertThat(mapped.doubt(point, "B_N")).isGreaterThan(1);
  }

  /** What is behind an op-amp's output moves it little; what feeds its input moves it all. */
  @Test
  void doubt_followsTheCircuit() {
    MappedCircuit mapped =
        mapped(
            """
            R1 resistor 10k V+ I
            R2 resistor 10k I GND
            U1 opamp TL071 3=I 2=O 6=O 7=V+ 4=GND
            R3 resistor 10k O L
            R4 resistor 10k L GND
            """);
    MappedCircuit open = new MappedCircuit(mapped.netlist(), mapped.gaps(), Set.of("A_L"));
    OperatingPoint point = OperatingPoint.of(mapped.netlist());
    assertThat(open.doubt(point, "A_L")).isGreaterThanOrEqualTo(10);
    assertThat(open.doubt(point, "A_O")).isLessThan(0.01);
    MappedCircuit input = new MappedCircuit(mapped.netlist(), mapped.gaps(), Set.of("A_I"));
    assertThat(input.doubt(point, "A_O")).isGreaterThan(5);
  }

  @Test
  void fittedValuesWipersAndSwitches_areTheStates() {
    BoardMap map =
        new ChannelCircuit(
                "sample",
                Map.of("V+", 10.0),
                """
                RV1 pot 10k V+ W GND
                S1 switch-spst - 1=W 2=X
                R1 resistor 10k X GND
                """)
            .map();
    OperatingState declared = OperatingState.declared(map);
    OperatingState off =
        new OperatingState(
            declared.known(),
            Map.of(new PartId("S101"), "open"),
            Map.of(new PartId("RV101"), 0.25),
            Map.of(),
            Set.of());
    Circuit circuit = Circuit.of(map);
    OperatingPoint on = OperatingPoint.of(MappedCircuit.of(circuit, declared).netlist());
    OperatingPoint other = OperatingPoint.of(MappedCircuit.of(circuit, off).netlist());
    assertThat(on.volts("A_X").orElseThrow()).isCloseTo(4, within(0.01));
    assertThat(other.volts("A_W").orElseThrow()).isCloseTo(7.5, within(0.01));
    assertThat(other.volts("A_X").orElseThrow()).isCloseTo(0, within(0.01));
  }
}
