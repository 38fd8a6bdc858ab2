package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.share.Disagreement.Kind;

/** Each kind of disagreement is found with both sides, and a map without any has none. */
class DisagreementsTest {
  private static final Attestation ADA = new Attestation(Evidence.SEEN, "Ada", NOON);
  private static final Attestation BEN = new Attestation(Evidence.MEASURED, "Ben", NOON);
  private static final BoardMap PLAIN = BoardMapSamples.divider();

  private static Disagreement only(BoardMap map, Kind kind) {
    List<Disagreement> all = Disagreements.of(map);
    assertThat(all).extracting(Disagreement::kind).containsExactly(kind);
    assertThat(all.get(0).positions()).hasSizeGreaterThan(1);
    return all.get(0);
  }

  private static List<String> authors(Disagreement one) {
    List<String> authors = new ArrayList<>();
    one.positions().forEach(p -> p.by().forEach(attestation -> authors.add(attestation.author())));
    return authors;
  }

  @Test
  void aMapThatAgreesWithItself_hasNone() {
    assertThat(Disagreements.of(PLAIN)).isEmpty();
  }

  @Test
  void anUndecidedClash_isTold_withWhoStandsForEachVersion() {
    Placement there = new Placement(TOP, Subject.parse("R1"), new Point(5, 5), ADA);
    BoardMap base = PLAIN.with(MapTables.PLACEMENTS, PLAIN.placements().with(there));
    BoardMap mine =
        base.with(
            MapTables.PLACEMENTS, base.placements().with(there.movedTo(new Point(20, 5), ADA)));
    BoardMap theirs =
        base.with(
            MapTables.PLACEMENTS, base.placements().with(there.movedTo(new Point(5, 30), BEN)));
    Disagreement found = only(Merge.of(base, mine, theirs).map(), Kind.CLASH);
    assertThat(found.about()).contains("R1");
    assertThat(found.subject()).contains(Subject.parse("R1"));
    assertThat(authors(found)).containsExactly("Ada", "Ben");
  }

  @Test
  void aPinAtTwoNodes_isTold() {
    Net.Member member = new Net.Member(PinRef.parse("R1.1"), List.of(BEN));
    Net other = Net.named(new NetId("OTHER")).withMember(member);
    Disagreement found = only(PLAIN.with(MapTables.NETS, PLAIN.nets().with(other)), Kind.NODE);
    assertThat(found.about()).isEqualTo("node of R1.1");
    assertThat(authors(found)).contains("Ben", "test");
  }

  @Test
  void twoPlacesOnOnePhoto_areTold_butNotOnAPage() {
    Placement one = new Placement(TOP, Subject.parse("R1.1"), new Point(5, 5), ADA);
    Placement two = new Placement(TOP, one.subject(), 2, new Point(60, 5), List.of(), List.of(BEN));
    BoardMap map = PLAIN.with(MapTables.PLACEMENTS, PLAIN.placements().with(one).with(two));
    Disagreement found = only(map, Kind.PLACE);
    assertThat(found.picture()).contains(TOP);
    assertThat(authors(found)).containsExactly("Ada", "Ben");
    Placement onPage =
        new Placement(
            BoardMapSamples.PAGE, one.subject(), 2, new Point(9, 9), List.of(), List.of(BEN));
    assertThat(Disagreements.of(PLAIN.with(MapTables.PLACEMENTS, PLAIN.placements().with(onPage))))
        .isEmpty();
  }

  /** A second photo, shifted by 100 and 50 pixels, lined up by six pairs. */
  private static BoardMap withSecondPhoto(Point padThere) {
    PictureId second = new PictureId("second");
    Photo photo =
        new Photo(
            second,
            "",
            "photos/s.jpg",
            MAIN,
            Side.COMPONENT,
            BoardTurn.UNKNOWN,
            "0".repeat(64),
            4000,
            3000);
    List<PicturePairs.Spot> spots = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      int row = i / 3;
      Point at = new Point(300 + 1500.0 * (i % 3), 200 + 2000.0 * row);
      spots.add(new PicturePairs.Spot(at.plus(i % 2, 0), at.plus(100, 50)));
    }
    BoardMap map = PLAIN.with(MapTables.PICTURES, PLAIN.pictures().with(photo));
    return map.with(
            MapTables.LINE_UPS,
            map.lineUps()
                .with(
                    new PicturePairs(
                        TOP, second, PicturePairs.Origin.CLICKED, spots, List.of(ADA))))
        .with(
            MapTables.PLACEMENTS,
            map.placements()
                .with(new Placement(TOP, Subject.parse("R1.1"), new Point(1000, 1000), ADA))
                .with(new Placement(second, Subject.parse("R1.1"), padThere, BEN)));
  }

  @Test
  void aPadThatALineUpCarriesElsewhere_isTold_andOneThatItCarriesThereIsNot() {
    assertThat(Disagreements.of(withSecondPhoto(new Point(1102, 1049)))).isEmpty();
    Disagreement found = only(withSecondPhoto(new Point(1300, 1050)), Kind.PLACE);
    assertThat(found.about()).isEqualTo("place of R1.1 on second");
    assertThat(authors(found)).containsExactlyInAnyOrder("Ada", "Ben");
  }

  @Test
  void twoTwins_andTheDrawing_areTold() {
    Subject one = Subject.parse("R1");
    BoardMap twins =
        PLAIN.with(
            MapTables.TWINS,
            PLAIN
                .twins()
                .with(new TwinPair(one, Subject.parse("R2"), List.of(ADA)))
                .with(new TwinPair(one, Subject.parse("R9"), List.of(BEN))));
    assertThat(authors(only(twins, Kind.TWIN))).containsExactly("Ada", "Ben");
    DrawingDiscrepancy value =
        new DrawingDiscrepancy(one, DrawingDiscrepancy.Aspect.VALUE, "33k", List.of(BEN), "");
    Disagreement drawing =
        only(PLAIN.with(MapTables.DISCREPANCIES, PLAIN.discrepancies().with(value)), Kind.DRAWING);
    assertThat(drawing.positions().get(0).says()).isEqualTo("drawing: 33k");
    assertThat(authors(drawing)).containsExactly("Ben");
  }

  @Test
  void filters_pickThoseThatSomebodyStandsFor() {
    Placement one = new Placement(TOP, Subject.parse("R1.1"), new Point(5, 5), ADA);
    Placement two = new Placement(TOP, one.subject(), 2, new Point(60, 5), List.of(), List.of(BEN));
    BoardMap map = PLAIN.with(MapTables.PLACEMENTS, PLAIN.placements().with(one).with(two));
    Disagreement found = only(map, Kind.PLACE);
    assertThat(
            found.fits(
                new TrustReport.Filter(Optional.of("Ben"), Optional.empty(), Optional.empty())))
        .isTrue();
    assertThat(
            found.fits(
                new TrustReport.Filter(Optional.of("Kim"), Optional.empty(), Optional.empty())))
        .isFalse();
  }
}
