package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

class ZoneOnNoPictureTest {
  private static final Check CHECK = new ZoneOnNoPicture();

  private static BoardMap zonedOn(String picture) {
    List<Point> outline = List.of(new Point(0, 0), new Point(9, 0), new Point(0, 9));
    HazardZone zone =
        new HazardZone(
            new ZoneId("z1"),
            new PictureId(picture),
            HazardZone.Kind.STORED_CHARGE,
            outline,
            "",
            List.of(says(Evidence.SEEN)));
    return divider().with(MapTables.ZONES, Table.of(List.of(zone)));
  }

  @Test
  void fires_forAZoneThatNobodySees_andHasNoFixToClickAway() {
    Finding finding = only(CHECK, zonedOn("gone"));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.message()).startsWith("Hazard zone z1 (stored-charge) lies on picture gone");
    assertThat(finding.fix()).isEmpty();
  }

  @Test
  void isQuiet_forAZoneOnAPictureOfTheMap() {
    assertQuiet(CHECK, zonedOn("component"));
  }
}
