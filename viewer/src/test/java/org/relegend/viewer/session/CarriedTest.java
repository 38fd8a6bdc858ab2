package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.viewer.session.SessionBench.SOLDER;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.mode.straighten.StraightenTool;
import org.relegend.viewer.mode.zone.ZoneTool;

/** What was placed on the component side, at the photo of the solder side. */
class CarriedTest {
  /** The solder side is the component side mirrored left to right. */
  private static BoardMap linedUp(BoardMap map) {
    List<Spot> spots =
        List.of(
            spot(300, 300), spot(3700, 320), spot(3650, 2700), spot(280, 2650), spot(2000, 1500));
    PicturePairs pairs =
        new PicturePairs(
            TOP, SOLDER, PicturePairs.Origin.CLICKED, spots, List.of(says(Evidence.SEEN)));
    return map.with(MapTables.LINE_UPS, Table.of(List.of(pairs)));
  }

  private static Spot spot(double x, double y) {
    return new Spot(new Point(x, y), new Point(4000 - x, y));
  }

  private static SessionBench bench() {
    return new SessionBench(linedUp(SessionBench.placedChannels()));
  }

  private static Placement.Key onSolder(String subject) {
    return new Placement.Key(SOLDER, Subject.parse(subject), 1);
  }

  @Test
  void carriedPlace_canBePointedAt_andIsInTheStrip() {
    SessionBench bench = bench();
    bench.session.desk().show(SOLDER);
    bench.click(SOLDER, 3000, 800);
    assertThat(bench.session.selection().subject()).contains(Subject.parse("C102"));
    assertThat(bench.session.selection().card().orElseThrow().photo().orElseThrow().picture())
        .isEqualTo(SOLDER);
    assertThat(bench.session.map().placements().has(onSolder("C102"))).isFalse();
  }

  @Test
  void confirmed_itIsThePicturesOwn_andUndoTakesThatBack() {
    SessionBench bench = bench();
    bench.click(SOLDER, 2990, 800);
    bench.key(() -> bench.session.room(PlacementCorrections.class).confirm());
    assertThat(bench.place(SOLDER, "C102.-").at().distance(new Point(2990, 800))).isLessThan(1e-6);
    assertThat(bench.session.document().carried(onSolder("C102.-"))).isEmpty();
    bench.session.undo();
    assertThat(bench.session.document().carried(onSolder("C102.-"))).isPresent();
  }

  @Test
  void dragged_itIsThePicturesOwnWhereItWasDropped() {
    SessionBench bench = bench();
    bench.click(SOLDER, 2990, 800);
    bench.session.room(PlacementCorrections.class).move(SOLDER, 12, -5);
    assertThat(bench.place(SOLDER, "C102.-").at().distance(new Point(3002, 795))).isLessThan(1e-6);
  }

  @Test
  void takenAway_itStays_andTheReasonIsSaid() {
    SessionBench bench = bench();
    bench.click(SOLDER, 2990, 800);
    bench.session.room(PlacementCorrections.class).takeAway();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.CARRIED_STAYS);
    assertThat(bench.session.document().carried(onSolder("C102.-"))).isPresent();
  }

  @Test
  void carriedHazardZone_standsBeforeThePlacesInIt() {
    SessionBench bench =
        new SessionBench(
            linedUp(
                SessionBench.with(
                    SessionBench.placedChannels(), SessionBench.mains(TOP, 900, 700, 1100, 900))));
    bench.click(SOLDER, 3000, 800);
    assertThat(bench.session.gate().caution().orElseThrow())
        .anyMatch(zone -> zone.picture().equals(SOLDER));
    assertThat(bench.session.selection().subject()).isEmpty();
  }

  /** Only while photos are lined up does a carried zone mean nothing yet. */
  @Test
  void carriedHazardZone_standsBeforeMeasuringAndStraightening() {
    BoardMap map =
        linedUp(
            SessionBench.with(
                SessionBench.placedChannels(), SessionBench.mains(TOP, 900, 700, 1100, 900)));
    for (Class<? extends Mode> tool : List.of(MeasureTool.class, StraightenTool.class)) {
      SessionBench bench = new SessionBench(map);
      bench.session.desk().show(SOLDER);
      bench.session.take(tool);
      bench.click(SOLDER, 3020, 850);
      assertThat(bench.session.gate().caution()).as(tool.toString()).isPresent();
    }
  }

  @Test
  void carriedHazardZone_isNamedByTheOneDrawn_andItIsSaidWhereThatIs() {
    SessionBench bench =
        new SessionBench(
            linedUp(
                SessionBench.with(
                    SessionBench.placedChannels(), SessionBench.mains(TOP, 900, 700, 1100, 900))));
    bench.click(SOLDER, 3000, 800);
    assertThat(bench.session.gate().caution().orElseThrow())
        .extracting(bench.session.document()::nameOf)
        .containsOnly("mains zone 1 on Component side");
    bench.session.room(ZoneTool.class).sayNoneDrawn(SOLDER);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_CARRIED);
    assertThat(bench.session.notice().orElseThrow().arguments())
        .containsExactly("mains zone 1 on Component side");
    bench.session.room(ZoneTool.class).sayNoneDrawn(PAGE);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_ZONE);
  }

  @Test
  void movingAPlace_movesWhatIsCarriedFromIt() {
    SessionBench bench = bench();
    bench.click(TOP, 1010, 800);
    bench.session.room(PlacementCorrections.class).move(TOP, 40, 0);
    assertThat(bench.session.document().carried(onSolder("C102.-")).orElseThrow().at())
        .satisfies(at -> assertThat(at.distance(new Point(2950, 800))).isLessThan(1e-6));
  }
}
