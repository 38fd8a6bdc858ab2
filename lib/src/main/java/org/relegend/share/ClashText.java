package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.MapTables;
import org.relegend.map.NameRules;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/** A clash in the technician's words. */
public final class ClashText {
  private static final int LONGEST = 160;
  private static final int MOST_CELLS = 4;

  private ClashText() {}

  /** What it is about: "value of R116", "node of R107.1". */
  public static String about(BoardMap map, Clash clash) {
    Clash.Cell first = clash.cells().get(0);
    String name = name(map, first);
    long entries = clash.cells().stream().map(Clash.Cell::key).distinct().count();
    String more = entries > 1 ? " and " + (entries - 1) + " more" : "";
    if (first.table().equals(PinCells.TABLE)) {
      return "node of " + name + more;
    }
    if (clash.cells().stream()
        .anyMatch(cell -> cell.field().equals("x") || cell.field().equals("y"))) {
      return "place of " + name;
    }
    return first.field().isEmpty()
        ? "whether " + name + " is there" + more
        : first.field() + " of " + name + more;
  }

  /** One side's version, in one line. */
  public static String version(BoardMap map, Clash clash, ClashDecisions.Side side) {
    List<String> lines = new ArrayList<>();
    for (Clash.Cell cell : clash.cells()) {
      if (lines.size() == MOST_CELLS) {
        lines.add("and " + (clash.cells().size() - MOST_CELLS) + " more");
        break;
      }
      String value = value(map, cell, side.of(cell));
      boolean alone = clash.cells().size() == 1;
      String of = cell.field().isEmpty() ? name(map, cell) : cell.field();
      lines.add(alone ? value : of + " " + value);
    }
    String text = String.join(", ", lines);
    return NameRules.spelledOut(text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text);
  }

  private static String name(BoardMap map, Clash.Cell cell) {
    try {
      return switch (cell.table()) {
        case Merge.INFO -> "the title page";
        case "parts" -> map.nameOf(new PartId(cell.key()));
        case "nets" -> map.nameOf(Subject.of(new NetId(cell.key())));
        case PinCells.TABLE -> map.nameOf(Subject.of(PinRef.parse(cell.key())));
        case "placements" -> {
          var key = TableCodec.of(MapTables.PLACEMENTS).key(cell.key());
          yield map.nameOf(key.subject()) + " on " + key.picture();
        }
        default -> TableCodec.named(cell.table()).key(cell.key()).toString();
      };
    } catch (IllegalArgumentException | java.util.NoSuchElementException unknown) {
      return NameRules.printable(cell.table() + " " + cell.key());
    }
  }

  private static String value(BoardMap map, Clash.Cell cell, String version) {
    if (version.isEmpty()) {
      return cell.table().equals(PinCells.TABLE)
          ? "on no node"
          : cell.field().isEmpty() ? "not there" : "not given";
    }
    try {
      if (cell.table().equals(PinCells.TABLE)) {
        List<String> nets = new ArrayList<>();
        for (PinCells.On on : PinCells.parse(PinRef.parse(cell.key()), version)) {
          nets.add("on " + map.nameOf(Subject.of(on.net())) + by(version));
        }
        return String.join(", ", nets);
      }
      Json json = Json.parse(version);
      if (cell.field().equals("evidence")) {
        return by(version).strip();
      }
      if (cell.field().isEmpty()) {
        return "there";
      }
      return json instanceof Json.Text text ? text.value() : version;
    } catch (IllegalArgumentException unreadable) {
      return NameRules.printable(version);
    }
  }

  /** Who says so: " (seen by Kim, 2026-03-04)" for each who stands for it. */
  private static String by(String version) {
    String stated = Attribution.text(Attribution.in(Json.parse(version)));
    return stated.isEmpty() ? "" : " (" + stated + ")";
  }

  /** What a clash is about, where that is one thing of the board. */
  static Optional<Subject> subject(Clash clash) {
    Clash.Cell first = clash.cells().get(0);
    try {
      return switch (first.table()) {
        case "parts" -> Optional.of(Subject.of(new PartId(first.key())));
        case "nets" -> Optional.of(Subject.of(new NetId(first.key())));
        case PinCells.TABLE -> Optional.of(Subject.of(PinRef.parse(first.key())));
        case "placements" ->
            Optional.of(TableCodec.of(MapTables.PLACEMENTS).key(first.key()).subject());
        default -> Optional.empty();
      };
    } catch (IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }
}
