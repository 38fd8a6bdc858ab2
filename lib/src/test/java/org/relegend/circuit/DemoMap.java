package org.relegend.circuit;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.says;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Designator;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

/** The demo instrument's circuit, from its tables: 102 parts, 259 pins, 67 nets. */
public final class DemoMap {
  private DemoMap() {}

  /** The map with sections, part twins and the drawing's discrepancies. */
  public static BoardMap map() {
    BoardMap map = BoardMapSamples.blank();
    return map.with(MapTables.PARTS, Table.of(parts()))
        .with(MapTables.NETS, Table.of(nets()))
        .with(MapTables.TWINS, Table.of(twins()))
        .with(MapTables.DISCREPANCIES, Table.of(discrepancies()));
  }

  private static List<Part> parts() {
    Map<String, List<Pin>> pins = new LinkedHashMap<>();
    for (CSVRecord row : rows("demo-pins.csv")) {
      pins.computeIfAbsent(row.get("part"), part -> new ArrayList<>())
          .add(new Pin(row.get("pin"), row.get("role")));
    }
    List<Part> parts = new ArrayList<>();
    for (CSVRecord row : rows("demo-parts.csv")) {
      String name = row.get("designator");
      Kind kind = Kinds.standard().find(row.get("kind")).orElseThrow();
      parts.add(
          Part.named(new PartId(name), new Designator(name), MAIN)
              .withKind(row.get("kind"))
              .withValue(row.get("value"))
              .withChannel(row.get("channel"))
              .withPins(pins.get(name), kind.sectionsFor(pins.get(name))));
    }
    return parts;
  }

  private static List<Net> nets() {
    Map<String, List<Net.Member>> members = new LinkedHashMap<>();
    for (CSVRecord row : rows("demo-pins.csv")) {
      members
          .computeIfAbsent(row.get("net"), net -> new ArrayList<>())
          .add(
              new Net.Member(
                  new PinRef(new PartId(row.get("part")), row.get("pin")),
                  List.of(says(Evidence.SEEN))));
    }
    List<Net> nets = new ArrayList<>();
    members.forEach(
        (name, pins) -> {
          String channel = name.matches("[AB]_.*") && !name.startsWith("AC_") ? name : " ";
          nets.add(
              Net.named(new NetId(name))
                  .withChannel(channel.substring(0, 1).strip())
                  .withMembers(pins));
        });
    return nets;
  }

  private static List<TwinPair> twins() {
    List<TwinPair> twins = new ArrayList<>();
    for (CSVRecord row : rows("demo-twins.csv")) {
      if (row.get("channel").equals("A") && !row.get("twin").isEmpty()) {
        twins.add(
            new TwinPair(
                Subject.of(new PartId(row.get("designator"))),
                Subject.of(new PartId(row.get("twin"))),
                List.of(says(Evidence.MATCHED))));
      }
    }
    return twins;
  }

  private static List<DrawingDiscrepancy> discrepancies() {
    List<DrawingDiscrepancy> found = new ArrayList<>();
    for (CSVRecord row : rows("demo-discrepancy.csv")) {
      found.add(
          new DrawingDiscrepancy(
              Subject.of(PinRef.parse(row.get("pin"))),
              DrawingDiscrepancy.Aspect.NET,
              row.get("drawing"),
              List.of(says(Evidence.MEASURED)),
              ""));
    }
    return found;
  }

  /** The rows of one of the demo's tables. */
  static List<CSVRecord> rows(String table) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                Objects.requireNonNull(DemoMap.class.getResourceAsStream(table), table),
                StandardCharsets.UTF_8),
            format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
