package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.lineup.LinedUpMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Side;

class LineUpPairWrongTest {
  private static final Check CHECK = new LineUpPairWrong();

  /** Eight pairs, the fifth of them clicked so far off. */
  private static BoardMap linedUp(double off) {
    LinedUpMaps board =
        new LinedUpMaps(1).photo("solder", Side.SOLDER).pairs("component", "solder", 8, 1);
    PicturePairs pairs = board.map().lineUps().at(0);
    List<Spot> spots = new ArrayList<>(pairs.spots());
    Spot fifth = spots.get(4);
    spots.set(4, new Spot(fifth.onA(), fifth.onB().plus(off, 0)));
    return board.put("component", "solder", pairs.origin(), spots).map();
  }

  @Test
  void fires_forAPairThatIsLeftOut() throws EditRefusedException {
    Finding finding = only(CHECK, linedUp(120));
    assertThat(finding.message())
        .startsWith("Pair 5 of the line-up of Component side and solder is off by 1");
    BoardMap mended = assertFixed(CHECK, linedUp(120), finding);
    assertThat(mended.lineUps().at(0).spots()).hasSize(7);
  }

  @Test
  void isQuiet_whereAllAgree() {
    assertQuiet(CHECK, linedUp(0));
  }
}
