package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;

class ShortedBarrierTest {
  private static final Check CHECK = new ShortedBarrier();

  @Test
  void fires_whereMainsComesRoundIt() {
    Finding finding =
        only(
            CHECK,
            HazardMaps.joined(HazardMaps.demo(), "R9", "resistor", "1M", "MAINS_N_IN", "0V"));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(subjects(finding)).startsWith("T1").contains("R9");
  }

  @Test
  void fires_wherePinsOfBothSidesAreOnOneNet() {
    BoardMap map = HazardMaps.demo();
    Net neutral = map.net(new NetId("MAINS_N_SW")).orElseThrow();
    Net.Member pin = BoardMapSamples.net("X", "T1.4").members().get(0);
    map = map.with(MapTables.NETS, map.nets().with(neutral.withMember(pin)));
    Finding finding = only(CHECK, map);
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.message()).startsWith("T1 isolates nothing");
  }

  @Test
  void isQuiet_whereItIsolates() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
