package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.check.CheckContext;
import org.relegend.check.Checks;
import org.relegend.check.PictureFiles;
import org.relegend.circuit.Circuit;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Picture;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/** The demo map as it is shipped, against the demo's own tables and figures worked by hand. */
class ShippedDemoTest {
  private static final BoardMap DEMO = load();
  private static final Set<String> MAINS_PARTS = Set.of("J1", "F1", "SW1", "C1", "R1", "T1");

  private static BoardMap load() {
    Path folder = Path.of(System.getProperty("relegend.root", "..")).resolve("demo-data/map");
    try (MapFolder map = MapFolder.openReadOnly(folder)) {
      return map.map();
    } catch (StoreException problem) {
      throw new IllegalStateException(problem);
    }
  }

  private static Hazards hazards(BoardMap map) {
    return Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS);
  }

  @Test
  void reached_areTheFourteenMainsPins_andTheBarrierIsTheTransformer() {
    Hazards hazards = hazards(DEMO);
    List<String> pins = new ArrayList<>();
    hazards.reached().forEach(node -> node.pins().forEach(pin -> pins.add(pin.toString())));
    assertThat(pins)
        .containsExactlyInAnyOrder(
            HazardMaps.MAINS.stream().map(line -> line.split(" ")[0]).toArray(String[]::new));
    assertThat(hazards.mains().barriers())
        .extracting(MainsReach.Barrier::part)
        .containsExactly(new PartId("T1"));
    assertThat(hazards.unmarked()).isEmpty();
  }

  /** By hand: 1000 uF x (23.06 V)^2 / 2 = 0.26588 J; 4.7 s x ln 23.06 = 14.749 s to 1 V. */
  @Test
  void reservoirs_asWorkedByHand() {
    for (String name : List.of("C2", "C3")) {
      StoredCharge charge =
          hazards(DEMO).charges().stream()
              .filter(one -> one.capacitors().contains(new PartId(name)))
              .findFirst()
              .orElseThrow();
      assertThat(charge.discharge().orElseThrow().joules()).isCloseTo(0.26588, within(1e-5));
      assertThat(charge.secondsTo(1).orElseThrow()).isCloseTo(14.749, within(0.001));
    }
  }

  static Stream<HazardZone> zones() {
    return DEMO.zones().stream();
  }

  @ParameterizedTest
  @MethodSource("zones")
  void deletingAnyZone_isAFindingOnItsPicture(HazardZone zone) {
    assertThat(unmarked(DEMO)).isEmpty();
    assertThat(unmarked(DEMO.with(MapTables.ZONES, DEMO.zones().without(zone.id()))))
        .isNotEmpty()
        .allMatch(finding -> finding.picture().filter(zone.picture()::equals).isPresent());
  }

  static Stream<Placement> placesOfMainsParts() {
    return DEMO.placements().stream()
        .filter(placement -> MAINS_PARTS.contains(partOf(placement.subject())))
        .filter(placement -> !(placement.subject() instanceof Subject.OfPin pin) || isMains(pin));
  }

  private static boolean isMains(Subject.OfPin pin) {
    return HazardMaps.MAINS.stream()
        .anyMatch(line -> line.split(" ")[0].equals(pin.pin().toString()));
  }

  private static String partOf(Subject subject) {
    return subject.toString().split("\\.")[0];
  }

  @ParameterizedTest
  @MethodSource("placesOfMainsParts")
  void movingAnyMainsPartOutOfItsZone_isAFinding(Placement placement) {
    Picture picture = DEMO.picture(placement.picture()).orElseThrow();
    Point away = new Point(picture.width() * 0.75, picture.height() * 0.9);
    Placement moved = placement.movedTo(away, BoardMapSamples.says(Evidence.SEEN));
    assertThat(unmarked(DEMO.with(MapTables.PLACEMENTS, DEMO.placements().with(moved))))
        .anyMatch(
            finding ->
                finding.subjects().contains(placement.subject())
                    && finding.picture().filter(placement.picture()::equals).isPresent());
  }

  private static List<Finding> unmarked(BoardMap map) {
    return Checks.inspect(CheckContext.of(map, PictureFiles.asRecorded())).stream()
        .filter(finding -> finding.code().startsWith("unmarked-"))
        .filter(finding -> finding.severity() != Severity.INFORMATION)
        .toList();
  }
}
