package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.map.Table;

/** The demo instrument; expected lists are those of its own tables, figures worked by hand. */
class DemoHazardsTest {
  private static final BoardMap DEMO = HazardMaps.demo();
  private static final Hazards HAZARDS = of(DEMO);

  static Hazards of(BoardMap map) {
    return Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS);
  }

  /** Tenth story of the practice notes: all 14 mains pins, and no others. */
  @Test
  void reached_areTheFourteenMainsPins() {
    List<String> pins = new ArrayList<>();
    HAZARDS.reached().forEach(node -> node.pins().forEach(pin -> pins.add(pin.toString())));
    assertThat(pins)
        .containsExactlyInAnyOrder(
            HazardMaps.MAINS.stream().map(line -> line.split(" ")[0]).toArray(String[]::new));
    assertThat(HAZARDS.reached()).allMatch(node -> node.kind() == HazardZone.Kind.MAINS);
    assertThat(HAZARDS.reached()).allMatch(node -> node.volts() == 230);
    assertThat(HAZARDS.unmarked()).isEmpty();
    assertThat(HAZARDS.unplaced()).isEmpty();
    assertThat(HAZARDS.mains().chassis()).isEmpty();
    assertThat(HAZARDS.mains().assumed()).isEmpty();
    assertThat(HAZARDS.mains().bridges()).isEmpty();
    assertThat(HAZARDS.mains().contradictions()).isEmpty();
  }

  /** The same without a word on any net: the inlet tells. */
  @Test
  void reached_followsFromTheInletAlone() {
    BoardMap bare = DEMO;
    for (var net : DEMO.nets()) {
      bare = bare.with(MapTables.NETS, bare.nets().with(net.withPotential(Potential.UNKNOWN)));
    }
    List<String> pins = new ArrayList<>();
    of(bare).reached().forEach(node -> node.pins().forEach(pin -> pins.add(pin.toString())));
    assertThat(pins).hasSize(14);
  }

  @Test
  void barrier_isTheTransformer() {
    assertThat(HAZARDS.mains().barriers()).hasSize(1);
    MainsReach.Barrier barrier = HAZARDS.mains().barriers().get(0);
    assertThat(barrier.part()).isEqualTo(new PartId("T1"));
    assertThat(barrier.near()).map(Object::toString).containsExactly("T1.1", "T1.2");
    assertThat(barrier.far()).map(Object::toString).containsExactly("T1.3", "T1.4", "T1.5", "T1.6");
    assertThat(barrier.failure()).isEmpty();
  }

  /**
   * By hand: E = 1000 uF x (23.1 V)^2 / 2 = 0.2668 J; RC = 4.7 k x 1000 uF = 4.7 s; to 1 V 4.7 s x
   * ln 23.1 = 14.76 s. The practice notes say about 15 s.
   */
  @Test
  void reservoirs_asWorkedByHand() {
    for (String name : List.of("C2", "C3")) {
      StoredCharge charge = charge(name);
      assertThat(charge.basis()).isEqualTo(StoredCharge.Basis.DECLARED);
      assertThat(charge.discharge().orElseThrow().joules()).isCloseTo(0.2668, within(1e-4));
      assertThat(charge.discharge().orElseThrow().coulombs()).isCloseTo(0.0231, within(1e-9));
      assertThat(charge.bleeder().orElseThrow().ohms()).isCloseTo(4700, within(1e-6));
      assertThat(charge.bleeder().orElseThrow().resistors())
          .containsExactly(new PartId(name.equals("C2") ? "R2" : "R3"));
      assertThat(charge.secondsTo(1).orElseThrow()).isCloseTo(14.76, within(0.01));
      assertThat(charge.secondsTo(60).orElseThrow()).isZero();
      assertThat(charge.isNoteworthy(VoltageLimits.INSTRUMENTS)).isTrue();
    }
  }

  /** By hand: sqrt 2 x 230 = 325.3 V; E = 100 nF x 325.3^2 / 2 = 5.29 mJ; to 60 V 1.690 x 0.1 s. */
  @Test
  void mainsCapacitor_isChargedToThePeak() {
    StoredCharge charge = charge("C1");
    assertThat(charge.volts().orElseThrow()).isCloseTo(325.27, within(0.01));
    assertThat(charge.discharge().orElseThrow().joules()).isCloseTo(5.29e-3, within(1e-5));
    assertThat(charge.bleeder().orElseThrow().resistors()).containsExactly(new PartId("R1"));
    assertThat(charge.secondsTo(60).orElseThrow()).isCloseTo(0.169, within(1e-3));
  }

  @Test
  void capacitorWithoutVoltage_isToldByItsRating_orAsUnknown() {
    StoredCharge rated = charge("C4");
    assertThat(rated.basis()).isEqualTo(StoredCharge.Basis.RATED);
    assertThat(rated.volts().orElseThrow()).isEqualTo(25);
    StoredCharge unknown = charge("C103");
    assertThat(unknown.basis()).isEqualTo(StoredCharge.Basis.UNKNOWN);
    assertThat(unknown.discharge()).isEmpty();
    assertThat(unknown.secondsTo(1)).isEmpty();
  }

  private static StoredCharge charge(String part) {
    return HAZARDS.charges().stream()
        .filter(charge -> charge.capacitors().contains(new PartId(part)))
        .findFirst()
        .orElseThrow();
  }

  static Stream<HazardZone> zones() {
    return DEMO.zones().stream();
  }

  @ParameterizedTest
  @MethodSource("zones")
  void deletingAnyZone_isFound_andTheProposalMendsIt(HazardZone zone) {
    BoardMap map = DEMO.with(MapTables.ZONES, DEMO.zones().without(zone.id()));
    Hazards hazards = of(map);
    assertThat(hazards.unmarked())
        .hasSize(zone.kind() == HazardZone.Kind.MAINS ? 14 : 2)
        .allMatch(danger -> danger.kind() == zone.kind())
        .allMatch(danger -> danger.picture().equals(zone.picture()));
    List<Hazards.Proposal> proposals = hazards.proposals(Circuit.of(map));
    assertThat(proposals).hasSize(1);
    HazardZone drawn =
        new HazardZone(
            zone.id(),
            proposals.get(0).picture(),
            proposals.get(0).kind(),
            proposals.get(0).outline(),
            "",
            List.of(BoardMapSamples.says(Evidence.INFERRED)));
    assertThat(of(map.with(MapTables.ZONES, map.zones().with(drawn))).unmarked()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("zones")
  void shiftingAnyZoneAway_isFound(HazardZone zone) {
    List<Point> away = zone.outline().stream().map(point -> point.plus(0, 1500)).toList();
    HazardZone shifted =
        new HazardZone(zone.id(), zone.picture(), zone.kind(), away, zone.note(), zone.evidence());
    assertThat(of(DEMO.with(MapTables.ZONES, DEMO.zones().with(shifted))).unmarked()).isNotEmpty();
  }

  static Stream<Placement> placements() {
    return DEMO.placements().stream();
  }

  @ParameterizedTest
  @MethodSource("placements")
  void movingAnyMainsPinOrReservoirOutOfItsZone_isFound(Placement placement) {
    Placement moved = placement.movedTo(new Point(2000, 2900), BoardMapSamples.says(Evidence.SEEN));
    Hazards hazards = of(DEMO.with(MapTables.PLACEMENTS, DEMO.placements().with(moved)));
    assertThat(hazards.unmarked())
        .map(UnmarkedHazard::subject)
        .containsExactly(placement.subject());
  }

  /** A zone of another kind doesn't say what threatens; one with nothing in it is left alone. */
  @Test
  void zoneOfAnotherKind_isNotEnough() {
    HazardZone zone =
        DEMO.zones().stream()
            .filter(z -> z.id().text().equals("mains-top"))
            .findFirst()
            .orElseThrow();
    HazardZone hot =
        new HazardZone(
            zone.id(), zone.picture(), HazardZone.Kind.HOT, zone.outline(), "", zone.evidence());
    assertThat(of(DEMO.with(MapTables.ZONES, DEMO.zones().with(hot))).unmarked()).hasSize(14);
    HazardZone idle =
        HazardMaps.zone("idle", zone.picture(), HazardZone.Kind.MAINS, 200, 100, 220, 120);
    assertThat(of(DEMO.with(MapTables.ZONES, DEMO.zones().with(idle))).unmarked()).isEmpty();
  }

  @Test
  void placedBody_countsAsWell() {
    Placement body =
        new Placement(
            BoardMapSamples.TOP,
            Subject.parse("F1"),
            new Point(3000, 2000),
            BoardMapSamples.says(Evidence.SEEN));
    assertThat(of(DEMO.with(MapTables.PLACEMENTS, DEMO.placements().with(body))).unmarked())
        .map(UnmarkedHazard::subject)
        .containsExactly(Subject.parse("F1"));
  }

  /** What the screen shows as marked isn't told as unmarked. */
  @Test
  void dangersInAZoneThatALineUpCarries_areMarked() {
    List<HazardZone> onTop =
        DEMO.zones().stream().filter(zone -> zone.picture().equals(BoardMapSamples.TOP)).toList();
    BoardMap half = DEMO.with(MapTables.ZONES, Table.of(onTop));
    assertThat(of(half).unmarked())
        .isNotEmpty()
        .allMatch(danger -> danger.picture().equals(HazardMaps.SOLDER));
    List<PicturePairs.Spot> spots = new ArrayList<>();
    for (int x = 0; x < 4; x++) {
      for (int y = 0; y < 3; y++) {
        spots.add(
            new PicturePairs.Spot(
                new Point(1000 * x + 300, 1000 * y + 300),
                new Point(3750 - 1000 * x - 300, 1000 * y + 300)));
      }
    }
    PicturePairs pairs =
        new PicturePairs(
            BoardMapSamples.TOP,
            HazardMaps.SOLDER,
            PicturePairs.Origin.CLICKED,
            spots,
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    assertThat(of(half.with(MapTables.LINE_UPS, Table.of(List.of(pairs)))).unmarked()).isEmpty();
  }

  /** An inlet, a high voltage or a charge is enough, each without a zone or a word on mains. */
  @Test
  void cautions_areCalledForByAnInlet_highVoltageAndStoredChargeAlike() {
    BoardMap bare = DEMO.with(MapTables.ZONES, Table.of(List.of()));
    for (var net : DEMO.nets()) {
      bare = bare.with(MapTables.NETS, bare.nets().with(net.withPotential(Potential.UNKNOWN)));
    }
    assertThat(of(bare).callForCautions()).isTrue();
    BoardMap noInlet = BoardMapSamples.divider();
    assertThat(of(noInlet).callForCautions()).isFalse();
    assertThat(of(HazardMaps.with(noInlet, "VP", Potential.Nature.DC, 300)).callForCautions())
        .isTrue();
    BoardMap capacitor =
        BoardMapSamples.with(
            BoardMapSamples.with(
                BoardMapSamples.blank(),
                BoardMapSamples.part("C1", "cap-pol", "4700u 63V", "+", "-")),
            BoardMapSamples.net("RAW", "C1.+"),
            BoardMapSamples.net("GND", "C1.-"));
    assertThat(of(capacitor).callForCautions()).as("9 J by its rating").isTrue();
    BoardMap small =
        BoardMapSamples.with(capacitor, BoardMapSamples.part("C1", "cap-pol", "47u 25V", "+", "-"));
    assertThat(of(small).callForCautions()).isFalse();
    capacitor = HazardMaps.with(capacitor, "GND", Potential.Nature.REFERENCE, 0);
    capacitor = HazardMaps.with(capacitor, "RAW", Potential.Nature.DC, 50);
    assertThat(of(capacitor).reached()).isEmpty();
    assertThat(of(capacitor).callForCautions()).isTrue();
  }
}
