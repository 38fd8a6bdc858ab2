package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.NetId;
import org.relegend.map.Potential;

/** Half-traced boards without inlet, supply or rated capacitor (common practice). */
class HighVoltagePartsTest {
  private static BoardMap board(String kind, String pin) {
    BoardMap map =
        with(
            BoardMapSamples.blank(),
            twoPin("R1", "resistor", "100k"),
            twoPin("R2", "resistor", "1k"),
            part("V1", kind, "", pin));
    return with(
        map, net("FEED", "R1.1"), net("NODE", "R1.2", "V1." + pin, "R2.1"), net("GND", "R2.2"));
  }

  private static NodeHazard.Grade grade(BoardMap map, String net) {
    return Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS).at(new NetId(net)).grade();
  }

  @ParameterizedTest
  @CsvSource({
    "triode,A",
    "pentode,G2",
    "valve-diode,K",
    "stabiliser-tube,A",
    "nixie,A",
    "nixie,3",
    "crt,A",
    "crt,G3",
    "flash-tube,A",
    "neon,1",
    "geiger-tube,A",
    "flyback,4",
    "triac,MT2",
    "scr,A"
  })
  void of_aPartForHighVoltage_takesItsNodesAndWhatFeedsThemAsHigh(String kind, String pin) {
    BoardMap map = board(kind, pin);
    assertThat(grade(map, "NODE")).isEqualTo(NodeHazard.Grade.UNKNOWN);
    assertThat(grade(map, "FEED")).isEqualTo(NodeHazard.Grade.UNKNOWN);
    assertThat(grade(map, "GND")).isNotEqualTo(NodeHazard.Grade.UNKNOWN);
  }

  @ParameterizedTest
  @CsvSource({"triode,G", "triode,H1", "pentode,G1", "lamp,1", "npn,C", "led,A"})
  void of_gridsHeatersAndOrdinaryParts_saysNothing(String kind, String pin) {
    assertThat(grade(board(kind, pin), "NODE")).isNotEqualTo(NodeHazard.Grade.UNKNOWN);
  }

  @Test
  void of_aToldVoltage_endsThere() {
    BoardMap map = HazardMaps.with(board("nixie", "A"), "NODE", Potential.Nature.DC, 12);
    for (String net : List.of("NODE", "FEED")) {
      assertThat(grade(map, net)).isNotEqualTo(NodeHazard.Grade.UNKNOWN);
    }
  }
}
