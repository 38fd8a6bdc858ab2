package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.divider;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.EditHistory;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.RandomEdits;
import org.relegend.map.Seeds;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

class MapFormatTest {
  private static final Path PATH = Path.of("map.json");

  static LongStream seeds() {
    return Seeds.upTo(50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void writeThenRead_isEqual(long seed) throws StoreException {
    EditHistory history = new EditHistory(BoardMapSamples.random(seed));
    RandomEdits.applySome(history, seed);
    BoardMap map = history.current();
    assertThat(MapFormat.read(MapFormat.write(map), PATH)).isEqualTo(map);
  }

  @Test
  void writeThenRead_ofAMapWithEveryField_isEqual() throws StoreException {
    BoardMap map = FullMap.make();
    assertThat(MapFormat.read(MapFormat.write(map), PATH)).isEqualTo(map);
  }

  /** A file of each form is kept for good: it is read, and what it says is written as it was. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void keptFileOfEachForm_isReadAndWrittenAsItWas(int form) throws Exception {
    byte[] kept;
    try (InputStream in = getClass().getResourceAsStream("map-format-%d.json".formatted(form))) {
      kept = Objects.requireNonNull(in).readAllBytes();
    }
    assertThat(new String(kept, StandardCharsets.UTF_8)).startsWith("{\n  \"format\": " + form);
    BoardMap map = MapFormat.read(kept, PATH);
    assertThat(MapFormat.write(map)).isEqualTo(kept);
    assertThat(map.zones().stream().anyMatch(z -> z.kind() == HazardZone.Kind.SUBSTANCE))
        .isEqualTo(form == 2);
  }

  /** What the first form can say is written in it, so that older programs go on reading it. */
  @Test
  void zoneOfASubstance_takesTheSecondForm_andWithoutItTheFirstIsEnough() {
    BoardMap map = FullMap.make();
    HazardZone zone = map.zones().at(0);
    HazardZone substance =
        new HazardZone(
            new ZoneId("z2"),
            zone.picture(),
            HazardZone.Kind.SUBSTANCE,
            zone.outline(),
            "",
            zone.evidence());
    BoardMap more = map.with(MapTables.ZONES, map.zones().with(substance));
    assertThat(text(more)).startsWith("{\n  \"format\": 2,");
    assertThat(text(more.with(MapTables.ZONES, more.zones().without(substance.id()))))
        .isEqualTo(text(map));
    assertThat(text(map)).startsWith("{\n  \"format\": 1,");
  }

  @Test
  void write_ofEqualMaps_givesEqualBytes() throws StoreException {
    BoardMap map = BoardMapSamples.random(7);
    byte[] first = MapFormat.write(map);
    assertThat(MapFormat.write(MapFormat.read(first, PATH))).isEqualTo(first);
    BoardMap remade =
        map.with(MapTables.PARTS, Table.of(List.copyOf(map.parts())))
            .with(MapTables.NETS, Table.of(map.nets()));
    assertThat(MapFormat.write(remade)).isEqualTo(first);
  }

  @Test
  void write_laysOutOneFieldALine_andEntriesOfAnEntityInline() {
    assertThat(text(divider()))
        .startsWith("{\n  \"format\": 1,\n  \"id\": \"sample\",\n  \"info\": {\n")
        .contains(
            """
                {
                  "id": "R1",
                  "designator": "R1",
                  "kind": "resistor",
                  "value": "4k7",
                  "board": "main",
                  "pins": [
                    {"number": "1"},
                    {"number": "2"}
                  ]
                },
            """)
        .contains(
            """
                    {"pin": "R2.1", "evidence": [{"evidence": "inferred", "author": "test", "at": "2026-03-04T12:00:00Z"}]}
            """)
        .doesNotContain("\r", "note", "null")
        .endsWith("\n}\n");
  }

  @Test
  void write_afterMovingOnePlacement_changesTwoLinesAndItsEvidence() {
    BoardMap map = BoardMapSamples.random(3);
    Placement before = map.placements().at(map.placements().size() / 2);
    Attestation seen = new Attestation(Evidence.SEEN, "kim", BoardMapSamples.NOON);
    Placement after = before.movedTo(new Point(1.5, 2.25), seen);
    BoardMap moved = map.with(MapTables.PLACEMENTS, map.placements().with(after));
    assertThat(changedLines(map, moved)).isEqualTo(3);
    assertThat(text(moved)).contains("      \"x\": 1.5,\n      \"y\": 2.25,\n");
  }

  @Test
  void write_afterChangingOneValue_changesOneLine() {
    BoardMap map = BoardMapSamples.random(3);
    BoardMap changed =
        map.with(
            MapTables.PARTS,
            map.parts().with(map.part(new PartId("R2")).orElseThrow().withValue("9k1")));
    assertThat(changedLines(map, changed)).isEqualTo(1);
  }

  @Test
  void numbersAreShortAndExact() throws StoreException {
    double[] samples = {0.1, 1 / 3.0, 12.5, 4000, 1e-9, 123456.789, 2e20, Double.MIN_VALUE, -7.25};
    BoardMap map = divider();
    for (double x : samples) {
      Placement placement =
          new Placement(
              BoardMapSamples.TOP,
              Subject.of(new PartId("R1")),
              new Point(x, -0.0),
              BoardMapSamples.says(Evidence.SEEN));
      BoardMap placed = map.with(MapTables.PLACEMENTS, Table.of(List.of(placement)));
      assertThat(MapFormat.read(MapFormat.write(placed), PATH)).isEqualTo(placed);
      assertThat(text(placed)).contains("\"y\": 0,");
    }
  }

  /** Lines that are not in both texts, which have equally many. */
  private static long changedLines(BoardMap a, BoardMap b) {
    List<String> before = text(a).lines().toList();
    List<String> after = text(b).lines().toList();
    assertThat(after).hasSameSizeAs(before);
    return LongStream.range(0, before.size())
        .filter(i -> !before.get((int) i).equals(after.get((int) i)))
        .count();
  }

  private static String text(BoardMap map) {
    return new String(MapFormat.write(map), StandardCharsets.UTF_8);
  }
}
