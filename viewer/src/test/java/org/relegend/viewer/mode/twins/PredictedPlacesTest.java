package org.relegend.viewer.mode.twins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.twin.TwinPredictions;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;
import org.relegend.viewer.session.ViewRequest;

/** Channel B lies 1500 below channel A; four pairs are placed, three of channel B are not. */
class PredictedPlacesTest {
  private static final double DOWN = 1500;
  private static final double[][] PLACES = {
    {400, 500}, {900, 400}, {1500, 700}, {2100, 500}, {700, 900}, {1300, 1000}, {1900, 900}
  };

  private final SessionBench bench = new SessionBench(map());
  private final Session session = bench.session;

  private static BoardMap map() {
    BoardMap map = SessionBench.twoChannels();
    for (int i = 1; i <= PLACES.length; i++) {
      for (int channel = 3; channel <= 4; channel++) {
        map =
            BoardMapSamples.with(
                map, BoardMapSamples.twoPin("R%d%02d".formatted(channel, i), "resistor", i + "k"));
        map =
            BoardMapSamples.with(
                map,
                BoardMapSamples.net(
                    "N%d%d".formatted(channel, i), "R%d%02d.1".formatted(channel, i)));
      }
      map =
          map.with(
              MapTables.TWINS,
              map.twins().with(twins("R3%02d".formatted(i), "R4%02d".formatted(i))));
      double slip = i % 2 == 0 ? 3 : -3;
      map =
          SessionBench.placed(map, TOP, "R3%02d".formatted(i), PLACES[i - 1][0], PLACES[i - 1][1]);
      if (i <= 4) {
        map =
            SessionBench.placed(
                map,
                TOP,
                "R4%02d".formatted(i),
                PLACES[i - 1][0] + slip,
                PLACES[i - 1][1] + DOWN - slip);
      }
    }
    return map;
  }

  private static TwinPair twins(String a, String b) {
    return new TwinPair(
        Subject.of(new PartId(a)), Subject.of(new PartId(b)), List.of(says(Evidence.SEEN)));
  }

  private static void work(Session session) {
    BoardMap map = session.map();
    DerivedTwins following = DerivedTwins.of(map, Optional.empty(), false);
    session.room(TwinTool.class).take(map, following);
    session
        .room(PredictedPlaces.class)
        .take(PredictedPlaces.work(map, TOP, following, Optional.empty()));
  }

  private void show() {
    session.room(PredictedPlaces.class).show(true);
    work(session);
  }

  private List<String> names() {
    return session.room(PredictedPlaces.class).all().stream()
        .map(ghost -> ghost.part().toString())
        .toList();
  }

  @Test
  void shown_onlyWhenAsked_whereTheyShouldLie() {
    work(session);
    assertThat(session.room(PredictedPlaces.class).all()).isEmpty();
    show();
    assertThat(names()).containsExactly("R405", "R406", "R407");
    TwinPredictions.Prediction first = session.room(PredictedPlaces.class).all().get(0);
    assertThat(first.at().distance(new Point(PLACES[4][0], PLACES[4][1] + DOWN)))
        .isLessThan(first.radius95());
    session.room(PredictedPlaces.class).show(false);
    assertThat(session.room(PredictedPlaces.class).all()).isEmpty();
  }

  @Test
  void accepted_isAPlacementOnInferredEvidence_andTheNextIsChosen() {
    show();
    session.room(PredictedPlaces.class).open(session.room(PredictedPlaces.class).all().get(0));
    assertThat(session.selection().subject()).contains(Subject.parse("R405"));
    assertThat(bench.looks).last().extracting(ViewRequest::picture).isEqualTo(TOP);
    session.room(PredictedPlaces.class).accept();
    Placement placed = bench.place(TOP, "R405");
    assertThat(placed.best()).isEqualTo(Evidence.INFERRED);
    assertThat(names()).containsExactly("R406", "R407");
    assertThat(session.room(PredictedPlaces.class).chosen().orElseThrow().part())
        .isEqualTo(Subject.parse("R406"));
    assertThat(session.document().undoLabel()).contains("Place R405");
    session.undo();
    assertThat(names()).containsExactly("R405", "R406", "R407");
  }

  /** Else what was predicted would make the next predictions surer than they are. */
  @Test
  void acceptedOnes_areNotCountedOn() {
    show();
    double before = session.room(PredictedPlaces.class).all().get(2).radius95();
    session.room(PredictedPlaces.class).pick(session.room(PredictedPlaces.class).all().get(0));
    session.room(PredictedPlaces.class).accept();
    work(session);
    assertThat(names()).containsExactly("R406", "R407");
    assertThat(session.room(PredictedPlaces.class).weak()).isEqualTo(1);
    assertThat(session.room(PredictedPlaces.class).all().get(1).radius95()).isEqualTo(before);
  }

  @Test
  void rejected_doesNotComeBack_andAllIsOneStep() {
    show();
    session.room(PredictedPlaces.class).pick(session.room(PredictedPlaces.class).all().get(1));
    session.room(PredictedPlaces.class).reject();
    assertThat(names()).containsExactly("R405", "R407");
    session.room(PredictedPlaces.class).show(false);
    show();
    assertThat(names()).containsExactly("R405", "R407");
    session.room(PredictedPlaces.class).acceptAll();
    assertThat(session.document().undoLabel()).contains("Accept 2 predicted places");
    assertThat(session.map().placements().has(key("R406"))).isFalse();
    assertThat(session.map().placements().has(key("R407"))).isTrue();
    session.undo();
    session.room(PredictedPlaces.class).rejectAll();
    assertThat(names()).isEmpty();
    session.room(PredictedPlaces.class).acceptAll();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_PROPOSED);
  }

  private static Placement.Key key(String part) {
    return new Placement.Key(TOP, Subject.parse(part), 1);
  }

  @Test
  void pointedAt_itIsChosen_andPointingElsewhereDropsIt() {
    show();
    Point at = session.room(PredictedPlaces.class).all().get(0).at();
    bench.click(TOP, at.x() + 4, at.y());
    assertThat(session.room(PredictedPlaces.class).chosen().orElseThrow().part())
        .isEqualTo(Subject.parse("R405"));
    bench.click(TOP, PLACES[0][0], PLACES[0][1]);
    assertThat(session.room(PredictedPlaces.class).chosen()).isEmpty();
    assertThat(session.selection().subject()).contains(Subject.parse("R301"));
  }

  @Test
  void inAZone_nothingOfItIsDoneBeforeTheCaution() {
    SessionBench zoned =
        new SessionBench(SessionBench.with(map(), SessionBench.mains(TOP, 600, 2300, 800, 2500)));
    Session sitting = zoned.session;
    sitting.room(PredictedPlaces.class).show(true);
    work(sitting);
    TwinPredictions.Prediction ghost = sitting.room(PredictedPlaces.class).all().get(0);
    List<Runnable> ways =
        List.of(
            () -> sitting.room(PredictedPlaces.class).open(ghost),
            () -> zoned.click(TOP, ghost.at().x(), ghost.at().y()),
            () -> {
              sitting.room(PredictedPlaces.class).pick(ghost);
              sitting.room(PredictedPlaces.class).accept();
            },
            () -> sitting.room(PredictedPlaces.class).acceptAll());
    for (Runnable way : ways) {
      way.run();
      assertThat(sitting.gate().caution()).isPresent();
      assertThat(zoned.looks).isEmpty();
      assertThat(sitting.selection().subject()).isEmpty();
      assertThat(sitting.map().placements().has(key("R405"))).isFalse();
      sitting.gate().turnBack();
    }
    sitting.room(PredictedPlaces.class).open(ghost);
    sitting.gate().acknowledge();
    assertThat(sitting.selection().subject()).contains(Subject.parse("R405"));
  }

  /** A circle that reaches into a zone counts, though its middle lies outside. */
  @Test
  void circleThatReachesIntoAZone_isInside() {
    TwinPredictions.Prediction ghost;
    show();
    ghost = session.room(PredictedPlaces.class).all().get(0);
    double edge = ghost.at().x() + ghost.radius95() - 2;
    SessionBench zoned =
        new SessionBench(
            SessionBench.with(
                map(),
                SessionBench.mains(
                    TOP, edge, ghost.at().y() - 50, edge + 100, ghost.at().y() + 50)));
    zoned.session.room(PredictedPlaces.class).show(true);
    work(zoned.session);
    zoned
        .session
        .room(PredictedPlaces.class)
        .open(zoned.session.room(PredictedPlaces.class).all().get(0));
    assertThat(zoned.session.gate().caution()).isPresent();
  }

  @Test
  void layoutsThatDontRepeat_areSaid() {
    BoardMap map = map();
    double[][] anywhere = {{3000, 200}, {300, 2900}, {2500, 2600}, {3600, 1500}};
    for (int i = 1; i <= 4; i++) {
      map =
          SessionBench.placed(
              map, TOP, "R4%02d".formatted(i), anywhere[i - 1][0], anywhere[i - 1][1]);
    }
    SessionBench other = new SessionBench(map);
    other.session.room(PredictedPlaces.class).show(true);
    work(other.session);
    assertThat(other.session.room(PredictedPlaces.class).all()).isEmpty();
    assertThat(other.session.room(PredictedPlaces.class).text().orElseThrow())
        .startsWith("The layouts don't repeat");
  }

  @Test
  void comparedWithWhatIsNotPlaced_thePredictedPlaceStandsIn() {
    show();
    session.choose(Subject.parse("R305"));
    session.room(ChannelComparison.class).toggle();
    assertThat(session.room(ChannelComparison.class).isOn()).isTrue();
    ChannelComparison.Sides sides = session.room(ChannelComparison.class).sides();
    assertThat(sides.left().orElseThrow().subject()).isEqualTo(Subject.parse("R305"));
    assertThat(sides.right().orElseThrow().spot().orElseThrow().at())
        .isEqualTo(session.room(PredictedPlaces.class).all().get(0).at());
  }

  @Test
  void withoutTwins_nothingIsTold() {
    SessionBench none =
        new SessionBench(map().with(MapTables.TWINS, org.relegend.map.Table.empty()));
    none.session.room(PredictedPlaces.class).show(true);
    work(none.session);
    assertThat(none.session.room(PredictedPlaces.class).text()).contains("");
  }
}
