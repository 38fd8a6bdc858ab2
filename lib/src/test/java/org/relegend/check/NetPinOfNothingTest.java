package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.NetId;

class NetPinOfNothingTest {
  private static final Check CHECK = new NetPinOfNothing();

  @Test
  void fires_forPinsThatNoPartHas() throws EditRefusedException {
    BoardMap map = with(divider(), net("X", "R1.1", "R1.7", "Q9.B"));
    Finding finding = only(CHECK, map);
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.message()).isEqualTo("Net X joins Q9.B, R1.7, which no part of the map has");
    assertThat(subjects(finding)).containsExactly("net:X", "Q9.B", "R1.7");
    assertThat(assertFixed(CHECK, map, finding).net(new NetId("X")).orElseThrow().pins())
        .hasSize(1);
  }

  @Test
  void isQuiet_whereEachPinIsThere() {
    assertQuiet(CHECK, divider());
  }
}
