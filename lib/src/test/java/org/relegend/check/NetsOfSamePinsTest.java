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
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;

class NetsOfSamePinsTest {
  private static final Check CHECK = new NetsOfSamePins();

  @Test
  void fires_forOneNetUnderTwoNames() throws EditRefusedException {
    BoardMap map = with(divider(), net("MIDDLE", "R2.1", "R1.2"));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).contains("MID and MIDDLE", "2 pins");
    assertThat(subjects(finding)).containsExactly("net:MID", "net:MIDDLE");
    BoardMap mended = assertFixed(CHECK, map, finding);
    assertThat(mended.nets()).hasSize(3);
  }

  @Test
  void fires_onceForThreeNames() throws EditRefusedException {
    BoardMap map = with(divider(), net("M2", "R2.1", "R1.2"), net("M3", "R2.1", "R1.2"));
    assertFixed(CHECK, map, only(CHECK, map));
  }

  @Test
  void isQuiet_whereOneHasMorePinsOrBothHaveNone() {
    assertQuiet(CHECK, with(divider(), net("MORE", "R1.2", "R2.1", "R2.2"), net("E1"), net("E2")));
  }
}
