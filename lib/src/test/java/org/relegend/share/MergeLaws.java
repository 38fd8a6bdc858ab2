package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.EditRefusedException;
import org.relegend.map.HazardZone;
import org.relegend.map.Keyed;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.store.TableCodec;

/** The laws of merging, told without a word of how merging is done. */
final class MergeLaws {
  private MergeLaws() {}

  static void hold(long seed, MapVersions v) {
    String at = "seed " + seed;
    MergeResult merged = Merge.of(v.base(), v.mine(), v.theirs());
    MergeResult swapped = Merge.of(v.base(), v.theirs(), v.mine());
    changedByOne(at, v.base(), v.mine(), true);
    changedByOne(at, v.base(), v.theirs(), false);
    sameFromBothSides(at, merged, swapped);
    nothingIsLost(at, v, merged, v.mine(), true);
    nothingIsLost(at, v, merged, v.theirs(), false);
    noNetsAreJoinedSilently(at, v, merged);
  }

  /**
   * What one side alone changed is taken, but that hazard zones lost or lessened are kept and asked
   * about.
   */
  private static void changedByOne(String at, BoardMap base, BoardMap changed, boolean mine) {
    MergeResult merged = mine ? Merge.of(base, changed, base) : Merge.of(base, base, changed);
    Set<String> lost = new HashSet<>();
    for (HazardZone zone : base.zones()) {
      if (!changed.zones().has(zone.id()) && changed.pictures().has(zone.picture())) {
        lost.add("zones " + zone.id());
        assertThat(merged.map().zones().has(zone.id())).as(at).isTrue();
      }
      if (!changed.pictures().has(zone.picture())) {
        lost.add("pictures " + zone.picture());
      }
      changed
          .zones()
          .find(zone.id())
          .filter(now -> isLess(zone, now))
          .ifPresent(
              now -> {
                lost.add("zones " + zone.id());
                assertThat(merged.map().zones().find(zone.id())).as(at).contains(zone);
              });
    }
    Set<String> asked = new HashSet<>();
    merged
        .clashes()
        .forEach(clash -> asked.add(clash.about().replaceFirst("( outline| and what .*)$", "")));
    assertThat(asked).as(at).isEqualTo(lost);
    ClashDecisions.Side side = mine ? ClashDecisions.Side.MINE : ClashDecisions.Side.THEIRS;
    assertThat(lost.isEmpty() ? merged.map() : decided(merged.map(), side))
        .as(at)
        .isEqualTo(changed);
  }

  /** Areas by the general-purpose geometry of the Java library. */
  private static boolean isLess(HazardZone before, HazardZone now) {
    Area left = area(before);
    left.subtract(area(now));
    return before.kind() != now.kind()
        || !before.picture().equals(now.picture())
        || !left.isEmpty();
  }

  private static Area area(HazardZone zone) {
    Path2D path = new Path2D.Double();
    zone.outline()
        .forEach(
            point -> {
              if (path.getCurrentPoint() == null) {
                path.moveTo(point.x(), point.y());
              } else {
                path.lineTo(point.x(), point.y());
              }
            });
    path.closePath();
    return new Area(path);
  }

  /** The same clashes, and the same map whichever side is then said to be right. */
  private static void sameFromBothSides(String at, MergeResult merged, MergeResult swapped) {
    Set<Set<Clash.Cell>> there = new HashSet<>();
    merged.clashes().forEach(clash -> there.add(Set.copyOf(clash.cells())));
    Set<Set<Clash.Cell>> back = new HashSet<>();
    swapped.clashes().forEach(clash -> back.add(Set.copyOf(clash.swapped().cells())));
    assertThat(back).as(at).isEqualTo(there);
    for (ClashDecisions.Side side : ClashDecisions.Side.values()) {
      ClashDecisions.Side other =
          side == ClashDecisions.Side.MINE ? ClashDecisions.Side.THEIRS : ClashDecisions.Side.MINE;
      assertThat(decided(swapped.map(), other))
          .as(at + " " + side)
          .isEqualTo(decided(merged.map(), side));
    }
  }

  static BoardMap decided(BoardMap map, ClashDecisions.Side side) {
    BoardMap result = map;
    for (Clash clash : map.clashes()) {
      try {
        result = ClashDecisions.edit(result, clash, side).applyTo(result);
      } catch (EditRefusedException refused) {
        fail("decision refused: " + refused.getMessage());
      }
    }
    return result;
  }

  /**
   * Every entry that one side added or changed is in the result as that side has it, field by
   * field, or the other side changed the same thing, or a clash holds that side's version.
   */
  private static void nothingIsLost(
      String at, MapVersions v, MergeResult merged, BoardMap side, boolean mine) {
    BoardMap decided =
        decided(merged.map(), mine ? ClashDecisions.Side.MINE : ClashDecisions.Side.THEIRS);
    pinsAreWhereThisSideHasThem(at, v.base(), side, decided, inClash(merged));
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      if (!codec.name().equals("nets") && !codec.name().equals("clashes")) {
        entriesAreThere(at, codec, v.base(), side, decided);
      }
    }
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void entriesAreThere(
      String at, TableCodec<K, V> codec, BoardMap base, BoardMap side, BoardMap decided) {
    Set<String> texts = new HashSet<>();
    // two new nets of one name are told apart by a number behind it
    codec
        .table()
        .of(decided)
        .forEach(entry -> facts(codec, entry).forEach(f -> texts.add(f.replaceAll("~\\d+", ""))));
    Set<String> ofAnyNet = new HashSet<>();
    codec
        .table()
        .of(base)
        .forEach(entry -> facts(codec, entry).forEach(f -> ofAnyNet.add(ofAny(f))));
    for (V entry : codec.table().of(side)) {
      Set<String> before = new TreeSet<>();
      codec.table().of(base).find(entry.key()).ifPresent(b -> before.addAll(facts(codec, b)));
      for (String fact : facts(codec, entry)) {
        if (!before.contains(fact) && !texts.contains(fact.replaceAll("~\\d+", ""))) {
          // a side that joined two nets says nothing new of the labels it took along
          if (!joinedAway(fact, base, side, decided) && !ofAnyNet.contains(ofAny(fact))) {
            fail(at + ": lost " + fact);
          }
        }
      }
    }
  }

  private static String ofAny(String fact) {
    return fact.replaceAll("net:[A-Z0-9~]+", "net:*");
  }

  /** What speaks of a net speaks of the net it was joined to, which its fact can't tell. */
  private static boolean joinedAway(String fact, BoardMap base, BoardMap side, BoardMap decided) {
    return Stream.concat(base.nets().stream(), side.nets().stream())
        .anyMatch(net -> !decided.nets().has(net.id()) && fact.contains(net.id().text()));
  }

  /** One fact for each field of an entry, and for each who stands for it. */
  private static <K extends Comparable<? super K>, V extends Keyed<K>> Set<String> facts(
      TableCodec<K, V> codec, V entry) {
    Set<String> facts = new TreeSet<>();
    // labels of nets are told apart by number only, so the number is no fact
    String key =
        entry instanceof Placement p ? p.picture() + " " + p.subject() : codec.keyText(entry.key());
    codec
        .json(entry)
        .fields()
        .forEach(
            (field, value) -> {
              if (field.equals("ordinal")) {
                return;
              }
              for (var one :
                  field.equals("evidence") ? FieldMerge.entries(value) : List.of(value)) {
                facts.add(codec.name() + " " + key + " " + field + " " + one.compact());
              }
            });
    return facts;
  }

  private static void pinsAreWhereThisSideHasThem(
      String at, BoardMap base, BoardMap side, BoardMap decided, Set<String> inClash) {
    Map<PinRef, Set<NetId>> before = nets(base);
    Map<PinRef, Set<NetId>> now = nets(side);
    Map<PinRef, Set<NetId>> then = nets(decided);
    now.forEach(
        (pin, on) -> {
          if (on.size() == 1 && !on.equals(before.get(pin))) {
            assertThat(then).as(at + ": " + pin + " is on a net").containsKey(pin);
            companions(side, on.iterator().next())
                .forEach(
                    other -> {
                      boolean newTogether = disjoint(before.get(pin), before.get(other));
                      boolean asked =
                          inClash.contains(pin.toString()) || inClash.contains(other.toString());
                      boolean kept =
                          !asked && now.get(other).size() == 1 && then.containsKey(other);
                      if (newTogether && kept && !then.get(pin).equals(then.get(other))) {
                        fail(
                            at
                                + ": "
                                + pin
                                + " was joined to "
                                + other
                                + ", and is not: "
                                + then.get(pin)
                                + then.get(other));
                      }
                    });
          }
        });
  }

  private static boolean disjoint(Set<NetId> a, Set<NetId> b) {
    return a == null || b == null || a.stream().noneMatch(b::contains);
  }

  private static List<PinRef> companions(BoardMap map, NetId net) {
    return map.net(net).map(Net::pins).orElse(List.of());
  }

  private static Map<PinRef, Set<NetId>> nets(BoardMap map) {
    Map<PinRef, Set<NetId>> nets = new TreeMap<>();
    for (Net net : map.nets()) {
      net.pins().forEach(pin -> nets.computeIfAbsent(pin, p -> new TreeSet<>()).add(net.id()));
    }
    return nets;
  }

  /** Two pins that both sides have on different nets are on different nets, or in a clash. */
  private static void noNetsAreJoinedSilently(String at, MapVersions v, MergeResult merged) {
    Map<PinRef, Set<NetId>> mine = nets(v.mine());
    Map<PinRef, Set<NetId>> theirs = nets(v.theirs());
    Set<String> inClash = inClash(merged);
    for (Net net : merged.map().nets()) {
      List<PinRef> pins = new ArrayList<>(net.pins());
      pins.removeIf(pin -> inClash.contains(pin.toString()));
      for (int i = 0; i < pins.size(); i++) {
        for (int j = i + 1; j < pins.size(); j++) {
          boolean apartInMine = apart(mine, pins.get(i), pins.get(j));
          boolean apartInTheirs = apart(theirs, pins.get(i), pins.get(j));
          assertThat(apartInMine && apartInTheirs)
              .as(
                  at
                      + ": "
                      + pins.get(i)
                      + " and "
                      + pins.get(j)
                      + " joined, which both hold apart")
              .isFalse();
        }
      }
    }
  }

  private static Set<String> inClash(MergeResult merged) {
    Set<String> inClash = new HashSet<>();
    for (Clash clash : merged.clashes()) {
      clash.cells().forEach(cell -> inClash.add(cell.key()));
    }
    return inClash;
  }

  private static boolean apart(Map<PinRef, Set<NetId>> nets, PinRef a, PinRef b) {
    return Optional.ofNullable(nets.get(a))
        .flatMap(on -> Optional.ofNullable(nets.get(b)).map(other -> disjoint(on, other)))
        .orElse(false);
  }
}
