package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;

class PlacementOnNoPictureTest {
  private static final Check CHECK = new PlacementOnNoPicture();

  private static BoardMap placedOn(String picture) {
    Placement placement =
        new Placement(
            new PictureId(picture),
            Subject.of(new PartId("R1")),
            new Point(1, 1),
            says(Evidence.SEEN));
    return divider().with(MapTables.PLACEMENTS, Table.of(List.of(placement)));
  }

  @Test
  void fires_forAPictureThatIsGone() throws EditRefusedException {
    Finding finding = only(CHECK, placedOn("gone"));
    assertThat(finding.message())
        .isEqualTo("R1 is placed on picture gone, which the map doesn't have");
    assertFixed(CHECK, placedOn("gone"), finding);
  }

  @Test
  void isQuiet_forAPictureOfTheMap() {
    assertQuiet(CHECK, placedOn("component"));
  }
}
