package org.relegend.share;

import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.EntryRef;
import org.relegend.map.Keyed;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.store.TableCodec;

/**
 * What one side removed and the other worked on: changed it, or said something new of it; and
 * pictures with a hazard zone, which don't go without a word. All that is said of such a thing is
 * decided together, as one without the other would speak of nothing.
 */
final class RemovalConflict {
  private final MapVersions v;
  private final Set<EntryRef> contested = new HashSet<>();

  private final Set<EntryRef> removedByOne = new HashSet<>();

  private RemovalConflict(MapVersions versions) {
    v = versions;
  }

  static RemovalConflict of(MapVersions versions) {
    RemovalConflict contest = new RemovalConflict(versions);
    contest.find(versions.mine(), versions.theirs());
    contest.find(versions.theirs(), versions.mine());
    return contest;
  }

  /** Whether one of the two removed it, contested or not. */
  boolean isRemoved(EntryRef ref) {
    return removedByOne.contains(ref);
  }

  boolean has(EntryRef ref) {
    return contested.contains(ref);
  }

  Set<EntryRef> all() {
    return contested;
  }

  /** Nets that are contested themselves. */
  Set<NetId> nets() {
    Set<NetId> nets = new TreeSet<>();
    for (EntryRef ref : contested) {
      if (ref.table().equals("nets")) {
        nets.add(new NetId(ref.key()));
      }
    }
    return nets;
  }

  /** Pins of contested parts, and pins on contested nets. */
  Set<PinRef> pins() {
    Set<PinRef> pins = new TreeSet<>();
    if (contested.isEmpty()) {
      return pins;
    }
    for (BoardMap map : java.util.List.of(v.base(), v.mine(), v.theirs())) {
      for (Net net : map.nets()) {
        boolean whole = has(EntryRef.to(net.id()));
        for (PinRef pin : net.pins()) {
          boolean partGone = isRemoved(EntryRef.to(pin.part())) && !has(EntryRef.to(pin.part()));
          if (!partGone && (whole || has(EntryRef.to(pin.part())))) {
            pins.add(pin);
          }
        }
      }
    }
    return pins;
  }

  private void find(BoardMap without, BoardMap with) {
    Set<EntryRef> removed = removed(without, with);
    if (removed.isEmpty()) {
      return;
    }
    removedByOne.addAll(removed);
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      findSaid(codec, with, removed);
    }
    with.zones().forEach(zone -> contest(EntryRef.to(zone.picture()), removed));
    for (Net net : with.nets()) {
      Net before = v.base().net(net.id()).orElseGet(() -> Net.named(net.id()));
      for (Net.Member member : net.members()) {
        if (!before.member(member.pin()).filter(member::equals).isPresent()) {
          contest(EntryRef.to(member.pin().part()), removed);
          contest(EntryRef.to(net.id()), removed);
        }
      }
    }
  }

  private void contest(EntryRef ref, Set<EntryRef> removed) {
    if (removed.contains(ref)) {
      contested.add(ref);
    }
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> void findSaid(
      TableCodec<K, V> codec, BoardMap with, Set<EntryRef> removed) {
    for (V entry : codec.table().of(with)) {
      V before = codec.table().of(v.base()).find(entry.key()).orElse(null);
      if (!same(before, entry)) {
        contest(new EntryRef(codec.name(), codec.keyText(entry.key())), removed);
        codec.table().references(entry).forEach(ref -> contest(ref, removed));
      }
    }
  }

  /** Members of nets are looked at pin by pin. */
  private static boolean same(@org.jspecify.annotations.Nullable Object a, Object b) {
    return a instanceof Net x && b instanceof Net y
        ? x.withMembers(y.members()).equals(y)
        : Objects.equals(a, b);
  }

  private Set<EntryRef> removed(BoardMap without, BoardMap with) {
    Set<EntryRef> removed = new HashSet<>();
    for (Part part : v.base().parts()) {
      PartId id = part.id();
      if (!without.parts().has(id) && with.parts().has(id)) {
        removed.add(EntryRef.to(id));
      }
    }
    v.base()
        .pictures()
        .forEach(
            picture -> {
              PictureId id = picture.id();
              if (!without.pictures().has(id) && with.pictures().has(id)) {
                removed.add(EntryRef.to(id));
              }
            });
    Set<PinRef> onNets = null;
    for (Net net : v.base().nets()) {
      if (!without.nets().has(net.id()) && with.nets().has(net.id())) {
        if (onNets == null) {
          onNets = pinsOnNets(without);
        }
        if (net.pins().stream().noneMatch(onNets::contains)) {
          removed.add(EntryRef.to(net.id()));
        }
      }
    }
    return removed;
  }

  private static Set<PinRef> pinsOnNets(BoardMap map) {
    Set<PinRef> pins = new HashSet<>();
    map.nets().forEach(net -> pins.addAll(net.pins()));
    return pins;
  }
}
