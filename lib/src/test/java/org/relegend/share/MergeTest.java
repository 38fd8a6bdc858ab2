package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.DIGEST;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.Attestation;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Clash;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.Designator;
import org.relegend.map.Edit;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;

class MergeTest {
  private static final BoardMap BASE = BoardMapSamples.divider();
  private static final PartId R1 = new PartId("R1");
  private static final NetId MID = new NetId("MID");
  private static final Attestation ADA = new Attestation(Evidence.SEEN, "Ada", NOON);
  private static final Attestation BEN =
      new Attestation(Evidence.MEASURED, "Ben", NOON.plusSeconds(60));

  private static BoardMap after(BoardMap map, Edit... edits) {
    BoardMap result = map;
    for (Edit edit : edits) {
      try {
        result = edit.applyTo(result);
      } catch (EditRefusedException e) {
        throw new AssertionError(e);
      }
    }
    return result;
  }

  private static Edit value(BoardMap map, String value) {
    return MapTables.PARTS.put(map.part(R1).orElseThrow().withValue(value));
  }

  private static Edit place(double x, Attestation by) {
    return MapTables.PLACEMENTS.put(new Placement(TOP, Subject.of(R1), new Point(x, 5), by));
  }

  private static List<String> abouts(MergeResult merged) {
    return merged.clashes().stream().map(clash -> ClashText.about(merged.map(), clash)).toList();
  }

  private static List<String> netsOf(BoardMap map, String pin) {
    return map.nets().stream()
        .filter(net -> net.has(PinRef.parse(pin)))
        .map(net -> net.id().text())
        .toList();
  }

  @Test
  void changedByOne_isTaken_alsoWhereTheOtherChangedAnotherField() {
    BoardMap mine = after(BASE, value(BASE, "5k6"));
    BoardMap theirs =
        after(BASE, MapTables.PARTS.put(BASE.part(R1).orElseThrow().withNote("runs warm")));
    MergeResult merged = Merge.of(BASE, mine, theirs);
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().part(R1).orElseThrow().value()).isEqualTo("5k6");
    assertThat(merged.map().part(R1).orElseThrow().note()).isEqualTo("runs warm");
  }

  @Test
  void changedByBothDifferently_keepsBoth_andMineGoesOn() throws Exception {
    MergeResult merged =
        Merge.of(BASE, after(BASE, value(BASE, "5k6")), after(BASE, value(BASE, "6k8")));
    assertThat(abouts(merged)).containsExactly("value of R1");
    Clash clash = merged.map().clashes().at(0);
    assertThat(clash.cells())
        .containsExactly(new Clash.Cell("parts", "R1", "value", "\"5k6\"", "\"6k8\""));
    assertThat(merged.map().part(R1).orElseThrow().value()).isEqualTo("5k6");
    BoardMap decided =
        ClashDecisions.edit(merged.map(), clash, ClashDecisions.Side.THEIRS).applyTo(merged.map());
    assertThat(decided.part(R1).orElseThrow().value()).isEqualTo("6k8");
    assertThat(decided.clashes()).isEmpty();
  }

  @Test
  void aDecision_leavesWhatWasChangedSinceTheMerge() throws Exception {
    MergeResult merged =
        Merge.of(BASE, after(BASE, value(BASE, "5k6")), after(BASE, value(BASE, "6k8")));
    BoardMap later =
        after(
            merged.map(), MapTables.PARTS.put(merged.map().part(R1).orElseThrow().withNote("hot")));
    BoardMap decided =
        ClashDecisions.edit(later, later.clashes().at(0), ClashDecisions.Side.THEIRS)
            .applyTo(later);
    assertThat(decided.part(R1).orElseThrow().note()).isEqualTo("hot");
    assertThat(decided.part(R1).orElseThrow().value()).isEqualTo("6k8");
  }

  @Test
  void renamedByOne_placedByTheOther_isOnePart() {
    BoardMap mine =
        after(
            BASE,
            MapTables.PARTS.put(BASE.part(R1).orElseThrow().withDesignator(new Designator("R9"))));
    MergeResult merged = Merge.of(BASE, mine, after(BASE, place(7, BEN)));
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().parts()).hasSize(2);
    assertThat(merged.map().nameOf(R1)).isEqualTo("R9");
    assertThat(merged.map().placements()).hasSize(1);
  }

  @Test
  void removedByOne_placedByTheOther_isOneClashOfAllThatGoesWithIt() throws Exception {
    MergeResult merged =
        Merge.of(BASE, after(BASE, MapTables.PARTS.remove(R1)), after(BASE, place(7, BEN)));
    assertThat(merged.clashes()).hasSize(1);
    assertThat(merged.map().parts().has(R1)).isFalse();
    assertThat(merged.map().placements()).isEmpty();
    BoardMap theirs = MergeLaws.decided(merged.map(), ClashDecisions.Side.THEIRS);
    assertThat(theirs).isEqualTo(after(BASE, place(7, BEN)));
    assertThat(MergeLaws.decided(merged.map(), ClashDecisions.Side.MINE))
        .isEqualTo(after(BASE, MapTables.PARTS.remove(R1)));
  }

  @Test
  void confirmed_addsToTheEvidence_evenByBoth() {
    BoardMap base = after(BASE, place(7, ADA));
    Placement.Key key = base.placements().at(0).key();
    Attestation cleo = new Attestation(Evidence.BEEPED, "Cleo", NOON.plusSeconds(30));
    MergeResult merged =
        Merge.of(
            base,
            after(base, new ConfirmPlacement(key, cleo)),
            after(base, new ConfirmPlacement(key, BEN)));
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().placements().at(0).evidence()).containsExactly(ADA, cleo, BEN);
  }

  @Test
  void movedByOne_confirmedWhereItWasByTheOther_isAClash() {
    BoardMap base = after(BASE, place(7, ADA));
    BoardMap mine = after(base, new ConfirmPlacement(base.placements().at(0).key(), BEN));
    MergeResult merged = Merge.of(base, mine, after(base, place(90, ADA)));
    assertThat(abouts(merged)).containsExactly("place of R1 on component");
    assertThat(merged.map().placements()).isEqualTo(mine.placements());
  }

  @Test
  void newNets_areOneByTheirPins_whateverTheyAreCalled() {
    BoardMap base = with(BASE, twoPin("R3", "resistor", "1k"), twoPin("R4", "resistor", "1k"));
    BoardMap mine = with(base, net("OUT", "R3.1", "R4.1"));
    BoardMap theirs = with(base, net("AUS", "R3.1", "R4.1", "R4.2"));
    MergeResult merged = Merge.of(base, mine, theirs);
    assertThat(abouts(merged)).containsExactly("name of OUT");
    assertThat(netsOf(merged.map(), "R4.2")).isEqualTo(netsOf(merged.map(), "R3.1")).hasSize(1);
  }

  @Test
  void newNetsOfOneName_withoutACommonPin_stayTwo() {
    BoardMap base = with(BASE, twoPin("R3", "resistor", "1k"), twoPin("R4", "resistor", "1k"));
    MergeResult merged =
        Merge.of(
            base, with(base, net("OUT", "R3.1", "R3.2")), with(base, net("OUT", "R4.1", "R4.2")));
    assertThat(netsOf(merged.map(), "R3.1")).containsExactly("OUT");
    assertThat(netsOf(merged.map(), "R4.1")).containsExactly("OUT~2");
  }

  @Test
  void twoJoinsThatTogetherJoinWhatBothHoldApart_areAClash() {
    BoardMap mine = after(BASE, new NetEdits.MergeNets(new NetId("VP"), MID));
    BoardMap theirs = after(BASE, new NetEdits.MergeNets(MID, new NetId("0V")));
    MergeResult merged = Merge.of(BASE, mine, theirs);
    assertThat(merged.clashes()).hasSize(1);
    assertThat(netsOf(merged.map(), "R1.1")).isNotEqualTo(netsOf(merged.map(), "R2.2"));
  }

  @Test
  void splitByOne_grownByTheOther_isAClash() {
    BoardMap base = with(BASE, twoPin("R3", "resistor", "1k"));
    MergeResult merged =
        Merge.of(
            base,
            after(base, new NetEdits.MovePin(PinRef.parse("R2.1"), new NetId("TAP"), ADA)),
            after(base, new NetEdits.MovePin(PinRef.parse("R3.1"), MID, BEN)));
    assertThat(netsOf(merged.map(), "R3.1")).hasSizeLessThan(2);
    assertThat(netsOf(merged.map(), "R1.2")).isNotEqualTo(netsOf(merged.map(), "R2.1"));
    assertThat(merged.clashes()).isNotEmpty();
  }

  @Test
  void joinedByOne_markedAsMainsByTheOther_keepsTheMark() {
    BoardMap mine = after(BASE, new NetEdits.MergeNets(new NetId("VP"), MID));
    Potential mains = new Potential(Potential.Nature.MAINS, 230);
    BoardMap theirs =
        after(BASE, MapTables.NETS.put(BASE.net(MID).orElseThrow().withPotential(mains)));
    MergeResult merged = Merge.of(BASE, mine, theirs);
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().net(new NetId("VP")).orElseThrow().potential()).isEqualTo(mains);
  }

  @Test
  void aHazardZone_doesntGoWithoutAWord() {
    HazardZone zone =
        new HazardZone(
            new ZoneId("z1"),
            TOP,
            HazardZone.Kind.MAINS,
            List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9)),
            "",
            List.of(ADA));
    BoardMap base = after(BASE, MapTables.ZONES.put(zone));
    BoardMap mine = after(base, place(7, ADA));
    BoardMap theirs = after(base, MapTables.ZONES.remove(zone.id()));
    for (MergeResult merged : List.of(Merge.of(base, mine, theirs), Merge.of(base, theirs, mine))) {
      assertThat(merged.map().zones()).hasSize(1);
      assertThat(merged.clashes()).hasSize(1);
    }
    assertThat(Merge.of(mine, theirs).map().zones()).hasSize(1);
  }

  private static HazardZone zone(HazardZone.Kind kind, double size) {
    return new HazardZone(
        new ZoneId("z1"),
        TOP,
        kind,
        List.of(new Point(0, 0), new Point(size, 0), new Point(size, size), new Point(0, size)),
        "",
        List.of(ADA));
  }

  @Test
  void aHazardZoneMadeSmallerOrOfAnotherKindByOne_isAskedAbout_andStaysUntilThen()
      throws Exception {
    HazardZone drawn = zone(HazardZone.Kind.MAINS, 9);
    BoardMap base = after(BASE, MapTables.ZONES.put(drawn));
    for (HazardZone less : List.of(zone(HazardZone.Kind.MAINS, 8), zone(HazardZone.Kind.HOT, 12))) {
      BoardMap changed = after(base, MapTables.ZONES.put(less));
      for (BoardMap other : List.of(base, after(base, place(7, ADA)))) {
        MergeResult merged = Merge.of(base, other, changed);
        assertThat(merged.clashes()).hasSize(1);
        assertThat(merged.map().zones()).containsExactly(drawn);
        assertThat(Merge.of(base, changed, other).map().zones()).containsExactly(drawn);
        BoardMap decided =
            ClashDecisions.edit(
                    merged.map(), merged.map().clashes().at(0), ClashDecisions.Side.THEIRS)
                .applyTo(merged.map());
        assertThat(decided.zones()).containsExactly(less);
      }
    }
  }

  @Test
  void aPhotoWithAHazardZoneRemovedByOne_isAskedAbout_theZoneAndPlacesWithIt() throws Exception {
    BoardMap base = after(BASE, place(7, ADA), MapTables.ZONES.put(zone(HazardZone.Kind.MAINS, 9)));
    BoardMap without = after(base, MapTables.PICTURES.remove(TOP));
    BoardMap worked = after(base, value(base, "6k8"));
    for (BoardMap other : List.of(base, worked)) {
      MergeResult merged = Merge.of(base, other, without);
      assertThat(merged.map().zones()).isEqualTo(base.zones());
      assertThat(merged.clashes()).hasSize(1);
      assertThat(merged.clashes().get(0).cells())
          .extracting(Clash.Cell::table)
          .contains("pictures", "placements", "zones");
      Clash clash = merged.map().clashes().at(0);
      BoardMap decided =
          ClashDecisions.edit(merged.map(), clash, ClashDecisions.Side.THEIRS)
              .applyTo(merged.map());
      assertThat(decided.pictures()).isEqualTo(without.pictures());
      assertThat(decided.zones()).isEmpty();
      MergeResult swapped = Merge.of(base, without, other);
      assertThat(swapped.clashes()).hasSize(1);
      BoardMap back =
          ClashDecisions.edit(swapped.map(), swapped.clashes().get(0), ClashDecisions.Side.THEIRS)
              .applyTo(swapped.map());
      assertThat(back.zones()).isEqualTo(base.zones());
    }
  }

  @Test
  void aHazardZoneMadeLargerByOne_isTaken() {
    BoardMap base = after(BASE, MapTables.ZONES.put(zone(HazardZone.Kind.MAINS, 9)));
    HazardZone larger = zone(HazardZone.Kind.MAINS, 12);
    BoardMap mine = after(base, place(7, ADA));
    MergeResult merged = Merge.of(base, mine, after(base, MapTables.ZONES.put(larger)));
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().zones()).containsExactly(larger);
  }

  /** Most maps that come back were changed by one side alone. */
  @Test
  void whereOnlyOneSideChangedAnything_aLostZoneAndAnotherIssueAreAskedAboutAllTheSame() {
    HazardZone zone =
        new HazardZone(
            new ZoneId("z1"),
            TOP,
            HazardZone.Kind.MAINS,
            List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9)),
            "",
            List.of(ADA));
    BoardMap base =
        after(BASE, MapTables.ZONES.put(zone)).withInfo(new MapInfo("t", "", "", "A", ""));
    BoardMap without = after(base, MapTables.ZONES.remove(zone.id()));
    BoardMap later = base.withInfo(new MapInfo("t", "", "", "B", ""));
    for (MergeResult merged :
        List.of(Merge.of(base, base, without), Merge.of(base, without, base))) {
      assertThat(merged.map().zones()).hasSize(1);
      assertThat(merged.clashes()).hasSize(1);
    }
    assertThat(Merge.of(base, base, later).clashes()).hasSize(1);
    assertThat(Merge.of(base, later, base).clashes()).hasSize(1);
  }

  @Test
  void twoRevisionsOfTheBoard_areAClash_evenIfOneSideOnlyChangedIt() {
    BoardMap base = BASE.withInfo(new MapInfo("T", "", "", "A", ""));
    BoardMap theirs = after(base, value(base, "6k8")).withInfo(new MapInfo("T", "", "", "B", ""));
    MergeResult merged = Merge.of(base, after(base, place(7, ADA)), theirs);
    assertThat(abouts(merged)).containsExactly("issue of the title page");
  }

  @Test
  void aBoardThatOneRemoved_staysWhereTheOtherPutAPartOnIt() {
    BoardId supply = new BoardId("supply");
    BoardMap base = BASE.with(MapTables.BOARDS, BASE.boards().with(Board.named(supply)));
    BoardMap mine = after(base, MapTables.BOARDS.remove(supply));
    BoardMap theirs =
        after(base, MapTables.PARTS.put(twoPin("R7", "resistor", "1k").withBoard(supply)));
    MergeResult merged = Merge.of(base, mine, theirs);
    assertThat(merged.map().boards().has(supply)).isTrue();
    assertThat(abouts(merged)).containsExactly("whether supply is there");
  }

  @Test
  void twoPhotosOfOneName_stayTwo_andSoDoTheirPlaces() {
    Photo other =
        new Photo(
            TOP,
            "Component side",
            "photos/component.jpg",
            MAIN,
            Side.COMPONENT,
            BoardTurn.UNKNOWN,
            "a".repeat(64),
            1000,
            800);
    BoardMap mine = after(BASE, place(7, ADA));
    BoardMap theirs =
        after(BASE.with(MapTables.PICTURES, BASE.pictures().with(other)), place(300, BEN));
    MergeResult merged = Merge.of(mine, theirs);
    assertThat(merged.clashes()).isEmpty();
    assertThat(merged.map().pictures()).hasSize(3);
    assertThat(merged.map().placements()).hasSize(2);
    Photo second = (Photo) merged.map().picture(new PictureId("component~2")).orElseThrow();
    assertThat(second.sha256()).isEqualTo("a".repeat(64)).isNotEqualTo(DIGEST);
    assertThat(second.file()).isEqualTo("photos/component-2.jpg");
  }

  @Test
  void undecidedClashes_travelOn_andADecisionOfOneSideHolds() throws Exception {
    BoardMap undecided =
        Merge.of(BASE, after(BASE, value(BASE, "5k6")), after(BASE, value(BASE, "6k8"))).map();
    BoardMap decided =
        ClashDecisions.edit(undecided, undecided.clashes().at(0), ClashDecisions.Side.THEIRS)
            .applyTo(undecided);
    MergeResult merged = Merge.of(undecided, decided, after(undecided, place(7, BEN)));
    assertThat(merged.map().clashes()).isEmpty();
    assertThat(merged.map().part(R1).orElseThrow().value()).isEqualTo("6k8");
  }

  @Test
  void mapsOfDifferentThings_areRefusedWithABase() {
    BoardMap other = BoardMap.empty("other", MapInfo.titled("Other"));
    assertThatThrownBy(() -> Merge.of(BASE, BASE, other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not versions of one map");
  }

  @Test
  void aClashThatCantBeRead_isRefusedWithASentence() {
    Clash bent =
        new Clash("x", 1, List.of(new Clash.Cell("parts", "R1", "value", "\"1k\"", "{bent")));
    Clash unknown = new Clash("y", 1, List.of(new Clash.Cell("films", "R1", "", "1", "2")));
    for (Clash clash : List.of(bent, unknown)) {
      assertThatThrownBy(() -> ClashDecisions.edit(BASE, clash, ClashDecisions.Side.THEIRS))
          .isInstanceOf(EditRefusedException.class)
          .hasMessageContaining("can't be decided");
      assertThat(ClashText.version(BASE, clash, ClashDecisions.Side.THEIRS)).isNotEmpty();
    }
  }
}
