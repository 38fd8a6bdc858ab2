package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.mode.twins.TwinJump;

/** No way leads to a place inside a hazard zone before the caution was read. */
class HazardGateTest {
  interface Way {
    void go(SessionBench bench);
  }

  private final HazardZone aroundC202 = SessionBench.mains(TOP, 900, 2200, 1100, 2400);
  private SessionBench bench;
  private Session session;

  @BeforeEach
  void open() {
    bench = new SessionBench(SessionBench.with(SessionBench.placedChannels(), aroundC202));
    session = bench.session;
  }

  static Stream<Named<Way>> ways() {
    return Stream.of(
        Named.of("a click on the body", b -> b.click(TOP, 995, 2300)),
        Named.of("a click on the pad", b -> b.click(TOP, 1010, 2300)),
        Named.of("a find", b -> b.session.choose(Subject.parse("C202"))),
        Named.of(
            "a finding", b -> b.session.walk().choose(Subject.parse("C202"), Optional.of(TOP))),
        Named.of("the find of its net", b -> b.session.choose(Subject.parse("net:B_ATT"))),
        Named.of(
            "the twin key",
            b -> {
              b.session.selection().choose(Subject.parse("C102"), List.of());
              b.session.room(TwinJump.class).jump();
            }),
        Named.of(
            "the strip",
            b -> {
              b.session.choose(Subject.parse("U101.4"));
            }),
        Named.of("the cut-out of its twin", b -> b.session.choose(Subject.parse("C102"))),
        Named.of(
            "placing there",
            b -> {
              b.session.take(PlaceTool.class);
              b.session.room(PlaceTool.class).type("R225");
              b.click(TOP, 950, 2250);
            }));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void anyWay_waitsForTheCaution_andGoesOnWhenRead(Way way) {
    way.go(bench);
    assertThat(session.gate().caution().orElseThrow()).containsExactly(aroundC202);
    assertThat(bench.looks).isEmpty();
    assertThat(session.selection().subject().map(Object::toString).orElse(""))
        .doesNotContain("C202")
        .doesNotContain("B_ATT");
    assertThat(session.map().placements())
        .hasSameSizeAs(SessionBench.placedChannels().placements());

    session.gate().acknowledge();

    assertThat(session.gate().caution()).isEmpty();
    assertThat(session.selection().subject()).isPresent();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void turnedBack_nothingIsShown(Way way) {
    way.go(bench);
    session.gate().turnBack();
    assertThat(session.gate().caution()).isEmpty();
    assertThat(bench.looks).isEmpty();
    assertThat(session.map().placements())
        .hasSameSizeAs(SessionBench.placedChannels().placements());
  }

  @Test
  void partPlacedBesideAZone_isPlaced_butItsCardsWaitForTheCaution() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("U101");
    bench.click(TOP, 3000, 1500);
    assertThat(bench.place(TOP, "U101").at()).isEqualTo(new Point(3000, 1500));
    assertThat(session.gate().caution().orElseThrow()).containsExactly(aroundC202);
    assertThat(session.selection().subject()).isEmpty();
    session.gate().acknowledge();
    assertThat(session.selection().subject()).contains(Subject.parse("U101"));
  }

  @Test
  void undoOfAPlaceBesideAZone_asksNothing() {
    Placement moved = bench.place(TOP, "C102").movedTo(new Point(1050, 900), says(Evidence.SEEN));
    session.document().apply(MapTables.PLACEMENTS.put(moved));
    session.undo();
    assertThat(session.gate().caution()).isEmpty();
    assertThat(bench.looks).hasSize(1);
  }

  @Test
  void readOnce_itDoesNotNagAgain() {
    bench.click(TOP, 995, 2300);
    session.gate().acknowledge();
    session.selection().clear();
    bench.click(TOP, 1010, 2300);
    assertThat(session.gate().caution()).isEmpty();
    assertThat(session.selection().subject()).contains(Subject.parse("C202.-"));
  }

  @Test
  void zoneThatHasGrown_warnsAgain() {
    bench.click(TOP, 995, 2300);
    session.gate().acknowledge();
    session.document().apply(MapTables.ZONES.put(SessionBench.mains(TOP, 800, 2100, 1100, 2400)));
    bench.click(TOP, 995, 2300);
    assertThat(session.gate().caution()).isPresent();
  }

  @Test
  void undoneMoveInsideAZone_isShownAfterTheCaution() {
    Placement moved = bench.place(TOP, "C202").movedTo(new Point(1050, 2300), says(Evidence.SEEN));
    session.document().apply(MapTables.PLACEMENTS.put(moved));
    session.undo();
    assertThat(session.gate().caution()).isPresent();
    assertThat(bench.looks).isEmpty();
    session.gate().acknowledge();
    assertThat(bench.looks)
        .singleElement()
        .extracting(ViewRequest::at)
        .isEqualTo(new Point(1000, 2300));
  }

  @Test
  void elsewhere_nothingIsAsked() {
    session.choose(Subject.parse("R102"));
    assertThat(session.gate().caution()).isEmpty();
    assertThat(session.selection().subject()).contains(Subject.parse("R102"));
  }

  @Test
  void partWithOnePinInside_isInside() {
    bench =
        new SessionBench(
            SessionBench.with(
                SessionBench.placedChannels(), SessionBench.mains(TOP, 1005, 2290, 1100, 2310)));
    bench.session.choose(Subject.parse("C202"));
    assertThat(bench.session.gate().caution()).isPresent();
  }

  @Test
  void dragInsideAnUnreadZone_isNotTaken() {
    Click grip = new Click(TOP, new Point(995, 2300), 8, false);
    assertThat(session.room(LookTool.class).grab(grip)).isFalse();
    session.choose(Subject.parse("C202"));
    session.gate().acknowledge();
    assertThat(session.room(LookTool.class).grab(grip)).isTrue();
  }
}
