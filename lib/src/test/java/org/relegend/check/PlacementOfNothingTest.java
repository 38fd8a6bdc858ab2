package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;

class PlacementOfNothingTest {
  private static final Check CHECK = new PlacementOfNothing();

  private static BoardMap placed(String... subjects) {
    List<Placement> placements = new ArrayList<>();
    for (String subject : subjects) {
      placements.add(
          new Placement(TOP, Subject.parse(subject), new Point(1, 1), says(Evidence.SEEN)));
    }
    return divider().with(MapTables.PLACEMENTS, Table.of(placements));
  }

  @ParameterizedTest
  @ValueSource(strings = {"R9", "R1.7", "R9.1", "R1/X", "net:NONE"})
  void fires_forWhatTheMapHasNot(String subject) throws EditRefusedException {
    BoardMap map = placed(subject, "R1");
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).contains("is placed on Component side, but the map doesn't");
    assertThat(subjects(finding)).containsExactly(subject);
    assertThat(assertFixed(CHECK, map, finding).placements()).hasSize(1);
  }

  @Test
  void isQuiet_forWhatTheMapHas() {
    assertQuiet(CHECK, placed("R1", "R1.1", "net:MID"));
  }
}
