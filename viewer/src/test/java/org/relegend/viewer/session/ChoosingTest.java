package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Pin;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Section;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.twins.TwinJump;
import org.relegend.viewer.session.TwinLookup.Known;

class ChoosingTest {
  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final Session session = bench.session;

  @Test
  void node_takesOneClick_andMarksAllThatIsJoined() {
    bench.click(TOP, 1010, 800);
    assertThat(bench.clicks).isEqualTo(1);
    assertThat(bench.cards()).containsExactly("C102.-", "U101.2");
    assertThat(session.selection().joined())
        .contains(
            Subject.parse("C102.-"),
            Subject.parse("U101.2"),
            Subject.parse("C102"),
            Subject.parse("net:A_ATT"));
  }

  @Test
  void chosenOnThePhoto_isBroughtIntoViewOnThePage() {
    bench.click(TOP, 1010, 800);
    assertThat(bench.looks).singleElement().extracting(ViewRequest::picture).isEqualTo(PAGE);
  }

  @Test
  void unlinked_theOtherPictureStays() {
    session.desk().setLinked(false);
    bench.click(TOP, 1010, 800);
    assertThat(bench.looks).isEmpty();
  }

  @Test
  void body_tellsTheNameAndAllItsNodes() {
    bench.click(TOP, 995, 800);
    assertThat(session.selection().subject()).contains(Subject.parse("C102"));
    assertThat(bench.cards()).containsExactly("C102", "Q101.C", "U101.2");
    assertThat(session.selection().strip().groups())
        .extracting(CardStrip.Group::via)
        .containsExactly(
            Optional.empty(),
            Optional.of(SessionBench.pin("C102.+")),
            Optional.of(SessionBench.pin("C102.-")));
  }

  @Test
  void chosenByName_isGoneNearTo_withAllThatBelongsToIt() {
    session.choose(Subject.parse("C102"));
    ViewRequest photo =
        bench.looks.stream().filter(look -> look.picture().equals(TOP)).findFirst().orElseThrow();
    assertThat(photo.closer()).isTrue();
    assertThat(photo.extent())
        .contains(bench.place(TOP, "C102").at(), bench.place(TOP, "C102.-").at());
    int before = bench.looks.size();
    session.walk().to(2);
    assertThat(bench.looks.subList(before, bench.looks.size()))
        .isNotEmpty()
        .noneMatch(ViewRequest::closer);
  }

  /** A whole net has many places to show; one that lies in a hazard zone comes last. */
  @Test
  void net_isShownOutsideOfHazardZonesWhereItCan() {
    BoardMap map = SessionBench.twoChannels();
    map = SessionBench.placed(map, TOP, "R101.2", 500, 500);
    map = SessionBench.placed(map, TOP, "R102.1", 900, 500);
    MapIndex plain = new MapIndex(map);
    MapIndex zoned =
        new MapIndex(SessionBench.with(map, SessionBench.mains(TOP, 400, 400, 600, 600)));
    Subject net = Subject.parse("net:A_B1");
    assertThat(new BestPlaces(plain).of(net, Photo.class, Optional.empty()).orElseThrow().subject())
        .isEqualTo(Subject.parse("R101.2"));
    assertThat(new BestPlaces(zoned).of(net, Photo.class, Optional.empty()).orElseThrow().subject())
        .isEqualTo(Subject.parse("R102.1"));
  }

  @Test
  void insideAnOutline_theSmallestBodyIsMeant() {
    BoardMap map = SessionBench.twoChannels();
    map = outlined(map, "R101", 1000, 1000, 400);
    map = outlined(map, "R102", 1100, 1000, 100);
    SessionBench other = new SessionBench(map);
    other.click(TOP, 1140, 1040);
    assertThat(other.session.selection().subject()).contains(Subject.parse("R102"));
    other.click(TOP, 850, 900);
    assertThat(other.session.selection().subject()).contains(Subject.parse("R101"));
  }

  private static BoardMap outlined(BoardMap map, String part, double x, double y, double side) {
    double half = side / 2;
    List<Point> outline =
        List.of(
            new Point(x - half, y - half),
            new Point(x + half, y - half),
            new Point(x + half, y + half),
            new Point(x - half, y + half));
    Placement placement =
        new Placement(
            TOP, Subject.parse(part), 1, new Point(x, y), outline, List.of(says(Evidence.SEEN)));
    return map.with(MapTables.PLACEMENTS, map.placements().with(placement));
  }

  @Test
  void arrows_walkTheCards_andBothPicturesFollow() {
    bench.click(TOP, 1010, 800);
    bench.looks.clear();
    session.walk().by(1);
    assertThat(session.selection().focus()).contains(Subject.parse("U101.2"));
    assertThat(bench.looks).extracting(ViewRequest::picture).containsExactly(TOP);
    bench.looks.clear();
    session.walk().by(-1);
    assertThat(bench.looks).extracting(ViewRequest::picture).containsExactly(PAGE, TOP);
    session.walk().by(-1);
    assertThat(session.selection().cursor()).isZero();
  }

  @Test
  void twin_takesOneKey_atTheSameSpotOfTheScreen_andBack() {
    bench.click(TOP, 995, 800);
    bench.looks.clear();
    bench.key(session.room(TwinJump.class)::jump);
    assertThat(session.selection().subject()).contains(Subject.parse("C202"));
    ViewRequest across = bench.looks.get(bench.looks.size() - 1);
    assertThat(across.at()).isEqualTo(new Point(1000, 2300));
    assertThat(across.comeFrom()).contains(new ViewRequest.Spot(TOP, new Point(1000, 800)));

    bench.key(session.room(TwinJump.class)::jump);
    assertThat(session.selection().subject()).contains(Subject.parse("C102"));
    assertThat(bench.keys).isEqualTo(2);
  }

  @Test
  void twinOfAPinInAStrip_comesBackToTheSameStripAndCard() {
    session.choose(Subject.of(new PartId("Q101")));
    session.walk().to(3);
    Subject card = session.selection().focus().orElseThrow();
    assertThat(card).isEqualTo(Subject.parse("C102.+"));
    session.room(TwinJump.class).jump();
    assertThat(session.selection().focus()).contains(Subject.parse("C202.+"));
    session.room(TwinJump.class).jump();
    assertThat(session.selection().subject()).contains(Subject.parse("Q101"));
    assertThat(session.selection().cursor()).isEqualTo(3);
  }

  @Test
  void twinOfANet_isTheNetOfTheTwinsPins() {
    TwinLookup twins = session.document().twins();
    assertThat(twins.of(Subject.parse("net:A_C1")))
        .contains(Known.declared(Subject.parse("net:B_C1")));
  }

  /** One dual op-amp that serves both channels: pin 1 has its twin at pin 7 of the same part. */
  @Test
  void twinOfAPin_isInTheSameRole_whereHalvesOfAPartAreTwins() {
    Section first = new Section("X", Map.of("1", "out", "2", "-in"));
    Section second = new Section("Y", Map.of("7", "out", "6", "-in"));
    List<Pin> pins =
        List.of(new Pin("1", ""), new Pin("2", ""), new Pin("6", ""), new Pin("7", ""));
    Part dual = twoPin("U9", "dual-opamp", "").withPins(pins, List.of(first, second));
    TwinPair halves =
        new TwinPair(Subject.parse("U9/X"), Subject.parse("U9/Y"), List.of(says(Evidence.MATCHED)));
    BoardMap map = BoardMapSamples.with(SessionBench.twoChannels(), dual);
    map = map.with(MapTables.TWINS, map.twins().with(halves));
    TwinLookup twins = new TwinLookup(new MapIndex(map), DerivedTwins.NONE);
    assertThat(twins.of(Subject.parse("U9.1"))).contains(Known.declared(Subject.parse("U9.7")));
    assertThat(twins.of(Subject.parse("U9.6"))).contains(Known.declared(Subject.parse("U9.2")));
  }

  @Test
  void partWithoutTwin_saysInWhichChannelItIs() {
    session.choose(Subject.parse("R225"));
    session.room(TwinJump.class).jump();
    assertThat(session.notice()).contains(Notice.of(Notice.Kind.NO_TWIN_CHANNEL, "R225", "B"));
  }

  @Test
  void nodeOfManyPins_isOneCardAroundAPart() {
    List<String> pins = new ArrayList<>(List.of("R101.1"));
    BoardMap map = SessionBench.twoChannels();
    for (int i = 1; i <= CardStripBuilder.FEW_PINS; i++) {
      map = BoardMapSamples.with(map, twoPin("R5" + i, "resistor", ""));
      pins.add("R5" + i + ".1");
    }
    SessionBench other =
        new SessionBench(BoardMapSamples.with(map, net("VP", pins.toArray(new String[0]))));
    other.session.choose(Subject.parse("R101"));
    assertThat(other.cards()).containsExactly("R101", "VP", "Q101.B", "R102.1");
    other.session.walk().to(1);
    other.session.walk().open();
    assertThat(other.cards()).hasSize(CardStripBuilder.FEW_PINS + 1);
  }

  @Test
  void partOnAPhotoThatIsNotShown_laysThatPhotoOnTheDesk() {
    SessionBench other =
        new SessionBench(
            SessionBench.placed(SessionBench.twoChannels(), SessionBench.SOLDER, "R101", 50, 50));
    other.session.choose(Subject.parse("R101"));
    assertThat(other.session.desk().photo().orElseThrow().id()).isEqualTo(SessionBench.SOLDER);
    assertThat(other.looks).extracting(ViewRequest::picture).containsExactly(SessionBench.SOLDER);
  }

  @Test
  void chosenButNowherePlaced_saysSo_andShowsItsCards() {
    session.choose(Subject.parse("R202"));
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOT_PLACED_YET);
    assertThat(bench.cards()).contains("R202", "R201.2");
  }

  @Test
  void rubberBandAndShift_markSeveral() {
    session.room(LookTool.class).markWithin(TOP, new Point(900, 700), new Point(1100, 900), false);
    assertThat(session.selection().marked()).hasSize(2);
    session.click(new Click(TOP, new Point(1500, 900), 8, true));
    assertThat(session.selection().marked()).hasSize(3);
    session.click(new Click(TOP, new Point(1500, 900), 8, true));
    assertThat(session.selection().marked()).hasSize(2);
    session.room(LookTool.class).markWithin(TOP, new Point(900, 2200), new Point(1100, 2400), true);
    assertThat(session.selection().marked()).hasSize(4);
  }

  @Test
  void clickOnNothing_choosesNothing() {
    bench.click(TOP, 1010, 800);
    bench.click(TOP, 3000, 2900);
    assertThat(session.selection().subject()).isEmpty();
    assertThat(session.selection().strip()).isEqualTo(CardStrip.EMPTY);
  }

  @Test
  void anotherThread_isRefused() {
    PictureId page = PAGE;
    Thread[] caught = new Thread[1];
    Thread other =
        new Thread(
            () -> {
              try {
                session.desk().show(page);
              } catch (IllegalStateException refused) {
                caught[0] = Thread.currentThread();
              }
            });
    other.start();
    join(other);
    assertThat(caught[0]).isSameAs(other);
  }

  private static void join(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
