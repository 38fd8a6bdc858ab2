package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;

class PartWithoutPinsTest {
  private static final Check CHECK = new PartWithoutPins();

  @Test
  void fires_onceForEachBoard() {
    BoardMap map =
        with(
            divider(),
            part("C1", "cap", "1n"),
            part("C2", "cap", "1n"),
            part("J1", "", "").withBoard(new BoardId("psu")));
    assertThat(inspect(CHECK, map))
        .extracting(Finding::message)
        .containsExactly(
            "Board main: no pin is known of 2 parts: C1, C2",
            "Board psu: no pin is known of 1 part: J1");
  }

  @Test
  void manyParts_areCountedNotListed() {
    BoardMap map = blank();
    for (int i = 1; i <= 40; i++) {
      map = with(map, part("C" + i, "cap", "1n"));
    }
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).endsWith("C11, C12 and 28 more");
    assertThat(finding.subjects()).hasSize(40);
  }

  @Test
  void isQuiet_whereEachPartHasPins() {
    assertQuiet(CHECK, divider());
  }
}
