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

class ZoneOutsidePictureTest {
  private static final Check CHECK = new ZoneOutsidePicture();

  private static BoardMap zoned(double right) {
    List<Point> outline = List.of(new Point(0, 0), new Point(right, 0), new Point(0, 90));
    HazardZone zone =
        new HazardZone(
            new ZoneId("z1"),
            TOP,
            HazardZone.Kind.MAINS,
            outline,
            "",
            List.of(says(Evidence.SEEN)));
    return divider().with(MapTables.ZONES, Table.of(List.of(zone)));
  }

  @Test
  void fires_forAZoneBeyondTheEdge() {
    Finding finding = only(CHECK, zoned(4010));
    assertThat(finding.message())
        .isEqualTo("Hazard zone z1 (mains) has 1 of its 3 corners outside of Component side");
    assertThat(finding.fix()).isEmpty();
  }

  @Test
  void isQuiet_forAZoneUpToTheEdge() {
    assertQuiet(CHECK, zoned(4000));
  }
}
