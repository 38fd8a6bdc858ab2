package org.relegend.share;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Table;

/**
 * Nets about which there is nothing to merge: both sides have the same, as had the base or as it
 * had nothing of it, and none of their pins is on any other net of any version. Most are so, and
 * merging the rest alone takes a fraction of the time.
 *
 * @param rest the three versions with the other nets alone
 */
record UnchangedNets(List<Net> nets, Set<NetId> inBase, MapVersions rest) {
  static UnchangedNets of(MapVersions versions, Set<PinRef> held) {
    Set<PinRef> open = new HashSet<>(held);
    List<Net> alike = new ArrayList<>();
    Set<NetId> inBase = new HashSet<>();
    TableCursor<NetId, Net> base = new TableCursor<>(versions.base().nets());
    TableCursor<NetId, Net> mine = new TableCursor<>(versions.mine().nets());
    TableCursor<NetId, Net> theirs = new TableCursor<>(versions.theirs().nets());
    Set<NetId> candidates = new HashSet<>();
    for (NetId id = TableCursor.first(mine, theirs);
        id != null;
        id = TableCursor.first(mine, theirs)) {
      Net before = base.upTo(id);
      Net ours = mine.upTo(id);
      Net others = theirs.upTo(id);
      if (ours != null && ours.equals(others) && (before == null || before.equals(ours))) {
        alike.add(ours);
        candidates.add(id);
        if (before != null) {
          inBase.add(id);
        }
      } else {
        open(ours, open);
        open(others, open);
      }
    }
    for (Net net : versions.base().nets()) {
      if (!candidates.contains(net.id())) {
        open(net, open);
      }
    }
    openWhatIsTwice(alike, open);
    List<Net> settled =
        alike.stream().filter(net -> net.pins().stream().noneMatch(open::contains)).toList();
    Set<NetId> ids = new HashSet<>();
    settled.forEach(net -> ids.add(net.id()));
    inBase.retainAll(ids);
    return new UnchangedNets(
        settled,
        inBase,
        new MapVersions(
            without(versions.base(), ids),
            without(versions.mine(), ids),
            without(versions.theirs(), ids)));
  }

  private static void open(@Nullable Net net, Set<PinRef> open) {
    if (net != null) {
      open.addAll(net.pins());
    }
  }

  private static void openWhatIsTwice(List<Net> nets, Set<PinRef> open) {
    Set<PinRef> seen = new HashSet<>();
    for (Net net : nets) {
      for (Net.Member member : net.members()) {
        if (!seen.add(member.pin())) {
          open.add(member.pin());
        }
      }
    }
  }

  private static BoardMap without(BoardMap map, Set<NetId> ids) {
    List<Net> left = new ArrayList<>();
    map.nets()
        .forEach(
            net -> {
              if (!ids.contains(net.id())) {
                left.add(net);
              }
            });
    return map.with(MapTables.NETS, Table.of(left));
  }
}
