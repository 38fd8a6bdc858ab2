package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;

class PlacementOutsidePictureTest {
  private static final Check CHECK = new PlacementOutsidePicture();

  private static BoardMap placed(double x, double y) {
    Placement placement =
        new Placement(TOP, Subject.of(new PartId("R1")), new Point(x, y), says(Evidence.SEEN));
    return divider().with(MapTables.PLACEMENTS, Table.of(List.of(placement)));
  }

  @ParameterizedTest
  @CsvSource({"4000.5,10", "-1,10", "10,3001", "10,-0.25"})
  void fires_beyondEachEdge(double x, double y) throws EditRefusedException {
    Finding finding = only(CHECK, placed(x, y));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.message()).startsWith("R1 is placed at ").endsWith("which is 4000 x 3000");
    assertThat(finding.picture()).contains(TOP);
    assertFixed(CHECK, placed(x, y), finding);
  }

  @ParameterizedTest
  @CsvSource({"0,0", "4000,3000", "17,4.5"})
  void isQuiet_insideAndOnTheEdge(double x, double y) {
    assertQuiet(CHECK, placed(x, y));
  }
}
