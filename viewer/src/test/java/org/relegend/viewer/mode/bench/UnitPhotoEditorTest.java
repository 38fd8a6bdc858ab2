package org.relegend.viewer.mode.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.MapLink;
import org.relegend.bench.PartState;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.HazardZone;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.look.OtherSide;
import org.relegend.viewer.mode.pins.PinsTool;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.mode.zone.ZoneTool;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PlacementCorrections;
import org.relegend.viewer.session.SessionBench;
import org.relegend.viewer.session.ViewRequest;

/** A photo of this very unit, half as large as the map's and shifted, belongs to the job alone. */
class UnitPhotoEditorTest {
  private static final PictureId OWN = new PictureId("own");
  private static final Subject C102 = Subject.parse("C102");

  private SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final List<Job> kept = new ArrayList<>();

  private static Photo photo(String id) {
    return new Photo(
        new PictureId(id),
        id,
        "photos/" + id + ".jpg",
        MAIN,
        Side.COMPONENT,
        BoardTurn.UNKNOWN,
        BoardMapSamples.DIGEST,
        2200,
        1700);
  }

  private static Point seen(double x, double y) {
    return new Point(x / 2 + 50, y / 2 + 30);
  }

  private static List<Spot> spots() {
    return List.of(
        spot(300, 300), spot(3700, 320), spot(3650, 2700), spot(280, 2650), spot(2e3, 1e3));
  }

  private static Spot spot(double x, double y) {
    return new Spot(seen(x, y), new Point(x, y));
  }

  @BeforeEach
  void laidOver() {
    MapLink link = new MapLink("sample", "0".repeat(64), "Sample", "../map");
    bench.session.room(OpenJob.class).lay(Job.empty("job", link), false, kept::add);
  }

  private void add(String id, String... shows) {
    List<PartId> parts = List.of(shows).stream().map(PartId::new).toList();
    assertThat(bench.session.room(UnitPhotoEditor.class).add(photo(id), parts)).isTrue();
  }

  private void tied() {
    add("own");
    clickPairs();
    bench.session.take(LookTool.class);
  }

  private void clickPairs() {
    bench.session.desk().show(OWN);
    bench.session.take(LineUpTool.class);
    assertThat(bench.session.room(LineUpTool.class).left()).map(Picture::id).contains(TOP);
    for (Spot spot : spots()) {
      bench.click(TOP, spot.onB().x(), spot.onB().y());
      bench.click(OWN, spot.onA().x(), spot.onA().y());
    }
  }

  private List<PictureId> photos() {
    return bench.session.desk().photos().stream().map(Picture::id).toList();
  }

  @Test
  void added_itCanBeLaidOnTheDesk_andTheMapIsAsItWas() {
    BoardMap before = bench.session.map();
    add("own");
    assertThat(photos()).containsExactly(TOP, SessionBench.SOLDER, OWN);
    bench.session.desk().show(OWN);
    assertThat(bench.session.desk().photo()).map(Photo::id).contains(OWN);
    assertThat(bench.session.map()).isSameAs(before);
    bench.session.undo();
    assertThat(photos()).doesNotContain(OWN);
    assertThat(bench.session.desk().photo()).map(Photo::id).contains(TOP);
  }

  @Test
  void tied_placesAreCarriedOver_canBePointedAt_andTheJobKeepsThePairs() {
    BoardMap before = bench.session.map();
    tied();
    Point at = seen(988, 800);
    bench.click(OWN, at.x(), at.y());
    assertThat(bench.session.selection().subject()).contains(C102);
    JobPhoto own = kept.get(kept.size() - 1).photos().find(OWN).orElseThrow();
    assertThat(own.onto()).isEqualTo("component");
    assertThat(own.pairs()).hasSize(spots().size());
    assertThat(own.pairs().get(1).from()).isEqualTo(seen(3700, 320));
    assertThat(bench.session.map()).isSameAs(before);
  }

  @Test
  void pairsAreClicked_movedAndTakenAway_inTheJob_oneUndoEach() {
    add("own");
    clickPairs();
    assertThat(bench.session.room(LineUpTool.class).spots()).hasSize(5);
    assertThat(bench.session.room(LineUpTool.class).lineUp()).isPresent();
    assertThat(bench.session.map().lineUps()).isEmpty();
    bench.session.room(LineUpTool.class).choose(0);
    bench.session.room(LineUpTool.class).takeAway();
    assertThat(bench.session.room(LineUpTool.class).spots()).hasSize(4);
    bench.session.undo();
    assertThat(bench.session.room(LineUpTool.class).spots()).hasSize(5);
    for (int i = 0; i < 5; i++) {
      bench.session.undo();
    }
    assertThat(bench.session.room(LineUpTool.class).spots()).isEmpty();
    assertThat(photos()).contains(OWN);
  }

  @Test
  void whatWasFoundWithoutClicks_isKeptAsSuch() {
    add("own");
    List<Spot> many = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      many.add(spot(200 + 450 * (i % 8), 200 + 600 * (i / 8)));
    }
    bench.session.desk().show(OWN);
    bench
        .session
        .room(LineUpTool.class)
        .take(TOP, OWN, many.stream().map(UnitPhotoEditorTest::swapped).toList());
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.UNIT_LINED_UP);
    JobPhoto own = kept.get(kept.size() - 1).photos().find(OWN).orElseThrow();
    assertThat(own.origin()).isEqualTo(Origin.AUTOMATIC);
    assertThat(own.pairs().get(0).from()).isEqualTo(seen(200, 200));
    Point at = seen(988, 800);
    bench.click(OWN, at.x(), at.y());
    assertThat(bench.session.selection().subject()).contains(C102);
  }

  private static Spot swapped(Spot spot) {
    return new Spot(spot.onB(), spot.onA());
  }

  @Test
  void theCard_showsItBesideTheMapsPhoto() {
    tied();
    bench.session.desk().show(TOP);
    bench.session.choose(C102);
    NodeCard card = bench.session.selection().card().orElseThrow();
    assertThat(card.photo()).map(Placement::picture).contains(TOP);
    assertThat(card.unit()).map(Placement::picture).contains(OWN);
    bench.session.desk().show(OWN);
    NodeCard other = bench.session.selection().card().orElseThrow();
    assertThat(other.photo()).map(Placement::picture).contains(OWN);
    assertThat(other.unit()).isEmpty();
  }

  @Test
  void oneKey_leadsToTheUnitsPhotoAtTheSameSpot_andBack() {
    tied();
    bench.session.desk().show(TOP);
    bench.session.room(OtherSide.class).toUnit(new Point(2000, 1000));
    assertThat(bench.session.desk().photo()).map(Photo::id).contains(OWN);
    ViewRequest look = bench.looks.get(bench.looks.size() - 1);
    assertThat(look.picture()).isEqualTo(OWN);
    assertThat(look.at().distance(seen(2000, 1000))).isLessThan(1e-6);
    bench.session.room(OtherSide.class).toUnit(look.at());
    assertThat(bench.session.desk().photo()).map(Photo::id).contains(TOP);
  }

  /** Whatever is tried, nothing of the map may come to lie on a photo that stays private. */
  @Test
  void nothingIsMarkedOnIt() {
    tied();
    BoardMap before = bench.session.map();
    Point at = seen(988, 800);
    bench.click(OWN, at.x(), at.y());
    bench.session.room(PlacementCorrections.class).confirm();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.UNIT_PHOTO);
    bench.session.room(PlacementCorrections.class).move(OWN, 10, 10);
    for (Class<? extends Mode> tool : List.of(PlaceTool.class, PinsTool.class, ZoneTool.class)) {
      bench.session.take(tool);
      bench.click(OWN, 400, 400);
      assertThat(bench.lastNotice()).as(tool.getName()).isEqualTo(Notice.Kind.UNIT_PHOTO);
    }
    assertThat(bench.session.map()).isSameAs(before);
  }

  @Test
  void aHazardZone_isCarriedOver_andStandsBeforeItsPlaces() {
    HazardZone mains = SessionBench.mains(TOP, 900, 700, 1100, 900);
    bench = new SessionBench(SessionBench.with(SessionBench.placedChannels(), mains));
    laidOver();
    tied();
    Point at = seen(988, 800);
    bench.click(OWN, at.x(), at.y());
    assertThat(bench.session.gate().caution().orElseThrow())
        .anyMatch(zone -> zone.picture().equals(OWN));
    assertThat(bench.session.selection().subject()).isEmpty();
  }

  @Test
  void closeUps_areFoundByThePartsTheyShow() {
    add("near", "C102", "R106");
    add("own");
    bench
        .session
        .room(ConditionEditor.class)
        .answer(
            new ConditionEditor.WhichCondition(new PartId("C102")),
            PartState.REPLACED,
            "",
            "9112",
            "");
    assertThat(job().condition(new PartId("C102")).orElseThrow().photos())
        .containsExactly(new PictureId("near"));
    assertThat(bench.session.room(UnitPhotoEditor.class).closeUps(new PartId("C102")))
        .containsExactly(new PictureId("near"));
    assertThat(bench.session.room(UnitPhotoEditor.class).closeUps(new PartId("C202"))).isEmpty();
  }

  @Test
  void inAJobForReadingOnly_nothingIsAdded() {
    bench.session.room(OpenJob.class).lay(kept.isEmpty() ? job() : kept.get(0), true, kept::add);
    assertThat(bench.session.room(UnitPhotoEditor.class).add(photo("own"), List.of())).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.JOB_READ_ONLY);
  }

  private Job job() {
    return bench.session.room(OpenJob.class).job().orElseThrow();
  }
}
