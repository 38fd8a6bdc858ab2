package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;

import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/** Pitch 2.54 mm, rows 7.62 mm apart: JEDEC MS-001, as the packages' table has it. */
class PlacedScaleTest {
  private static BoardMap board() {
    return BoardMapSamples.with(
        BoardMapSamples.blank(),
        part("U1", "opamp", "", "1", "2", "3", "4", "5", "6", "7", "8").withCasing("DIP-8"),
        part(
                "U2", "logic", "", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12",
                "13", "14")
            .withCasing("DIP-14"),
        part("R1", "resistor", "", "1", "2").withCasing("AXIAL"));
  }

  private static BoardMap placed(BoardMap map, String pin, double x, double y) {
    return map.with(
        MapTables.PLACEMENTS,
        map.placements()
            .with(new Placement(TOP, Subject.parse(pin), new Point(x, y), says(Evidence.SEEN))));
  }

  /** Pins 1 and 4 of a DIP are three pitches apart: 7.62 mm, here 76.2 pixels. */
  @Test
  void twoPinsOfAPackage_tellTheScale() {
    BoardMap map = placed(placed(board(), "U1.1", 100, 100), "U1.4", 176.2, 100);
    PlacedScale found = PlacedScale.near(map, TOP, new Point(0, 0)).orElseThrow();
    assertThat(found.part().text()).isEqualTo("U1");
    assertThat(found.scale().distance(new Point(0, 0), new Point(0, 254)))
        .isEqualTo(25.4, within(1e-9));
  }

  @Test
  void ofSeveralPackages_theNearestTellsIt() {
    BoardMap map = placed(placed(board(), "U1.1", 100, 100), "U1.4", 176.2, 100);
    map = placed(placed(map, "U2.1", 3000, 100), "U2.7", 3000, 252.4 + 152.4);
    assertThat(PlacedScale.near(map, TOP, new Point(2500, 0)).orElseThrow().part().text())
        .isEqualTo("U2");
    assertThat(PlacedScale.near(map, TOP, new Point(300, 0)).orElseThrow().part().text())
        .isEqualTo("U1");
  }

  @Test
  void onePin_orLeadsThatBend_tellNone() {
    BoardMap map = placed(board(), "U1.1", 100, 100);
    map = placed(placed(map, "R1.1", 10, 10), "R1.2", 90, 10);
    map = placed(placed(map, "U2.1", 500, 500), "U2.2", 500, 500);
    assertThat(PlacedScale.near(map, TOP, new Point(0, 0))).isEmpty();
    assertThat(PlacedScale.near(BoardMapSamples.blank(), TOP, new Point(0, 0))).isEmpty();
  }
}
