package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

class NotYetPlacedTest {
  private static final Check CHECK = new NotYetPlaced();

  @Test
  void fires_onceForEachBoardWithCounts() throws EditRefusedException {
    BoardMap map = with(divider(), part("J1", "", "", "1").withBoard(new BoardId("psu")));
    map = placed(map, TOP, "R1");
    map = placed(map, TOP, "R1.1");
    map = placed(map, PAGE, "R1.1");
    List<Finding> findings = inspect(CHECK, map);
    assertThat(findings)
        .extracting(Finding::key)
        .containsExactly("not-yet-placed - main", "not-yet-placed - psu");
    assertThat(findings).extracting(Finding::severity).containsOnly(Severity.INFORMATION);
    assertThat(findings)
        .extracting(Finding::message)
        .containsExactly(
            "Board main: 1 of 2 parts and 1 of 4 pins are placed on photos, 0 parts on pages; on no"
                + " picture: 1 part, 3 pins",
            "Board psu: 0 of 1 part and 0 of 1 pin are placed on photos, 0 parts on pages; on no"
                + " picture: 1 part, 1 pin");
  }

  @Test
  void isQuiet_whereAllIsPlacedSomewhere() throws EditRefusedException {
    BoardMap map = divider();
    for (String subject : List.of("R1", "R1.1", "R1.2", "R2")) {
      map = placed(map, TOP, subject);
    }
    map = placed(placed(map, PAGE, "R2.1"), PAGE, "R2.2");
    assertQuiet(CHECK, map);
    assertQuiet(CHECK, blank());
  }

  private static BoardMap placed(BoardMap map, PictureId picture, String subject)
      throws EditRefusedException {
    Placement placement =
        new Placement(picture, Subject.parse(subject), new Point(5, 5), says(Evidence.SEEN));
    return MapTables.PLACEMENTS.put(placement).applyTo(map);
  }
}
