package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.finding.Finding;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Seeds;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;

/** Holds what all checks promise. */
class ChecksTest {
  /** Codes of checks that were taken out again: nothing else may ever be called so. */
  private static final Set<String> RETIRED = Set.of();

  static Stream<Check> checks() {
    return Checks.ALL.stream();
  }

  static LongStream seeds() {
    return Seeds.upTo(25);
  }

  @Test
  void everyCheckOfThePackage_isInTheList() {
    Set<String> written =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.relegend.check")
                .stream()
                .filter(type -> type.isAssignableTo(Check.class) && !type.isInterface())
                .map(JavaClass::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
    Set<String> listed =
        checks()
            .map(check -> check.getClass().getSimpleName())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(written).hasSizeGreaterThan(20).isEqualTo(listed);
  }

  @Test
  void codes_areUniqueAndNeverReused() {
    List<String> codes = checks().map(Check::code).toList();
    assertThat(codes).doesNotHaveDuplicates().noneMatch(RETIRED::contains);
    assertThat(codes).allMatch(code -> code.matches("[a-z]+(-[a-z]+)+"));
  }

  /** A code is its class name, so that one leads to the other. */
  @ParameterizedTest
  @MethodSource("checks")
  void code_isTheNameOfTheClass(Check check) {
    String words = check.getClass().getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1");
    assertThat(check.code()).isEqualTo(words.toLowerCase(java.util.Locale.ROOT));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyCheck_hasATestInWhichItFiresAndOneInWhichItDoesNot(Check check)
      throws ClassNotFoundException {
    Class<?> test = Class.forName(check.getClass().getName() + "Test");
    List<String> methods = Arrays.stream(test.getDeclaredMethods()).map(Method::getName).toList();
    assertThat(methods).anyMatch(name -> name.startsWith("fires_"));
    assertThat(methods).anyMatch(name -> name.startsWith("isQuiet_"));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anyMap_isInspectedTheSameWayTwice(long seed) {
    BoardMap map = BoardMapSamples.random(seed);
    List<Finding> findings = findings(map);
    assertThat(findings(map)).isEqualTo(findings);
    assertThat(findings).extracting(Finding::severity).isSorted();
    assertThat(findings).extracting(Finding::key).doesNotHaveDuplicates();
    assertThat(findings)
        .allSatisfy(
            finding -> {
              assertThat(finding.message()).doesNotContain("[", "Optional", "OfPart", "null");
              assertThat(finding.remedy()).endsWith(".");
            });
  }

  @Test
  void emptyMap_hasNothingToFind() {
    assertThat(findings(BoardMapSamples.blank())).isEmpty();
  }

  /** Nothing in this map refers to anything that is there. */
  @Test
  void mapOfDanglingReferences_isToldWithoutAFailure() throws EditRefusedException {
    BoardMap map = dangling();
    Map<String, Long> codes = counts(findings(map));
    assertThat(codes)
        .containsEntry("net-pin-of-nothing", 1L)
        .containsEntry("placement-of-nothing", 1L)
        .containsEntry("placement-on-no-picture", 1L)
        .containsEntry("twin-of-nothing", 1L)
        .containsEntry("mating-of-nothing", 1L)
        .containsEntry("line-up-of-nothing", 1L)
        .containsEntry("discrepancy-of-nothing", 1L)
        .containsEntry("zone-on-no-picture", 1L)
        .containsEntry("board-unknown", 2L);
    for (Finding finding : findings(map)) {
      if (finding.fix().isPresent()) {
        map = finding.fix().get().applyTo(map);
      }
    }
    assertThat(counts(findings(map)).keySet())
        .containsExactly("empty-net", "not-yet-placed", "one-pin-net", "zone-on-no-picture");
  }

  private static BoardMap dangling() {
    BoardMap map =
        BoardMapSamples.with(
            BoardMapSamples.divider(),
            BoardMapSamples.twoPin("R1", "resistor", "1k").withBoard(new BoardId("lost")));
    PictureId gone = new PictureId("gone");
    Subject nothing = Subject.of(new PartId("Q9"));
    List<Point> corners = List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1));
    var evidence = List.of(BoardMapSamples.says(Evidence.GUESSED));
    return BoardMapSamples.with(map, BoardMapSamples.net("X", "Q9.1"))
        .with(MapTables.BOARDS, Table.empty())
        .with(
            MapTables.PLACEMENTS,
            Table.of(
                List.of(new Placement(gone, nothing, 1, new Point(1, 1), List.of(), evidence))))
        .with(
            MapTables.TWINS,
            Table.of(List.of(new TwinPair(nothing, Subject.of(new PartId("R1")), evidence))))
        .with(MapTables.MATINGS, Table.of(List.of(new Mating(new PartId("Q9"), new PartId("R1")))))
        .with(
            MapTables.LINE_UPS,
            Table.of(
                List.of(
                    new PicturePairs(
                        gone,
                        BoardMapSamples.TOP,
                        PicturePairs.Origin.CLICKED,
                        List.of(new PicturePairs.Spot(new Point(1, 1), new Point(2, 2))),
                        evidence))))
        .with(
            MapTables.ZONES,
            Table.of(
                List.of(
                    new HazardZone(
                        new ZoneId("z"), gone, HazardZone.Kind.HOT, corners, "", evidence))))
        .with(
            MapTables.DISCREPANCIES,
            Table.of(
                List.of(
                    new DrawingDiscrepancy(
                        nothing, DrawingDiscrepancy.Aspect.VALUE, "1k", evidence, ""))));
  }

  private static Map<String, Long> counts(List<Finding> findings) {
    return findings.stream()
        .collect(Collectors.groupingBy(Finding::code, TreeMap::new, Collectors.counting()));
  }

  private static List<Finding> findings(BoardMap map) {
    return new ArrayList<>(Checks.inspect(CheckContext.of(map, PictureFiles.asRecorded())));
  }
}
