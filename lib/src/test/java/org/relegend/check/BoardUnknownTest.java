package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapTables;
import org.relegend.map.Table;

class BoardUnknownTest {
  private static final Check CHECK = new BoardUnknown();

  @Test
  void fires_forPartsAndPhotosOfABoardThatIsNotListed() throws EditRefusedException {
    BoardMap map = divider().with(MapTables.BOARDS, Table.empty());
    Finding finding = only(CHECK, map);
    assertThat(finding.message())
        .isEqualTo("The map doesn't list board main, but has 2 parts and 1 photo of it");
    assertThat(subjects(finding)).containsExactly("R1", "R2");
    assertFixed(CHECK, map, finding);
    assertThat(only(CHECK, blank().with(MapTables.BOARDS, Table.empty())).subjects()).isEmpty();
  }

  @Test
  void isQuiet_whereEachBoardIsListed() {
    assertQuiet(CHECK, divider());
  }
}
