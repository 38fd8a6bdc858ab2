package org.relegend.share;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.Clash;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.EntryRef;
import org.relegend.map.Keyed;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/**
 * Makes a decision an edit: it is told from the map as it is now, so that what was changed since
 * the merge stays, and can be undone as any other.
 */
public final class ClashDecisions {
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

  private ClashDecisions(BoardMap map, Side side) {
    this.map = map;
    this.side = side;
  }

  /**
   * The edit that puts one side's version in force and drops the clash.
   *
   * @throws EditRefusedException where a version in the clash can't be read
   */
  public static EditGroup edit(BoardMap map, Clash clash, Side side) throws EditRefusedException {
    ClashDecisions decisions = new ClashDecisions(map, side);
    try {
      decisions.decide(clash);
    } catch (IllegalArgumentException | java.util.NoSuchElementException unfit) {
      throw new EditRefusedException(
          "This clash can't be decided, since its versions can't be read: " + unfit.getMessage());
    }
    List<Edit> steps = new ArrayList<>(decisions.removals);
    steps.addAll(decisions.puts);
    steps.add(MapTables.CLASHES.remove(clash.key()));
    String title = "Decide " + ClashText.about(map, clash);
    return new EditGroup(title.length() > 110 ? title.substring(0, 110) : title, steps);
  }

  private void decide(Clash clash) {
    Map<EntryRef, List<Clash.Cell>> byEntry = new LinkedHashMap<>();
    for (Clash.Cell cell : clash.cells()) {
      byEntry
          .computeIfAbsent(new EntryRef(cell.table(), cell.key()), r -> new ArrayList<>())
          .add(cell);
    }
    infos(byEntry);
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      byEntry.forEach(
          (ref, cells) -> {
            if (ref.table().equals(codec.name())) {
              decide(codec, ref, cells);
            }
          });
      if (codec.name().equals(MapTables.NETS.word())) {
        pins(byEntry);
      }
    }
    byEntry.keySet().stream()
        .filter(ref -> !ref.table().equals(Merge.INFO) && !ref.table().equals(PinCells.TABLE))
        .forEach(ref -> TableCodec.named(ref.table()));
  }

  private void infos(Map<EntryRef, List<Clash.Cell>> byEntry) {
    List<Clash.Cell> cells = byEntry.get(new EntryRef(Merge.INFO, ""));
    if (cells != null) {
      puts.add(new ChangeInfo(TableCodec.info(changed(TableCodec.info(map.info()), cells))));
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
      TableCodec<K, V> codec, EntryRef ref, List<Clash.Cell> cells) {
    K key = codec.key(ref.key());
    V now = codec.table().of(map).find(key).orElse(null);
    boolean whole = cells.get(0).field().isEmpty();
    if (whole && side.of(cells.get(0)).isEmpty()) {
      if (now != null) {
        removals.add(0, codec.table().remove(key));
      }
    } else if (whole) {
      V entry = codec.entry(Json.parse(side.of(cells.get(0))));
      if (now == null || !(entry instanceof Net)) { // a net's pins are cells of their own
        puts.addAll(codec.table().exactly(entry));
      }
    } else if (now != null) {
      V entry = codec.entry(changed(codec.json(now), cells));
      puts.addAll(codec.table().exactly(entry));
    }
  }

  /** Moves pins to the nets of the chosen version; a net that isn't there is made. */
  private void pins(Map<EntryRef, List<Clash.Cell>> byEntry) {
    Map<NetId, Net> changed = new TreeMap<>();
    for (Net net : map.nets()) {
      changed.put(net.id(), net);
    }
    MapTables.NETS.putBy(puts).forEach(net -> changed.put(net.id(), net));
    for (Map.Entry<EntryRef, List<Clash.Cell>> entry : byEntry.entrySet()) {
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
    List<NetId> gone = MapTables.NETS.removedBy(removals);
    changed.values().stream()
        .filter(net -> map.net(net.id()).filter(net::equals).isEmpty())
        .filter(net -> !gone.contains(net.id()) || !net.members().isEmpty())
        .forEach(net -> puts.add(MapTables.NETS.put(net)));
  }
}
