package org.relegend.share;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.Clash;
import org.relegend.map.ClashEdits;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Keyed;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.store.Json;
import org.relegend.store.Shelf;

/**
 * Makes a decision an edit: it is told from the map as it is now, so that what was changed since
 * the merge stays, and can be undone as any other.
 */
public final class Decisions {
  /** Whose version is to hold. */
  public enum Side {
    MINE,
    THEIRS;

    String of(Clash.Cell cell) {
      return this == MINE ? cell.mine() : cell.theirs();
    }
  }

  private final BoardMap map;
  private final Side side;
  private final List<Edit> removals = new ArrayList<>();
  private final List<Edit> puts = new ArrayList<>();

  private Decisions(BoardMap map, Side side) {
    this.map = map;
    this.side = side;
  }

  /**
   * The edit that puts one side's version in force and drops the clash.
   *
   * @throws EditRefusedException where a version in the clash can't be read
   */
  public static EditGroup edit(BoardMap map, Clash clash, Side side) throws EditRefusedException {
    Decisions decisions = new Decisions(map, side);
    try {
      decisions.decide(clash);
    } catch (IllegalArgumentException | java.util.NoSuchElementException unfit) {
      throw new EditRefusedException(
          "This clash can't be decided, since its versions can't be read: " + unfit.getMessage());
    }
    List<Edit> steps = new ArrayList<>(decisions.removals);
    steps.addAll(decisions.puts);
    steps.add(new ClashEdits.RemoveClash(clash.key()));
    String title = "Decide " + ClashText.about(map, clash);
    return new EditGroup(title.length() > 110 ? title.substring(0, 110) : title, steps);
  }

  private void decide(Clash clash) {
    Map<Ref, List<Clash.Cell>> byEntry = new LinkedHashMap<>();
    for (Clash.Cell cell : clash.cells()) {
      byEntry.computeIfAbsent(new Ref(cell.table(), cell.key()), r -> new ArrayList<>()).add(cell);
    }
    infos(byEntry);
    for (Rule<?, ?> rule : Rules.ALL) {
      byEntry.forEach(
          (ref, cells) -> {
            if (ref.table().equals(rule.table())) {
              decide(rule, ref, cells);
            }
          });
      if (rule.table().equals(Rules.NETS.table())) {
        pins(byEntry);
      }
    }
    byEntry.keySet().stream()
        .filter(ref -> !ref.table().equals(Merge.INFO) && !ref.table().equals(PinCells.TABLE))
        .forEach(ref -> Rules.named(ref.table()));
  }

  private void infos(Map<Ref, List<Clash.Cell>> byEntry) {
    List<Clash.Cell> cells = byEntry.get(new Ref(Merge.INFO, ""));
    if (cells != null) {
      puts.add(new ChangeInfo(Shelf.info(changed(Shelf.info(map.info()), cells))));
    }
  }

  private Json.Obj changed(Json.Obj entry, List<Clash.Cell> cells) {
    Map<String, Json> fields = new LinkedHashMap<>(entry.fields());
    for (Clash.Cell cell : cells) {
      String version = side.of(cell);
      if (version.isEmpty()) {
        fields.remove(cell.field());
      } else {
        fields.put(cell.field(), Json.parse(version));
      }
    }
    return new Json.Obj(fields);
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> void decide(
      Rule<K, V> rule, Ref ref, List<Clash.Cell> cells) {
    K key = rule.shelf().key(ref.key());
    V now = rule.of(map).find(key).orElse(null);
    boolean whole = cells.get(0).field().isEmpty();
    if (whole && side.of(cells.get(0)).isEmpty()) {
      if (now != null) {
        removals.add(0, EntryEdits.removing(now));
      }
    } else if (whole) {
      V entry = rule.shelf().entry(Json.parse(side.of(cells.get(0))));
      if (now == null || !(entry instanceof Net)) { // a net's pins are cells of their own
        puts.addAll(EntryEdits.putting(entry));
      }
    } else if (now != null) {
      V entry = rule.shelf().entry(changed(rule.json(now), cells));
      puts.addAll(EntryEdits.putting(entry));
    }
  }

  /** Moves pins to the nets of the chosen version; a net that isn't there is made. */
  private void pins(Map<Ref, List<Clash.Cell>> byEntry) {
    Map<NetId, Net> changed = new TreeMap<>();
    for (Net net : map.nets()) {
      changed.put(net.id(), net);
    }
    for (Edit put : puts) {
      if (put instanceof NetEdits.PutNet p) {
        changed.put(p.net().id(), p.net());
      }
    }
    for (Map.Entry<Ref, List<Clash.Cell>> entry : byEntry.entrySet()) {
      if (entry.getKey().table().equals(PinCells.TABLE)) {
        PinRef pin = PinRef.parse(entry.getKey().key());
        for (Map.Entry<NetId, Net> net : changed.entrySet()) {
          if (net.getValue().has(pin)) {
            net.setValue(net.getValue().without(pin));
          }
        }
        for (PinCells.On on : PinCells.parse(pin, side.of(entry.getValue().get(0)))) {
          changed.put(
              on.net(),
              changed.getOrDefault(on.net(), Net.named(on.net())).withMember(on.member()));
        }
      }
    }
    List<NetId> gone =
        removals.stream()
            .filter(NetEdits.RemoveNet.class::isInstance)
            .map(edit -> ((NetEdits.RemoveNet) edit).net())
            .toList();
    changed.values().stream()
        .filter(net -> map.net(net.id()).filter(net::equals).isEmpty())
        .filter(net -> !gone.contains(net.id()) || !net.members().isEmpty())
        .forEach(net -> puts.add(new NetEdits.PutNet(net)));
  }
}
