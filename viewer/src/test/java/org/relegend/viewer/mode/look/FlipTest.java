package org.relegend.viewer.mode.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.relegend.map.BoardMapSamples.TOP;

import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.Point;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.SessionBench;
import org.relegend.viewer.session.ViewRequest;

/** The photos are 4000 x 3000 pixels. */
class FlipTest {
  private static ViewRequest flipped(BoardMap map, Point centre) {
    SessionBench bench = new SessionBench(map);
    bench.session.room(OtherSide.class).over(centre);
    assertThat(bench.session.desk().photo().orElseThrow().id()).isEqualTo(SessionBench.SOLDER);
    return bench.looks.get(0);
  }

  private static BoardMap turned(BoardTurn turn) {
    BoardMap map = SessionBench.twoChannels();
    Photo below = (Photo) map.picture(SessionBench.SOLDER).orElseThrow();
    return map.with(MapTables.PICTURES, map.pictures().with(below.withTurn(turn)));
  }

  @Test
  void overASideEdge_leftAndRightChangePlaces() {
    assertThat(flipped(turned(BoardTurn.SIDE_EDGE), new Point(1000, 700)).at())
        .isEqualTo(new Point(3000, 700));
  }

  @Test
  void overTheTopEdge_topAndBottomChangePlaces() {
    assertThat(flipped(turned(BoardTurn.TOP_EDGE), new Point(1000, 600)).at())
        .isEqualTo(new Point(1000, 2400));
  }

  @Test
  void sameSpotOfTheScreen() {
    assertThat(flipped(turned(BoardTurn.SIDE_EDGE), new Point(1000, 700)).comeFrom())
        .contains(new ViewRequest.Spot(TOP, new Point(1000, 700)));
  }

  @Test
  void padsPlacedOnBothPhotos_tellBetter() {
    BoardMap map = turned(BoardTurn.SIDE_EDGE);
    double[][] pads = {{500, 500}, {3000, 600}, {2800, 2400}, {700, 2200}, {1500, 1400}};
    for (int i = 0; i < pads.length; i++) {
      double x = pads[i][0];
      double y = pads[i][1];
      map = SessionBench.placed(map, TOP, "U101." + (i + 1), x, y);
      map =
          SessionBench.placed(
              map, SessionBench.SOLDER, "U101." + (i + 1), 3600 - 0.9 * x, 0.9 * y + 50);
    }
    Point there = flipped(map, new Point(2000, 1000)).at();
    assertThat(there.x()).isCloseTo(1800, within(1.0));
    assertThat(there.y()).isCloseTo(950, within(1.0));
  }

  @Test
  void chosenPart_isWhatTheEyeStaysOn() {
    SessionBench bench = new SessionBench(SessionBench.placedChannels());
    bench.click(TOP, 995, 800);
    bench.looks.clear();
    bench.session.room(OtherSide.class).over(new Point(10, 10));
    assertThat(bench.looks.get(0).at()).isEqualTo(new Point(3000, 800));
  }

  @Test
  void zoneOnTheOtherSide_warnsFirst() {
    SessionBench bench =
        new SessionBench(
            SessionBench.with(
                SessionBench.twoChannels(),
                SessionBench.mains(SessionBench.SOLDER, 2900, 600, 3100, 800)));
    bench.session.room(OtherSide.class).over(new Point(1000, 700));
    assertThat(bench.session.gate().caution()).isPresent();
    assertThat(bench.session.desk().photo().orElseThrow().id()).isEqualTo(TOP);
    bench.session.gate().acknowledge();
    assertThat(bench.session.desk().photo().orElseThrow().id()).isEqualTo(SessionBench.SOLDER);
  }

  @Test
  void noPhotoOfTheOtherSide_saysSo() {
    BoardMap map = SessionBench.twoChannels();
    SessionBench bench =
        new SessionBench(map.with(MapTables.PICTURES, map.pictures().without(SessionBench.SOLDER)));
    bench.session.room(OtherSide.class).over(new Point(1000, 700));
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_OTHER_SIDE);
  }
}
