package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Point;
import org.relegend.map.Table;

class LineUpOfNothingTest {
  private static final Check CHECK = new LineUpOfNothing();

  private static BoardMap linedUp(PictureId with) {
    PicturePairs pairs =
        new PicturePairs(
            TOP,
            with,
            PicturePairs.Origin.CLICKED,
            List.of(new PicturePairs.Spot(new Point(1, 2), new Point(3, 4))),
            List.of(says(Evidence.SEEN)));
    return divider().with(MapTables.LINE_UPS, Table.of(List.of(pairs)));
  }

  @Test
  void fires_forAPictureThatIsGone() throws EditRefusedException {
    BoardMap map = linedUp(new PictureId("gone"));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).endsWith("lined up, but the map doesn't have picture gone");
    assertFixed(CHECK, map, finding);
  }

  @Test
  void isQuiet_whereBothAreThere() {
    assertQuiet(CHECK, linedUp(PAGE));
  }
}
