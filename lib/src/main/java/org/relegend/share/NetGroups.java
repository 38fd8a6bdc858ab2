package org.relegend.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/**
 * Groups pins by what three versions say of every two of them. Pins that all versions treat alike
 * are one atom, so a large net that nobody touched costs no more than a small one. Each net has an
 * anchor among its pins, which says what the net's name and potential belong to.
 */
final class NetGroups {
  /** A net as such: its index in each version, or {@link VersionNets#NONE}. */
  record Anchor(int b, int m, int t) {}

  /** Pins that are to be joined, and the nets that they make. */
  record Group(List<PinRef> pins, List<Anchor> anchors, boolean contradictory) {}

  /** The nets that become one, and the id it has unless another has it too. */
  record Line(List<Anchor> anchors, NetId id, Optional<PinRef> first, String tie) {}

  /** What a version, or all three together, say of two pins. */
  private enum Pair {
    JOINED,
    APART,
    UNSAID,
    /** Joined by one side, held apart by the other. */
    DISPUTED
  }

  private record Where(int b, int m, int t) {
    int on(int side) {
      return side == 0 ? b : side == 1 ? m : t;
    }

    /** Whether the merged map has it: as the side that changed it says. */
    boolean present() {
      boolean mine = m != VersionNets.NONE;
      boolean theirs = t != VersionNets.NONE;
      return mine == theirs || mine == (b != VersionNets.NONE) ? theirs : mine;
    }
  }

  private static final class Atom {
    private final int number;
    private final Where where;
    private final List<PinRef> pins = new ArrayList<>();
    private final List<Anchor> anchors = new ArrayList<>();

    Atom(int number, Where where) {
      this.number = number;
      this.where = where;
    }
  }

  private final VersionNets b;
  private final VersionNets m;
  private final VersionNets t;
  private final Map<Where, Atom> atoms = new LinkedHashMap<>();
  private final Set<PinRef> detached = new TreeSet<>();
  private final List<Anchor> gone = new ArrayList<>();
  private final Map<Integer, Group> byRoot = new LinkedHashMap<>();
  private final Map<PinRef, Group> byPin = new HashMap<>();
  private final Set<Integer> disputed = new HashSet<>();
  private final Set<PinRef> held;
  private final int[] parent;

  NetGroups(
      VersionNets b,
      VersionNets m,
      VersionNets t,
      Set<PinRef> pins,
      Set<PinRef> heldPins,
      Set<NetId> held) {
    this.held = heldPins;
    this.b = b;
    this.m = m;
    this.t = t;
    for (PinRef pin : pins) {
      atom(new Where(b.netOf(pin), m.netOf(pin), t.netOf(pin))).pins.add(pin);
    }
    for (Anchor anchor : anchors(held)) {
      atom(new Where(anchor.b(), anchor.m(), anchor.t())).anchors.add(anchor);
    }
    parent = new int[atoms.size()];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
    }
    joinPairs();
    disputeWhatWasSaidAnew();
    collect();
  }

  private Atom atom(Where where) {
    return atoms.computeIfAbsent(where, w -> new Atom(atoms.size(), w));
  }

  private List<Anchor> anchors(Set<NetId> held) {
    List<Anchor> anchors = new ArrayList<>();
    for (int i = 0; i < b.nets().size(); i++) {
      NetId id = b.net(i).id();
      if (!held.contains(id)) {
        anchors.add(new Anchor(i, m.index(id), t.index(id)));
      }
    }
    for (int i = 0; i < m.nets().size(); i++) {
      NetId id = m.net(i).id();
      if (b.index(id) == VersionNets.NONE) {
        int other = t.index(id);
        boolean one = other != VersionNets.NONE && isOneNet(m.net(i), t.net(other));
        anchors.add(new Anchor(VersionNets.NONE, i, one ? other : VersionNets.NONE));
        if (!one && other != VersionNets.NONE) {
          anchors.add(new Anchor(VersionNets.NONE, VersionNets.NONE, other));
        }
      }
    }
    for (int i = 0; i < t.nets().size(); i++) {
      NetId id = t.net(i).id();
      if (b.index(id) == VersionNets.NONE && m.index(id) == VersionNets.NONE) {
        anchors.add(new Anchor(VersionNets.NONE, VersionNets.NONE, i));
      }
    }
    return anchors;
  }

  /** Two new nets of one name: one net only if they have a pin in common, or no pins to tell by. */
  private static boolean isOneNet(Net mine, Net theirs) {
    return mine.members().isEmpty()
        || theirs.members().isEmpty()
        || mine.members().stream().anyMatch(member -> theirs.has(member.pin()));
  }

  private void joinPairs() {
    for (int side = 0; side < 3; side++) {
      Map<Integer, List<Atom>> byNet = new HashMap<>();
      for (Atom atom : atoms.values()) {
        if (atom.where.present() && atom.where.on(side) != VersionNets.NONE) {
          byNet.computeIfAbsent(atom.where.on(side), n -> new ArrayList<>()).add(atom);
        }
      }
      byNet.values().forEach(this::joinPairs);
    }
  }

  private void joinPairs(List<Atom> list) {
    for (int i = 0; i < list.size(); i++) {
      for (int j = i + 1; j < list.size(); j++) {
        Pair pair = merged(list.get(i).where, list.get(j).where);
        if (pair == Pair.JOINED || pair == Pair.DISPUTED) {
          parent[root(list.get(i).number)] = root(list.get(j).number);
        }
        if (pair == Pair.DISPUTED) {
          disputed.add(list.get(i).number);
        }
      }
    }
  }

  private int root(int number) {
    int at = number;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private static Pair merged(Where a, Where b) {
    Pair base = pair(a.b(), b.b());
    Pair mine = pair(a.m(), b.m());
    Pair theirs = pair(a.t(), b.t());
    if (mine == theirs || theirs == base) {
      return mine;
    }
    return mine == base ? theirs : Pair.DISPUTED;
  }

  private static Pair pair(int a, int b) {
    if (a == VersionNets.NONE || b == VersionNets.NONE) {
      return Pair.UNSAID;
    }
    return a == b ? Pair.JOINED : Pair.APART;
  }

  /** Whether this side took a pin off the net it was on, which it still has. */
  static boolean moved(VersionNets base, VersionNets side, PinRef pin) {
    int before = base.netOf(pin);
    int now = side.netOf(pin);
    if (before == VersionNets.NONE || now == VersionNets.NONE) {
      return before != now;
    }
    int same = side.index(base.net(before).id());
    return same != VersionNets.NONE && same != now;
  }

  /** One moved a pin that the other just stood for where it was. */
  private void disputeWhatWasSaidAnew() {
    for (Atom atom : atoms.values()) {
      Where w = atom.where;
      if (w.b() == VersionNets.NONE || w.m() == VersionNets.NONE || w.t() == VersionNets.NONE) {
        continue;
      }
      for (PinRef pin : atom.pins) {
        boolean mineMoved = moved(b, m, pin);
        boolean theirsMoved = moved(b, t, pin);
        if (mineMoved != theirsMoved && !member(b, pin).equals(member(mineMoved ? t : m, pin))) {
          disputed.add(atom.number);
        }
      }
    }
  }

  private static Net.Member member(VersionNets side, PinRef pin) {
    return side.on(pin).get(0).member();
  }

  private void collect() {
    Map<Integer, List<Atom>> byParent = new LinkedHashMap<>();
    for (Atom atom : atoms.values()) {
      if (atom.where.present()) {
        byParent.computeIfAbsent(root(atom.number), n -> new ArrayList<>()).add(atom);
      } else {
        detached.addAll(atom.pins);
        gone.addAll(atom.anchors);
      }
    }
    byParent.forEach(
        (root, list) -> {
          List<PinRef> pins = new ArrayList<>();
          List<Anchor> anchors = new ArrayList<>();
          list.forEach(atom -> pins.addAll(atom.pins));
          list.forEach(atom -> anchors.addAll(atom.anchors));
          pins.sort(Comparator.naturalOrder());
          if (anchors.isEmpty()) {
            anchors.addAll(revived(list));
          }
          Group group = new Group(pins, anchors, contradictory(list));
          byRoot.put(root, group);
          pins.forEach(pin -> byPin.put(pin, group));
        });
  }

  /** Both sides joined the same nets, each to another of them: then each took the other's away. */
  private List<Anchor> revived(List<Atom> list) {
    List<Anchor> revived = new ArrayList<>();
    for (Anchor anchor : gone) {
      for (Atom atom : list) {
        boolean mine = anchor.m() != VersionNets.NONE && anchor.m() == atom.where.m();
        boolean theirs = anchor.t() != VersionNets.NONE && anchor.t() == atom.where.t();
        if ((mine || theirs) && !revived.contains(anchor)) {
          revived.add(anchor);
        }
      }
    }
    gone.removeAll(revived);
    return revived;
  }

  /** Whether a pin that one side took off its net was moved by the other, or just stood for. */
  boolean saidAnew(PinRef pin) {
    if (m.netOf(pin) == VersionNets.NONE && t.netOf(pin) == VersionNets.NONE) {
      return false;
    }
    VersionNets kept = m.netOf(pin) == VersionNets.NONE ? t : m;
    int before = b.netOf(pin);
    return before == VersionNets.NONE
        || !kept.net(kept.netOf(pin)).id().equals(b.net(before).id())
        || !member(b, pin).equals(member(kept, pin));
  }

  private boolean contradictory(List<Atom> list) {
    for (int i = 0; i < list.size(); i++) {
      if (disputed.contains(list.get(i).number)) {
        return true;
      }
      for (int j = i + 1; j < list.size(); j++) {
        Pair pair = merged(list.get(i).where, list.get(j).where);
        if (pair == Pair.APART || pair == Pair.DISPUTED) {
          return true;
        }
      }
    }
    return false;
  }

  List<Group> all() {
    return List.copyOf(byRoot.values());
  }

  /** Pins that one side took off their nets. */
  Set<PinRef> detached() {
    return detached;
  }

  /** Nets that one side removed or joined to another. */
  List<Anchor> gone() {
    return gone;
  }

  /** Whether the versions contradict each other on pins of a net that one of them doesn't have. */
  boolean disputed(Anchor gone) {
    for (VersionNets side : List.of(b, m, t)) {
      int index = side == b ? gone.b() : side == m ? gone.m() : gone.t();
      if (index != VersionNets.NONE
          && (gone.m() != VersionNets.NONE || gone.t() != VersionNets.NONE)) {
        for (PinRef pin : side.net(index).pins()) {
          Group group = byPin.get(pin);
          if (held.contains(pin)
              || detached.contains(pin) && saidAnew(pin)
              || group != null && group.contradictory()) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The net that has most of the pins of one that is gone; null where it has none left. */
  @Nullable Anchor heir(Anchor gone) {
    Map<Anchor, Integer> pins = new HashMap<>();
    for (VersionNets side : List.of(b, m, t)) {
      int index = side == b ? gone.b() : side == m ? gone.m() : gone.t();
      if (index == VersionNets.NONE) {
        continue;
      }
      for (PinRef pin : side.net(index).pins()) {
        Group group = byPin.get(pin);
        if (group != null && !group.contradictory() && !group.anchors().isEmpty()) {
          pins.merge(group.anchors().get(0), 1, Integer::sum);
        }
      }
    }
    return pins.entrySet().stream()
        .max(
            Map.Entry.<Anchor, Integer>comparingByValue()
                .thenComparing(entry -> id(entry.getKey()), Comparator.reverseOrder()))
        .map(Map.Entry::getKey)
        .orElse(null);
  }

  /** The nets of the merged map, in an order that doesn't depend on which side is which. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (Group group : byRoot.values()) {
      if (group.contradictory()) {
        group.anchors().forEach(anchor -> lines.add(line(List.of(anchor), Optional.empty())));
      } else if (!group.anchors().isEmpty()) {
        lines.add(line(group.anchors(), group.pins().stream().findFirst()));
      }
    }
    gone.stream()
        .filter(this::disputed)
        .forEach(anchor -> lines.add(line(List.of(anchor), Optional.empty())));
    lines.sort(
        Comparator.comparing(Line::id)
            .thenComparing(line -> line.first().isEmpty())
            .thenComparing(line -> line.first().map(PinRef::toString).orElse(""))
            .thenComparing(Line::tie));
    return lines;
  }

  private Line line(List<Anchor> anchors, Optional<PinRef> first) {
    Set<NetId> mine = new TreeSet<>();
    Set<NetId> theirs = new TreeSet<>();
    StringBuilder tie = new StringBuilder();
    for (Anchor anchor : anchors) {
      if (anchor.m() != VersionNets.NONE) {
        mine.add(m.net(anchor.m()).id());
      }
      if (anchor.t() != VersionNets.NONE) {
        theirs.add(t.net(anchor.t()).id());
      }
      Net net = anchor.m() != VersionNets.NONE ? m.net(anchor.m()) : net(anchor);
      tie.append(net.name()).append(net.pins());
    }
    Set<NetId> both = new TreeSet<>(mine);
    both.retainAll(theirs);
    Set<NetId> any = new TreeSet<>(mine);
    any.addAll(theirs);
    NetId id = (both.isEmpty() ? any : both).iterator().next();
    return new Line(anchors, id, first, tie.toString());
  }

  private Net net(Anchor anchor) {
    return anchor.t() != VersionNets.NONE
        ? t.net(anchor.t())
        : anchor.m() != VersionNets.NONE ? m.net(anchor.m()) : b.net(anchor.b());
  }

  private NetId id(Anchor anchor) {
    return net(anchor).id();
  }
}
