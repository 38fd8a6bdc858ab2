package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.twin.Predictions;

/** Channel B lies 1500 below channel A; four pairs are placed, three of channel B are not. */
class GhostsTest {
  private static final double DOWN = 1500;
  private static final double[][] PLACES = {
    {400, 500}, {900, 400}, {1500, 700}, {2100, 500}, {700, 900}, {1300, 1000}, {1900, 900}
  };

  private final Bench bench = new Bench(map());
  private final Session session = bench.session;

  private static BoardMap map() {
    BoardMap map = Bench.twoChannels();
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
      map = map.withTwins(map.twins().with(twins("R3%02d".formatted(i), "R4%02d".formatted(i))));
      double slip = i % 2 == 0 ? 3 : -3;
      map = Bench.placed(map, TOP, "R3%02d".formatted(i), PLACES[i - 1][0], PLACES[i - 1][1]);
      if (i <= 4) {
        map =
            Bench.placed(
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
    Following following = Following.of(map, Optional.empty(), false);
    session.twinning().take(map, following);
    session.ghosts().take(Ghosts.work(map, TOP, following, Optional.empty()));
  }

  private void show() {
    session.ghosts().show(true);
    work(session);
  }

  private List<String> names() {
    return session.ghosts().all().stream().map(ghost -> ghost.part().toString()).toList();
  }

  @Test
  void shown_onlyWhenAsked_whereTheyShouldLie() {
    work(session);
    assertThat(session.ghosts().all()).isEmpty();
    show();
    assertThat(names()).containsExactly("R405", "R406", "R407");
    Predictions.Prediction first = session.ghosts().all().get(0);
    assertThat(first.at().distance(new Point(PLACES[4][0], PLACES[4][1] + DOWN)))
        .isLessThan(first.radius95());
    session.ghosts().show(false);
    assertThat(session.ghosts().all()).isEmpty();
  }

  @Test
  void accepted_isAPlacementOnInferredEvidence_andTheNextIsChosen() {
    show();
    session.ghosts().open(session.ghosts().all().get(0));
    assertThat(session.selection().subject()).contains(Subject.parse("R405"));
    assertThat(bench.looks).last().extracting(Look::picture).isEqualTo(TOP);
    session.ghosts().accept();
    Placement placed = bench.place(TOP, "R405");
    assertThat(placed.best()).isEqualTo(Evidence.INFERRED);
    assertThat(names()).containsExactly("R406", "R407");
    assertThat(session.ghosts().chosen().orElseThrow().part()).isEqualTo(Subject.parse("R406"));
    assertThat(session.document().undoLabel()).contains("Place R405");
    session.undo();
    assertThat(names()).containsExactly("R405", "R406", "R407");
  }

  /** Else what was predicted would make the next predictions surer than they are. */
  @Test
  void acceptedOnes_areNotCountedOn() {
    show();
    double before = session.ghosts().all().get(2).radius95();
    session.ghosts().pick(session.ghosts().all().get(0));
    session.ghosts().accept();
    work(session);
    assertThat(names()).containsExactly("R406", "R407");
    assertThat(session.ghosts().weak()).isEqualTo(1);
    assertThat(session.ghosts().all().get(1).radius95()).isEqualTo(before);
  }

  @Test
  void rejected_doesNotComeBack_andAllIsOneStep() {
    show();
    session.ghosts().pick(session.ghosts().all().get(1));
    session.ghosts().reject();
    assertThat(names()).containsExactly("R405", "R407");
    session.ghosts().show(false);
    show();
    assertThat(names()).containsExactly("R405", "R407");
    session.ghosts().acceptAll();
    assertThat(session.document().undoLabel()).contains("Accept 2 predicted places");
    assertThat(session.map().placements().has(key("R406"))).isFalse();
    assertThat(session.map().placements().has(key("R407"))).isTrue();
    session.undo();
    session.ghosts().rejectAll();
    assertThat(names()).isEmpty();
    session.ghosts().acceptAll();
    assertThat(bench.said()).isEqualTo(Notice.Kind.NOTHING_PROPOSED);
  }

  private static Placement.Key key(String part) {
    return new Placement.Key(TOP, Subject.parse(part), 1);
  }

  @Test
  void pointedAt_itIsChosen_andPointingElsewhereDropsIt() {
    show();
    Point at = session.ghosts().all().get(0).at();
    bench.click(TOP, at.x() + 4, at.y());
    assertThat(session.ghosts().chosen().orElseThrow().part()).isEqualTo(Subject.parse("R405"));
    bench.click(TOP, PLACES[0][0], PLACES[0][1]);
    assertThat(session.ghosts().chosen()).isEmpty();
    assertThat(session.selection().subject()).contains(Subject.parse("R301"));
  }

  @Test
  void inAZone_nothingOfItIsDoneBeforeTheCaution() {
    Bench zoned = new Bench(Bench.with(map(), Bench.mains(TOP, 600, 2300, 800, 2500)));
    Session sitting = zoned.session;
    sitting.ghosts().show(true);
    work(sitting);
    Predictions.Prediction ghost = sitting.ghosts().all().get(0);
    List<Runnable> ways =
        List.of(
            () -> sitting.ghosts().open(ghost),
            () -> zoned.click(TOP, ghost.at().x(), ghost.at().y()),
            () -> {
              sitting.ghosts().pick(ghost);
              sitting.ghosts().accept();
            },
            () -> sitting.ghosts().acceptAll());
    for (Runnable way : ways) {
      way.run();
      assertThat(sitting.gate().caution()).isPresent();
      assertThat(zoned.looks).isEmpty();
      assertThat(sitting.selection().subject()).isEmpty();
      assertThat(sitting.map().placements().has(key("R405"))).isFalse();
      sitting.gate().turnBack();
    }
    sitting.ghosts().open(ghost);
    sitting.gate().acknowledge();
    assertThat(sitting.selection().subject()).contains(Subject.parse("R405"));
  }

  /** A circle that reaches into a zone counts, though its middle lies outside. */
  @Test
  void circleThatReachesIntoAZone_isInside() {
    Predictions.Prediction ghost;
    show();
    ghost = session.ghosts().all().get(0);
    double edge = ghost.at().x() + ghost.radius95() - 2;
    Bench zoned =
        new Bench(
            Bench.with(
                map(),
                Bench.mains(TOP, edge, ghost.at().y() - 50, edge + 100, ghost.at().y() + 50)));
    zoned.session.ghosts().show(true);
    work(zoned.session);
    zoned.session.ghosts().open(zoned.session.ghosts().all().get(0));
    assertThat(zoned.session.gate().caution()).isPresent();
  }

  @Test
  void layoutsThatDontRepeat_areSaid() {
    BoardMap map = map();
    double[][] anywhere = {{3000, 200}, {300, 2900}, {2500, 2600}, {3600, 1500}};
    for (int i = 1; i <= 4; i++) {
      map = Bench.placed(map, TOP, "R4%02d".formatted(i), anywhere[i - 1][0], anywhere[i - 1][1]);
    }
    Bench other = new Bench(map);
    other.session.ghosts().show(true);
    work(other.session);
    assertThat(other.session.ghosts().all()).isEmpty();
    assertThat(other.session.ghosts().told().orElseThrow()).startsWith("The layouts don't repeat");
  }

  @Test
  void comparedWithWhatIsNotPlaced_thePredictedPlaceStandsIn() {
    show();
    session.choose(Subject.parse("R305"));
    session.comparing().toggle();
    assertThat(session.comparing().isOn()).isTrue();
    Comparing.Sides sides = session.comparing().sides();
    assertThat(sides.left().orElseThrow().subject()).isEqualTo(Subject.parse("R305"));
    assertThat(sides.right().orElseThrow().spot().orElseThrow().at())
        .isEqualTo(session.ghosts().all().get(0).at());
  }

  @Test
  void withoutTwins_nothingIsTold() {
    Bench none = new Bench(map().withTwins(org.relegend.map.Table.empty()));
    none.session.ghosts().show(true);
    work(none.session);
    assertThat(none.session.ghosts().told()).contains("");
  }
}
