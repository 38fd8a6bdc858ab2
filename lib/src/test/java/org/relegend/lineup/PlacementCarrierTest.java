package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.hazard.ZoneOutline;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Seeds;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

class PlacementCarrierTest {
  private static final PictureId SOLDER = new PictureId("solder");
  private static final PictureId OTHER = new PictureId("other");
  private static final Subject PIN = Subject.of(PinRef.parse("R1.1"));
  private static final Point AT = new Point(1500, 1200);

  static LongStream seeds() {
    return Seeds.upTo(40);
  }

  private static BoardMap placed(BoardMap map, PictureId on, Subject subject, Point at) {
    return map.with(
        MapTables.PLACEMENTS,
        map.placements().with(new Placement(on, subject, at, says(Evidence.SEEN))));
  }

  private static LinedUpMaps solderAndOther(long seed) {
    return new LinedUpMaps(seed)
        .photo("solder", Side.SOLDER)
        .photo("other", Side.COMPONENT)
        .pairs("component", "solder", 8, 2)
        .pairs("component", "other", 8, 2);
  }

  @Test
  void aPlacement_showsOnEveryPictureThatAChainReaches() {
    LinedUpMaps board = solderAndOther(1);
    Point onSolder = board.truth("component", "solder").apply(AT);
    BoardMap map = placed(board.map(), SOLDER, PIN, onSolder);
    PlacementCarrier carrier = PlacementCarrier.of(map);
    CarriedPlacement onTop = carrier.on(TOP).get(0);
    CarriedPlacement onOther = carrier.on(OTHER).get(0);
    assertThat(onTop.via()).containsExactly(SOLDER, TOP);
    assertThat(onOther.via()).containsExactly(SOLDER, TOP, OTHER);
    assertThat(onTop.at().distance(AT)).isLessThan(3 * onTop.radius95()).isGreaterThan(0);
    Point there = board.truth("component", "other").apply(AT);
    assertThat(onOther.at().distance(there)).isLessThan(3 * onOther.radius95());
    assertThat(carrier.on(SOLDER)).isEmpty();
    assertThat(carrier.on(PAGE)).isEmpty();
    assertThat(carrier.of(PIN)).containsExactly(onTop, onOther);
  }

  /** Over many views the circle holds what it promises: 95 of 100, alone and over a chain. */
  @Test
  void circle_holdsTheTruth95TimesIn100() {
    int[] held = new int[2];
    int trials = 0;
    for (long seed = 1; seed <= 60; seed++) {
      LinedUpMaps board = solderAndOther(seed);
      for (int i = 0; i < 5; i++) {
        Point place = new Point(board.between(400, 3600), board.between(300, 2700));
        Point onSolder = board.truth("component", "solder").apply(place);
        Point onOther = board.truth("component", "other").apply(place);
        PlacementCarrier carrier = PlacementCarrier.of(board.map());
        held[0] += holds(carrier, TOP, place, SOLDER, onSolder);
        held[1] += holds(carrier, SOLDER, onSolder, OTHER, onOther);
        trials++;
      }
    }
    assertThat(100.0 * held[0] / trials).isBetween(90.0, 99.0);
    assertThat(100.0 * held[1] / trials).isBetween(90.0, 99.0);
  }

  private static int holds(
      PlacementCarrier carrier, PictureId from, Point at, PictureId to, Point truth) {
    PlacementCarrier.Chained chained = carrier.carry(from, at, to).orElseThrow();
    return chained.at().distance(truth) <= chained.error().radius95() ? 1 : 0;
  }

  @Test
  void theChainWithTheLeastError_isUsed() {
    LinedUpMaps board =
        new LinedUpMaps(3)
            .photo("other", Side.COMPONENT)
            .photo("solder", Side.SOLDER)
            .pairs("component", "other", 6, 12)
            .pairs("component", "solder", 20, 0.5)
            .pairs("solder", "other", 20, 0.5);
    PlacementCarrier carrier = PlacementCarrier.of(board.map());
    assertThat(carrier.lineUps().disagreeing()).isEmpty();
    assertThat(carrier.carry(TOP, AT, OTHER).orElseThrow().via())
        .containsExactly(TOP, SOLDER, OTHER);
  }

  @Test
  void ofSeveralSources_theOneWithTheLeastErrorIsCarried() {
    LinedUpMaps board =
        new LinedUpMaps(4)
            .photo("other", Side.COMPONENT)
            .photo("solder", Side.SOLDER)
            .pairs("component", "other", 6, 12)
            .pairs("solder", "other", 20, 0.5);
    BoardMap map = placed(board.map(), TOP, PIN, AT);
    map = placed(map, SOLDER, PIN, board.truth("component", "solder").apply(AT));
    assertThat(PlacementCarrier.of(map).on(OTHER))
        .singleElement()
        .satisfies(carried -> assertThat(carried.source().picture()).isEqualTo(SOLDER));
  }

  @Test
  void aConfirmedPlace_becomesThePicturesOwn() throws EditRefusedException {
    LinedUpMaps board = solderAndOther(5);
    BoardMap map = placed(board.map(), TOP, PIN, AT);
    CarriedPlacement carried = PlacementCarrier.of(map).on(SOLDER).get(0);
    BoardMap confirmed = carried.confirmed(says(Evidence.SEEN)).applyTo(map);
    assertThat(confirmed.placements().has(new Placement.Key(SOLDER, PIN, 1))).isTrue();
    assertThat(PlacementCarrier.of(confirmed).on(SOLDER)).isEmpty();
    assertThat(confirmed.placements().find(new Placement.Key(SOLDER, PIN, 1)))
        .get()
        .extracting(Placement::at)
        .isEqualTo(carried.at());
  }

  @Test
  void bodies_areCarriedWithTheirOutlines() {
    LinedUpMaps board = solderAndOther(6);
    List<Point> outline =
        List.of(AT.plus(-40, -20), AT.plus(40, -20), AT.plus(40, 20), AT.plus(-40, 20));
    Subject body = Subject.of(new PartId("R1"));
    Placement placement = new Placement(TOP, body, 1, AT, outline, List.of(says(Evidence.SEEN)));
    BoardMap map = board.map().with(MapTables.PLACEMENTS, Table.of(List.of(placement)));
    CarriedPlacement carried = PlacementCarrier.of(map).on(SOLDER).get(0);
    Transform truth = board.truth("component", "solder");
    for (int i = 0; i < outline.size(); i++) {
      assertThat(carried.outline().get(i).distance(truth.apply(outline.get(i)))).isLessThan(20);
    }
  }

  @Test
  void editingAPair_changesWhatIsCarriedAtOnce() throws EditRefusedException {
    LinedUpMaps board = solderAndOther(7);
    BoardMap map = placed(board.map(), TOP, PIN, AT);
    PlacementCarrier before = PlacementCarrier.of(map);
    PicturePairs pairs = map.lineUps().find(PicturePairs.Key.of(TOP, SOLDER)).orElseThrow();
    List<Spot> moved = new ArrayList<>(pairs.spots());
    moved.replaceAll(spot -> new Spot(spot.onA(), spot.onB().plus(25, 0)));
    BoardMap edited =
        MapTables.LINE_UPS
            .put(new PicturePairs(pairs.a(), pairs.b(), pairs.origin(), moved, pairs.evidence()))
            .applyTo(map);
    PlacementCarrier after = before.after(edited);
    double shift = after.on(SOLDER).get(0).at().x() - before.on(SOLDER).get(0).at().x();
    assertThat(shift).isBetween(24.9, 25.1);
    assertThat(after.on(OTHER)).isEqualTo(before.on(OTHER));
    assertThat(before.after(map).lineUps()).isSameAs(before.lineUps());
  }

  @Test
  void placesBeyondThePicture_areNotShown() {
    LinedUpMaps board = solderAndOther(8);
    Transform back = board.truth("component", "solder").inverse();
    Point outside = back.apply(new Point(4300, 1500));
    assertThat(PlacementCarrier.of(placed(board.map(), TOP, PIN, outside)).on(SOLDER)).isEmpty();
  }

  @Test
  void tooFewPairsOrOnesOnALine_carryNothingAndSayWhy() {
    LinedUpMaps board =
        new LinedUpMaps(9).photo("solder", Side.SOLDER).pairs("component", "solder", 3, 0);
    PlacementCarrier few = PlacementCarrier.of(placed(board.map(), TOP, PIN, AT));
    assertThat(few.on(SOLDER)).isEmpty();
    assertThat(few.lineUps().results())
        .singleElement()
        .isInstanceOfSatisfying(
            StoredLineUp.Refused.class,
            refused ->
                assertThat(refused.refusal().reason()).isEqualTo(Refusal.Reason.TOO_FEW_PAIRS));
    List<Spot> line = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      line.add(new Spot(new Point(100 * i, 50 * i), new Point(90 * i, 70 * i)));
    }
    PlacementCarrier flat =
        PlacementCarrier.of(board.put("component", "solder", Origin.CLICKED, line).map());
    assertThat(flat.lineUps().results().get(0)).isInstanceOf(StoredLineUp.Refused.class);
    board.put("component", "solder", Origin.AUTOMATIC, line.subList(0, 3));
    assertThat(PlacementCarrier.of(board.map()).lineUps().results().get(0))
        .isInstanceOf(StoredLineUp.Refused.class);
  }

  /** Right line-ups in a ring agree, whatever the noise of the clicks. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void ringOfRightLineUps_agrees(long seed) {
    PlacementCarrier carrier =
        PlacementCarrier.of(solderAndOther(seed).pairs("solder", "other", 8, 2).map());
    assertThat(carrier.lineUps().disagreeing()).isEmpty();
    assertThat(carrier.carry(TOP, AT, OTHER)).isPresent();
  }

  /** One of the three is off by two parts in a hundred of the picture. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void ringThatDisagrees_isFound_andCarriesNothing(long seed) {
    BoardMap map =
        solderAndOther(seed).pairs("solder", "other", 8, 2, Transform.shift(80, 60)).map();
    PlacementCarrier carrier = PlacementCarrier.of(placed(map, TOP, PIN, AT));
    assertThat(carrier.lineUps().disagreeing())
        .singleElement()
        .satisfies(
            ring -> {
              assertThat(ring.pictures()).containsExactlyInAnyOrder(TOP, SOLDER, OTHER);
              assertThat(ring.off()).isGreaterThan(ring.allowed());
            });
    assertThat(carrier.on(SOLDER)).isEmpty();
    assertThat(carrier.on(OTHER)).isEmpty();
  }

  /** A second ring that agrees stands for the line-ups it has; only the wrong one is cut off. */
  @Test
  void lineUpsThatAnotherRingBearsOut_stillCarry() {
    LinedUpMaps board =
        solderAndOther(11)
            .pairs("solder", "other", 8, 2)
            .photo("wrong", Side.COMPONENT)
            .pairs("component", "wrong", 8, 2)
            .pairs("other", "wrong", 8, 2, Transform.shift(150, 0));
    PlacementCarrier carrier = PlacementCarrier.of(board.map());
    assertThat(carrier.lineUps().disagreeing()).isNotEmpty();
    assertThat(carrier.carry(TOP, AT, SOLDER)).isPresent();
    assertThat(carrier.carry(TOP, AT, new PictureId("wrong"))).isEmpty();
  }

  /**
   * All that the drawn zone holds is inside the carried one, wherever the other picture shows it.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void hazardZones_areCarriedLargerNeverSmaller(long seed) {
    LinedUpMaps board = solderAndOther(seed);
    Point c = new Point(board.between(800, 3200), board.between(600, 2400));
    List<Point> notched =
        List.of(
            c.plus(-300, -200),
            c.plus(300, -200),
            c.plus(300, 200),
            c.plus(50, 20),
            c.plus(-300, 200));
    BoardMap map = zoned(board.map(), notched);
    for (PictureId to : List.of(SOLDER, OTHER)) {
      Transform truth = board.truth("component", to.text());
      List<CarriedZone> carried = PlacementCarrier.of(map).zonesOn(to);
      assertThat(carried).allSatisfy(z -> assertThat(z.zone().kind()).isEqualTo(z.source().kind()));
      for (int i = 0; i < 400; i++) {
        Point at = c.plus(board.between(-300, 300), board.between(-200, 200));
        Point there = truth.apply(at);
        if (ZoneOutline.contains(notched, at) && map.picture(to).orElseThrow().contains(there)) {
          assertThat(carried)
              .as("%s at %s", to, there)
              .anyMatch(zone -> ZoneOutline.contains(zone.zone().outline(), there));
        }
      }
    }
  }

  @Test
  void aZoneThatCanNotBeCarriedWhole_coversTheWholePicture() {
    List<Spot> steep = new ArrayList<>();
    Transform leant = new Transform(1, 0, 0, 0, 1, 0, -1.0 / 3000, 0, 1);
    for (int i = 0; i < 8; i++) {
      Point at = new Point(200 + 150 * (i % 4), 300 + 1200 * (i / 4));
      steep.add(new Spot(at, leant.apply(at)));
    }
    LinedUpMaps board =
        new LinedUpMaps(1)
            .photo("other", Side.COMPONENT)
            .put("component", "other", Origin.CLICKED, steep);
    List<Point> across = List.of(new Point(500, 500), new Point(3500, 500), new Point(3500, 900));
    assertThat(PlacementCarrier.of(zoned(board.map(), across)).zonesOn(OTHER))
        .singleElement()
        .satisfies(
            zone -> assertThat(ZoneOutline.area(zone.zone().outline())).isEqualTo(4000.0 * 3000.0));
  }

  private static BoardMap zoned(BoardMap map, List<Point> outline) {
    HazardZone zone =
        new HazardZone(
            new ZoneId("z"), TOP, HazardZone.Kind.MAINS, outline, "", List.of(says(Evidence.SEEN)));
    return map.with(MapTables.ZONES, Table.of(List.of(zone)));
  }
}
