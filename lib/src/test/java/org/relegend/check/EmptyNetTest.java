package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;

class EmptyNetTest {
  private static final Check CHECK = new EmptyNet();

  @Test
  void fires_forANetWithoutPins() throws EditRefusedException {
    BoardMap map = with(divider(), net("NEW"));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).isEqualTo("Net NEW has no pins");
    assertFixed(CHECK, map, finding);
  }

  @Test
  void isQuiet_whereEachNetHasPins() {
    assertQuiet(CHECK, divider());
  }
}
