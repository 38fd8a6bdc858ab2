package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.Potential;

class HighVoltageTest {
  /** A valve stage: 280 V by R1 to an anode of which nobody said the voltage. */
  private static BoardMap stage() {
    BoardMap map =
        with(
            BoardMapSamples.blank(),
            twoPin("R1", "resistor", "100k"),
            part("V1", "triode", "", "A", "G", "K"),
            twoPin("C1", "cap", "100n"),
            twoPin("R2", "resistor", "1M"));
    map =
        with(
            map,
            net("HT", "R1.1"),
            net("ANODE", "R1.2", "V1.A", "C1.1"),
            net("K", "V1.K"),
            net("NEXT", "C1.2", "R2.1"),
            net("0V", "R2.2"));
    map = HazardMaps.with(map, "K", Potential.Nature.DC, 1.6);
    map = HazardMaps.with(map, "0V", Potential.Nature.REFERENCE, 0);
    return HazardMaps.with(map, "HT", Potential.Nature.DC, 280);
  }

  private static Hazards of(BoardMap map, VoltageLimits limits) {
    return Hazards.of(Circuit.of(map), limits);
  }

  private static Set<String> nets(Hazards hazards) {
    Set<String> nets = new TreeSet<>();
    hazards.reached().forEach(node -> nets.add(node.node().subject().toString()));
    return nets;
  }

  @Test
  void undeclaredAnode_isHighAsWell_butNotWhatACapacitorKeepsOff() {
    Hazards hazards = of(stage(), VoltageLimits.INSTRUMENTS);
    assertThat(nets(hazards)).containsExactly("net:ANODE", "net:HT");
    assertThat(hazards.reached()).allMatch(r -> r.kind() == HazardZone.Kind.HIGH_VOLTAGE);
    assertThat(hazards.reached().get(1).through()).map(Object::toString).containsExactly("R1");
    assertThat(hazards.unplaced()).hasSize(4);
  }

  /** The published limits themselves count as not high, except OSHA's "50 volts or more". */
  @ParameterizedTest
  @CsvSource({
    "iec-61010, DC, 60, false",
    "iec-61010, DC, -60.1, true",
    "iec-61010, AC, 30, false",
    "iec-61010, AC, 30.1, true",
    "iec-61010-wet, DC, 35.1, true",
    "iec-61010-wet, AC, 16, false",
    "iec-61010-fault, AC, 50.1, true",
    "iec-61010-fault, DC, 120, false",
    "iec-62368-es1, DC, 60.1, true",
    "iec-62368-es2, DC, 120, false",
    "elv, AC, 50.1, true",
    "dry-touch, AC, 25.1, true",
    "osha, DC, 50, true",
    "osha, AC, 49.9, false",
    "us-navy, DC, 15.1, true"
  })
  void limits_asPublished(String name, Potential.Nature nature, double volts, boolean high) {
    VoltageLimits limits = VoltageLimits.find(name).orElseThrow();
    BoardMap map = HazardMaps.with(stage(), "HT", nature, volts);
    assertThat(nets(of(map, limits)).contains("net:HT")).isEqualTo(high);
  }

  @Test
  void netWithoutVoltage_isListed() {
    BoardMap map = HazardMaps.with(stage(), "HT", Potential.Nature.DC, 0);
    Hazards hazards = of(map, VoltageLimits.INSTRUMENTS);
    assertThat(hazards.noVolts()).containsExactly(new NetId("HT"));
    assertThat(hazards.reached()).isEmpty();
  }

  @Test
  void everyLimitSet_namesItsSource_andIsFoundByItsName() {
    assertThat(VoltageLimits.ALL).hasSize(9).allMatch(set -> !set.source().isBlank());
    assertThat(VoltageLimits.ALL)
        .allMatch(set -> VoltageLimits.find(set.name()).orElseThrow().equals(set));
    assertThat(VoltageLimits.find("nosuch")).isEmpty();
  }
}
