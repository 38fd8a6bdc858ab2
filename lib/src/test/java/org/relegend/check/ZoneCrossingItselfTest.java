package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Point;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

class ZoneCrossingItselfTest {
  private static final Check CHECK = new ZoneCrossingItself();

  private static BoardMap zoned(Point... outline) {
    HazardZone zone =
        new HazardZone(
            new ZoneId("z1"),
            TOP,
            HazardZone.Kind.MAINS,
            List.of(outline),
            "",
            List.of(says(Evidence.SEEN)));
    return divider().with(MapTables.ZONES, Table.of(List.of(zone)));
  }

  @Test
  void fires_forABowTie() {
    Finding finding =
        only(CHECK, zoned(new Point(0, 0), new Point(9, 9), new Point(9, 0), new Point(0, 9)));
    assertThat(finding.message())
        .isEqualTo(
            "The outline of hazard zone z1 (mains) on Component side crosses itself or encloses"
                + " nothing");
  }

  @Test
  void isQuiet_forAPlainOutline() {
    assertQuiet(CHECK, zoned(new Point(0, 0), new Point(9, 0), new Point(9, 9), new Point(0, 9)));
  }
}
