package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.bench.JobSamples;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.lineup.LinedUpMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

/** No probe is sent into a hazard area (common practice), whichever photo it was drawn on. */
class ProbePointsTest {
  private static final String OTHER = "OTHER";
  private static final Point ON_TOP = new Point(1000, 1000);

  private final LinedUpMaps board = new LinedUpMaps(5).photo(OTHER, Side.COMPONENT);

  /** A pin of MID is placed on the other photo alone, the zone around it drawn on the first. */
  private static BoardMap marked(LinedUpMaps board) {
    Point there = board.truth(TOP.text(), OTHER).apply(ON_TOP);
    List<Point> around =
        List.of(
            ON_TOP.plus(-200, -200),
            ON_TOP.plus(200, -200),
            ON_TOP.plus(200, 200),
            ON_TOP.plus(-200, 200));
    HazardZone zone =
        new HazardZone(
            new ZoneId("mains-1"),
            TOP,
            HazardZone.Kind.MAINS,
            around,
            "",
            List.of(says(Evidence.SEEN)));
    Placement pin =
        new Placement(
            new PictureId(OTHER),
            Subject.of(
                new PinRef(board.map().parts().stream().findFirst().orElseThrow().id(), "2")),
            there,
            says(Evidence.SEEN));
    return board
        .map()
        .with(MapTables.ZONES, Table.of(List.of(zone)))
        .with(MapTables.PLACEMENTS, board.map().placements().with(pin));
  }

  private static ProbePoints places(BoardMap map) {
    return new ProbePoints(UnitReadings.of(JobSamples.blank(), Circuit.of(map)));
  }

  @Test
  void pin_isNotInAZoneThatALineUpCarriesToItsPhoto() {
    NetId mid = new NetId("MID");
    assertThat(places(marked(board)).pin(mid)).map(pin -> pin.part().text()).contains("R1");
    board.pairs(TOP.text(), OTHER, 12, 0.5);
    assertThat(places(marked(board)).pin(mid)).map(pin -> pin.part().text()).contains("R2");
  }
}
