package org.relegend.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Board;
import org.relegend.map.BoardMap;

/** Where what is printed comes from, so that a sheet found in a drawer still tells. */
final class Provenance {
  /** Digits of a digest that tell two maps apart in a line. */
  private static final int SHORT = 12;

  private Provenance() {}

  static LocalDate date(Instant printed) {
    return LocalDate.ofInstant(printed, ZoneOffset.UTC);
  }

  static List<String> of(BoardMap map, String digest, Instant printed) {
    List<String> lines = new ArrayList<>();
    lines.add("Map: %s (%s)".formatted(map.info().title(), map.id()));
    String model = (map.info().maker() + " " + map.info().model()).strip();
    if (!model.isEmpty()) {
      lines.add("Instrument: " + model);
    }
    if (!map.info().issue().isEmpty()) {
      lines.add("Revision: " + map.info().issue());
    }
    for (Board board : map.boards()) {
      if (!board.issue().isEmpty()) {
        String name = board.title().isEmpty() ? board.id().text() : board.title();
        lines.add("%s: %s".formatted(name, board.issue()));
      }
    }
    lines.add("Digest of the map (SHA-256): " + digest);
    lines.add("Printed: " + date(printed));
    return lines;
  }

  /** The same in one line. */
  static String line(BoardMap map, String digest, Instant printed) {
    String issue = map.info().issue().isEmpty() ? "" : map.info().issue() + " · ";
    return "%s · %smap digest %s… · printed %s"
        .formatted(map.id(), issue, digest.substring(0, SHORT), date(printed));
  }
}
