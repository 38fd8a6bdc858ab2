package org.relegend.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;

/** Tables for tests, typed in or read from the test's resources. */
final class TableSamples {
  static final Instant MONDAY = Instant.parse("2026-03-02T09:00:00Z");
  static final Instant TUESDAY = Instant.parse("2026-03-03T09:00:00Z");

  private final Map<TableSort, TableSource> sources = new EnumMap<>(TableSort.class);

  static TableSamples none() {
    return new TableSamples();
  }

  static TableSamples demo() {
    TableSamples tables = new TableSamples();
    tables.sources.put(TableSort.PARTS, resource("parts.csv"));
    tables.sources.put(TableSort.PINS, resource("pins.csv"));
    return tables;
  }

  TableSamples parts(String... lines) {
    return with(TableSort.PARTS, "parts.csv", lines);
  }

  TableSamples pins(String... lines) {
    return with(TableSort.PINS, "pins.csv", lines);
  }

  TableSamples placements(String... lines) {
    return with(TableSort.PLACEMENTS, "placements.csv", lines);
  }

  private TableSamples with(TableSort sort, String name, String... lines) {
    sources.put(sort, text(name, String.join("\n", lines)));
    return this;
  }

  ImportPlan plan(BoardMap map, ImportOptions options) throws TableException {
    return TableImport.plan(map, sources, options);
  }

  ImportPlan plan(BoardMap map) throws TableException {
    return plan(map, by("ann", MONDAY));
  }

  /** The map with the tables in it. */
  BoardMap into(BoardMap map) throws TableException, EditRefusedException {
    return plan(map).edit().applyTo(map);
  }

  BoardMap into(BoardMap map, ImportOptions options) throws TableException, EditRefusedException {
    return plan(map, options).edit().applyTo(map);
  }

  static ImportOptions by(String author, Instant at) {
    return new ImportOptions(author, at, false);
  }

  static ImportOptions replacing() {
    return new ImportOptions("ann", MONDAY, true);
  }

  static TableSource text(String name, String text) {
    return new TableSource(name, text.getBytes(StandardCharsets.UTF_8));
  }

  static TableSource resource(String name) {
    try (InputStream in = TableSamples.class.getResourceAsStream(name)) {
      return new TableSource(name, in.readAllBytes());
    } catch (IOException unreadable) {
      throw new IllegalStateException(name, unreadable);
    }
  }
}
