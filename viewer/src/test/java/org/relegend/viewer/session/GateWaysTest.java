package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.hazard.UnmarkedZones;
import org.relegend.map.BoardMap;
import org.relegend.map.Box;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.mode.pins.PinsTool;
import org.relegend.viewer.mode.straighten.StraightenTool;
import org.relegend.viewer.mode.trace.TraceTool;
import org.relegend.viewer.mode.twins.ChannelComparison;
import org.relegend.viewer.mode.twins.TwinJump;

/**
 * Every way in which a place can come into sight, or under a mark, meets the caution first: whether
 * the danger was outlined there, is carried there from another picture, or only follows from the
 * circuit.
 */
class GateWaysTest {
  /** What someone does, at a bench where C202 lies at a danger. */
  private record Way(String name, boolean onSolder, java.util.function.Consumer<SessionBench> go) {
    @Override
    public String toString() {
      return name;
    }
  }

  private record Danger(String name, Supplier<BoardMap> map) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final Box AROUND = new Box(900, 2200, 1100, 2400);
  private boolean moved;

  private static Way way(String name, java.util.function.Consumer<SessionBench> go) {
    return new Way(name, false, go);
  }

  private static void choose(SessionBench bench, String subject) {
    bench.session.selection().choose(Subject.parse(subject), List.of());
  }

  private static void with(SessionBench bench, Class<? extends Mode> tool, double x, double y) {
    bench.session.desk().show(TOP);
    bench.session.take(tool);
    bench.click(TOP, x, y);
  }

  private List<Way> ways() {
    return List.of(
        way("a click on the body", b -> b.click(TOP, 995, 2300)),
        way("a click on the pad", b -> b.click(TOP, 1010, 2300)),
        way("a find of the part", b -> b.session.choose(Subject.parse("C202"))),
        way("a find of the pin", b -> b.session.choose(Subject.parse("C202.-"))),
        way("a find of the net", b -> b.session.choose(Subject.parse("net:B_ATT"))),
        way(
            "a finding or a row of suspects",
            b -> b.session.walk().choose(Subject.parse("C202"), Optional.of(TOP))),
        way(
            "the twin key",
            b -> {
              choose(b, "C102");
              b.session.room(TwinJump.class).jump();
            }),
        way("a pin whose strip joins it", b -> b.session.choose(Subject.parse("U101.4"))),
        way("the cut-out of its twin", b -> b.session.choose(Subject.parse("C102"))),
        way(
            "the next pin of the strip",
            b -> {
              choose(b, "net:B_ATT");
              b.session.walk().to(1);
              b.session.walk().to(0);
            }),
        way(
            "opening a card",
            b -> {
              choose(b, "U101.4");
              b.session.selection().walkTo(0);
              b.session.walk().open();
            }),
        way(
            "side by side",
            b -> {
              choose(b, "C102");
              b.session.room(ChannelComparison.class).toggle();
            }),
        way(
            "what was chosen in an earlier sitting",
            b -> b.session.walk().chooseAgain(Subject.parse("C202"), 0, () -> moved = true)),
        way(
            "the wheel",
            b -> b.session.approach(TOP, new Box(500, 1900, 1500, 2700), 4, () -> moved = true)),
        way(
            "a drag of the picture",
            b -> b.session.approach(TOP, new Box(900, 2000, 1300, 2400), 8, () -> moved = true)),
        way(
            "the view of an earlier sitting",
            b ->
                b.session.approach(
                    TOP, new Box(990, 2290, 1010, 2310), Double.MAX_VALUE, () -> moved = true)),
        way(
            "a band drawn with Shift",
            b ->
                b.session
                    .room(LookTool.class)
                    .markWithin(TOP, new Point(500, 2000), new Point(1500, 2600), false)),
        way("pins", b -> with(b, PinsTool.class, 1005, 2300)),
        way("tracing", b -> with(b, TraceTool.class, 1010, 2300)),
        way("measuring", b -> with(b, MeasureTool.class, 1005, 2300)),
        way("straightening", b -> with(b, StraightenTool.class, 1005, 2300)),
        way(
            "an undo of something there",
            b -> {
              Placement there = b.place(TOP, "C202");
              b.session
                  .document()
                  .apply(
                      MapTables.PLACEMENTS.put(
                          there.movedTo(new Point(1001, 2301), says(Evidence.SEEN))));
              b.session.undo();
            }));
  }

  private static List<Danger> dangers() {
    return List.of(
        new Danger("outlined", () -> SessionBench.with(SessionBench.placedChannels(), outlined())),
        new Danger("carried from the other side", GateWaysTest::carried),
        new Danger("only followed along the circuit", GateWaysTest::followed));
  }

  private static HazardZone outlined() {
    return SessionBench.mains(TOP, AROUND.left(), AROUND.top(), AROUND.right(), AROUND.bottom());
  }

  /** The zone is drawn on the solder side, which is lined up with the component side. */
  private static BoardMap carried() {
    List<PicturePairs.Spot> pairs = new ArrayList<>();
    for (double[] at :
        new double[][] {{300, 300}, {3700, 320}, {3650, 2700}, {280, 2650}, {2000, 1500}}) {
      pairs.add(new PicturePairs.Spot(new Point(at[0], at[1]), new Point(4000 - at[0], at[1])));
    }
    BoardMap map =
        SessionBench.with(
            SessionBench.placedChannels(),
            SessionBench.mains(SessionBench.SOLDER, 2900, 2200, 3100, 2400));
    PicturePairs tied =
        new PicturePairs(
            TOP,
            SessionBench.SOLDER,
            PicturePairs.Origin.CLICKED,
            pairs,
            List.of(says(Evidence.SEEN)));
    return map.with(MapTables.LINE_UPS, map.lineUps().with(tied));
  }

  /** Nobody drew a zone; a net of the part is declared to carry 300 V. */
  private static BoardMap followed() {
    BoardMap map = SessionBench.placedChannels();
    Net high = map.net(new NetId("B_C1")).orElseThrow();
    return map.with(
        MapTables.NETS,
        map.nets().with(high.withPotential(new Potential(Potential.Nature.DC, 300))));
  }

  static Stream<Arguments> all() {
    GateWaysTest test = new GateWaysTest();
    return dangers().stream()
        .flatMap(danger -> test.ways().stream().map(way -> Arguments.of(way.name(), danger)));
  }

  private Way named(String name) {
    return ways().stream().filter(way -> way.name().equals(name)).findFirst().orElseThrow();
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("all")
  void nothingIsShownOrMarkedBeforeTheCaution(String name, Danger danger) {
    SessionBench bench = new SessionBench(danger.map().get());
    Optional<Subject> before;
    Way way = named(name);
    way.go().accept(bench);
    before = bench.session.selection().subject();
    assertThat(bench.session.gate().caution()).as("a caution").isPresent();
    assertThat(bench.session.gate().caution().orElseThrow())
        .anyMatch(zone -> zone.picture().equals(TOP) || zone.picture().equals(PAGE));
    assertThat(bench.looks).isEmpty();
    assertThat(moved).isFalse();
    assertThat(bench.session.selection().marked()).isEmpty();
    assertThat(before.map(Object::toString).orElse("")).doesNotContain("C202");

    bench.session.gate().turnBack();
    assertThat(bench.looks).isEmpty();
    assertThat(moved).isFalse();

    SessionBench again = new SessionBench(danger.map().get());
    named(name).go().accept(again);
    again.session.gate().acknowledge();
    assertThat(again.session.gate().caution()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("dangers")
  void theMagnifier_showsNothingThereBeforeTheCaution(Danger danger) {
    SessionBench bench = new SessionBench(danger.map().get());
    assertThat(bench.session.mayMagnify(TOP, AROUND)).isFalse();
    assertThat(bench.session.mayMagnify(TOP, new Box(3000, 100, 3100, 200))).isTrue();
    bench.session.choose(Subject.parse("C202"));
    bench.session.gate().acknowledge();
    assertThat(bench.session.mayMagnify(TOP, AROUND)).isTrue();
  }

  @Test
  void theWholePictureInView_andViewsElsewhere_askNothing() {
    SessionBench bench =
        new SessionBench(SessionBench.with(SessionBench.placedChannels(), outlined()));
    bench.session.approach(TOP, new Box(0, 0, 4000, 3000), 1, () -> moved = true);
    assertThat(moved).isTrue();
    moved = false;
    bench.session.approach(TOP, new Box(2000, 100, 3000, 900), 4, () -> moved = true);
    assertThat(moved).isTrue();
    assertThat(bench.session.gate().caution()).isEmpty();
  }

  /** One reading is enough for all that nobody outlined, of one kind on one picture. */
  @Test
  void whatFollowsFromTheCircuit_asksOncePerKindAndPicture() {
    SessionBench bench = new SessionBench(followed());
    bench.session.choose(Subject.parse("C202"));
    List<HazardZone> asked = bench.session.gate().caution().orElseThrow();
    assertThat(asked).allMatch(UnmarkedZones::has);
    assertThat(bench.session.document().nameOf(asked.get(0))).startsWith("high voltage on ");
    bench.session.gate().acknowledge();
    BoardMap map = SessionBench.placed(bench.session.map(), TOP, "Q201", 2000, 2300);
    bench.session.document().apply(MapTables.PLACEMENTS.put(find(map, "Q201")));
    bench.session.choose(Subject.parse("Q201"));
    assertThat(bench.session.gate().caution()).isEmpty();
    assertThat(bench.session.selection().subject()).contains(Subject.parse("Q201"));
  }

  /** A zone drawn around it takes the place of what was only followed, and asks for itself. */
  @Test
  void outlinedLater_itAsksAsAnOutlinedZone() {
    SessionBench bench = new SessionBench(followed());
    bench.session.choose(Subject.parse("C202"));
    bench.session.gate().acknowledge();
    bench.session.document().apply(MapTables.ZONES.put(outlined()));
    bench.session.selection().clear();
    bench.session.choose(Subject.parse("C202"));
    assertThat(bench.session.gate().caution().orElseThrow()).contains(outlined());
  }

  private static Placement find(BoardMap map, String subject) {
    return map.placements().find(new Placement.Key(TOP, Subject.parse(subject), 1)).orElseThrow();
  }
}
