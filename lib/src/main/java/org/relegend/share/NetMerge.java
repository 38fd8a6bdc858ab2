package org.relegend.share;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Clash;
import org.relegend.map.IdRenames;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Table;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/**
 * Three versions of what is joined. Nets are compared by their pins: for every two pins each
 * version says that they are joined, that they are apart, or nothing, where one of them is on no
 * net; that is merged as any other value. Pins that are to be joined form groups; a group in which
 * two pins are to be apart contradicts itself, and both versions of it are kept. So nets that
 * either side held apart are never joined without a word.
 */
final class NetMerge {
  /**
   * What comes of it.
   *
   * @param nets the three versions of the nets under their merged ids, without members
   * @param members who is on which net
   * @param mine the new ids of my nets
   * @param clashes groups of pins on which the two contradict each other
   * @param absorbed what was said of nets that the other side joined to others
   * @param stays nets that one side doesn't have any more, and that something is on all the same
   * @param fixed clashes of the pins that were not to be merged, by pin
   */
  record Result(
      MapVersions nets,
      Map<NetId, List<Net.Member>> members,
      IdRenames base,
      IdRenames mine,
      IdRenames theirs,
      List<List<Clash.Cell>> clashes,
      List<Absorbed> absorbed,
      Set<NetId> stays,
      Map<PinRef, Clash.Cell> fixed) {}

  /** A field that one side changed of a net that the other joined to another. */
  record Absorbed(NetId into, String field, Json value, boolean theirs) {}

  private final MapVersions versions;
  private final VersionNets b;
  private final VersionNets m;
  private final VersionNets t;
  private final Set<NetId> heldNets;
  private final Set<PinRef> held = new TreeSet<>();
  private final UnchangedNets unchanged;
  private final Set<PinRef> free = new LinkedHashSet<>();
  private final NetGroups groups;
  private final IdRenames renamesB = new IdRenames();
  private final IdRenames renamesM = new IdRenames();
  private final IdRenames renamesT = new IdRenames();
  private final Map<NetId, TreeMap<PinRef, Net.Member>> members = new HashMap<>();
  private final Map<NetGroups.Anchor, NetId> ids = new LinkedHashMap<>();
  private final List<List<Clash.Cell>> clashes = new ArrayList<>();
  private final Set<NetId> stays = new TreeSet<>();
  private final List<Absorbed> absorbed = new ArrayList<>();
  private final Map<PinRef, Clash.Cell> fixed = new TreeMap<>();

  private NetMerge(MapVersions versions, Set<PinRef> heldPins, Set<NetId> heldNets) {
    this.versions = versions;
    this.heldNets = heldNets;
    unchanged = UnchangedNets.of(versions, heldPins);
    b = new VersionNets(unchanged.rest().base());
    m = new VersionNets(unchanged.rest().mine());
    t = new VersionNets(unchanged.rest().theirs());
    held.addAll(heldPins);
    for (VersionNets side : List.of(b, m, t)) {
      held.addAll(side.twice());
      free.addAll(side.pins());
    }
    free.removeAll(held);
    groups = new NetGroups(b, m, t, free, held, heldNets);
  }

  /**
   * Merges the nets.
   *
   * @param heldPins pins that stay as mine has them, with theirs kept beside
   * @param heldNets nets that one side removed and the other changed
   */
  static Result of(MapVersions versions, Set<PinRef> heldPins, Set<NetId> heldNets) {
    NetMerge merge = new NetMerge(versions, heldPins, heldNets);
    return merge.result(heldPins);
  }

  private Result result(Set<PinRef> heldPins) {
    nameNets();
    for (NetGroups.Group group : groups.all()) {
      if (group.contradictory()) {
        keepMine(group);
      } else {
        join(group);
      }
    }
    groups.detached().forEach(this::detach);
    held.forEach(pin -> hold(pin, heldPins.contains(pin)));
    Map<NetId, List<Net.Member>> lists = new HashMap<>();
    members.forEach((net, byPin) -> lists.put(net, List.copyOf(byPin.values())));
    unchanged.nets().forEach(net -> lists.put(net.id(), net.members()));
    return new Result(
        new MapVersions(
            versions.base().with(MapTables.NETS, bare(b, renamesB, unchanged.inBase())),
            versions.mine().with(MapTables.NETS, bare(m, renamesM, known(unchanged.nets()))),
            versions.theirs().with(MapTables.NETS, bare(t, renamesT, known(unchanged.nets())))),
        lists,
        renamesB,
        renamesM,
        renamesT,
        clashes,
        absorbed,
        stays,
        fixed);
  }

  /** The nets of one version under their new ids. Of those that became one the first stands. */
  private Table<NetId, Net> bare(VersionNets side, IdRenames renames, Set<NetId> alike) {
    List<Net> all = new ArrayList<>(); // in order but for the few others at the end
    for (Net net : unchanged.nets()) {
      if (alike.contains(net.id())) {
        all.add(net.withMembers(List.of()));
      }
    }
    Map<NetId, Net> nets = new TreeMap<>();
    for (Net net : side.nets()) {
      NetId id = renames.of(net.id());
      Net named = new Net(id, net.name(), net.channel(), net.potential(), List.of(), net.note());
      if (id.equals(net.id())) {
        nets.put(id, named);
      } else {
        nets.putIfAbsent(id, named);
      }
    }
    all.addAll(nets.values());
    return Table.of(all);
  }

  private static Set<NetId> known(List<Net> nets) {
    Set<NetId> ids = new HashSet<>();
    nets.forEach(net -> ids.add(net.id()));
    return ids;
  }

  private void nameNets() {
    Set<NetId> taken = new TreeSet<>(heldNets);
    Set<NetId> known = new TreeSet<>();
    for (VersionNets side : List.of(b, m, t)) {
      side.nets().forEach(net -> known.add(net.id()));
    }
    known.addAll(known(unchanged.nets()));
    for (NetGroups.Line line : groups.lines()) {
      NetId id = line.id();
      for (int number = 2; taken.contains(id) || number > 2 && known.contains(id); number++) {
        id = new NetId(line.id().text() + "~" + number);
      }
      taken.add(id);
      for (NetGroups.Anchor anchor : line.anchors()) {
        ids.put(anchor, id);
        rename(anchor, id);
        boolean removedByOne = (anchor.m() == VersionNets.NONE) != (anchor.t() == VersionNets.NONE);
        if (anchor.b() != VersionNets.NONE && removedByOne) {
          stays.add(id);
        }
      }
    }
    for (NetGroups.Anchor gone : groups.gone()) {
      if (ids.containsKey(gone)) {
        continue;
      }
      NetGroups.Anchor heir = groups.heir(gone);
      NetId id = heir == null ? null : ids.get(heir);
      if (id != null) {
        rename(gone, id);
        absorb(gone, id);
      }
    }
  }

  private void absorb(NetGroups.Anchor gone, NetId into) {
    boolean theirs = gone.m() == VersionNets.NONE;
    int index = theirs ? gone.t() : gone.m();
    if (gone.b() == VersionNets.NONE || index == VersionNets.NONE) {
      return;
    }
    Map<String, Json> before =
        TableCodec.of(MapTables.NETS).json(b.net(gone.b()).withMembers(List.of())).fields();
    Net net = (theirs ? t : m).net(index).withMembers(List.of());
    TableCodec.of(MapTables.NETS)
        .json(net)
        .fields()
        .forEach(
            (field, value) -> {
              if (!value.equals(before.get(field))) {
                absorbed.add(new Absorbed(into, field, value, theirs));
              }
            });
  }

  /** A net of the base is renamed everywhere: also a side without it may still speak of it. */
  private void rename(NetGroups.Anchor anchor, NetId to) {
    if (anchor.b() != VersionNets.NONE) {
      NetId known = b.net(anchor.b()).id();
      List.of(renamesB, renamesM, renamesT).forEach(renames -> renames.put(known, to));
      return;
    }
    if (anchor.m() != VersionNets.NONE) {
      renamesM.put(m.net(anchor.m()).id(), to);
    }
    if (anchor.t() != VersionNets.NONE) {
      renamesT.put(t.net(anchor.t()).id(), to);
    }
  }

  private void join(NetGroups.Group group) {
    NetId id = group.anchors().isEmpty() ? null : ids.get(group.anchors().get(0));
    for (PinRef pin : group.pins()) {
      List<PinCells.On> mine = on(m, pin, renamesM);
      List<PinCells.On> theirs = on(t, pin, renamesT);
      NetId to = id != null ? id : mine.isEmpty() ? theirs.get(0).net() : mine.get(0).net();
      put(to, together(pin, to, mine, theirs));
    }
  }

  /** The evidence of those who say that the pin is on this net. */
  private Net.Member together(
      PinRef pin, NetId to, List<PinCells.On> mine, List<PinCells.On> theirs) {
    Net.Member ours = member(mine, to);
    Net.Member others = member(theirs, to);
    if (ours != null && others != null) {
      Net.Member before = member(on(b, pin, renamesB), to);
      return Evidence3.merged(before, ours, others);
    }
    if (ours != null) {
      return ours;
    }
    if (others != null) {
      return others;
    }
    return (mine.isEmpty() ? theirs : mine).get(0).member();
  }

  private static Net.@Nullable Member member(List<PinCells.On> on, NetId net) {
    for (PinCells.On one : on) {
      if (one.net().equals(net)) {
        return one.member();
      }
    }
    return null;
  }

  private void put(NetId net, Net.Member member) {
    members.computeIfAbsent(net, id -> new TreeMap<>()).put(member.pin(), member);
  }

  private static List<PinCells.On> on(VersionNets side, PinRef pin, IdRenames renames) {
    List<PinCells.On> found = new ArrayList<>();
    for (PinCells.On on : side.on(pin)) {
      found.add(new PinCells.On(renames.of(on.net()), on.member()));
    }
    return found;
  }

  private void keepMine(NetGroups.Group group) {
    List<Clash.Cell> cells = new ArrayList<>();
    for (PinRef pin : group.pins()) {
      keepMine(pin, cells);
    }
    if (!cells.isEmpty()) {
      clashes.add(cells);
    }
  }

  private void keepMine(PinRef pin, Collection<Clash.Cell> cells) {
    List<PinCells.On> mine = on(m, pin, renamesM);
    List<PinCells.On> theirs = on(t, pin, renamesT);
    if (mine.size() == 1 && theirs.size() == 1 && mine.get(0).net().equals(theirs.get(0).net())) {
      put(mine.get(0).net(), together(pin, mine.get(0).net(), mine, theirs));
      return;
    }
    mine.forEach(on -> put(on.net(), on.member()));
    String ours = PinCells.text(mine);
    String others = PinCells.text(theirs);
    if (!ours.equals(others)) {
      cells.add(new Clash.Cell(PinCells.TABLE, pin.toString(), "", ours, others));
    }
  }

  /** A pin that one side took off its net: a clash where the other stands for it anew. */
  private void detach(PinRef pin) {
    if (groups.saidAnew(pin)) {
      List<Clash.Cell> cells = new ArrayList<>();
      keepMine(pin, cells);
      if (!cells.isEmpty()) {
        clashes.add(cells);
      }
    }
  }

  private void hold(PinRef pin, boolean asMine) {
    List<PinCells.On> base = on(b, pin, renamesB);
    List<PinCells.On> mine = on(m, pin, renamesM);
    List<PinCells.On> theirs = on(t, pin, renamesT);
    if (!asMine && mine.equals(base)) {
      theirs.forEach(on -> put(on.net(), on.member()));
    } else {
      mine.forEach(on -> put(on.net(), on.member()));
      boolean differs = !mine.equals(theirs) && (asMine || !theirs.equals(base));
      if (differs) {
        fixed.put(
            pin,
            new Clash.Cell(
                PinCells.TABLE, pin.toString(), "", PinCells.text(mine), PinCells.text(theirs)));
      }
    }
  }

  /** Three versions of who stands for one pin on one net. */
  private static final class Evidence3 {
    static Net.Member merged(Net.@Nullable Member base, Net.Member mine, Net.Member theirs) {
      if (mine.equals(theirs) || theirs.equals(base)) {
        return mine;
      }
      if (mine.equals(base)) {
        return theirs;
      }
      List<Json> union =
          FieldMerge.union(
              base == null ? List.of() : attestations(base),
              attestations(mine),
              attestations(theirs));
      Json member = Json.object().put("net", "n").put("evidence", union);
      return PinCells.parse(mine.pin(), Json.array(List.of(member)).compact()).get(0).member();
    }

    private static List<Json> attestations(Net.Member member) {
      Json cell = Json.parse(PinCells.text(List.of(new PinCells.On(new NetId("n"), member))));
      return FieldMerge.entries(
          ((Json.Obj) FieldMerge.entries(cell).get(0)).fields().get("evidence"));
    }
  }
}
