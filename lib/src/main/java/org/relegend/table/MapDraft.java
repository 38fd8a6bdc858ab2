package org.relegend.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * The parts and nets of a map while tables are read into them. Questions that have no answer throw
 * an IllegalArgumentException whose message says what was expected.
 */
final class MapDraft {
  /** The board of parts whose board nobody named, in a map without boards. */
  private static final BoardId MAIN = new BoardId("main");

  private final BoardMap map;
  private final Map<PartId, PartDraft> parts = new LinkedHashMap<>();
  private final Map<Designator, List<PartDraft>> byDesignator = new HashMap<>();
  private final Map<NetId, NetDraft> nets = new LinkedHashMap<>();
  private final Map<String, List<NetDraft>> byName = new HashMap<>();
  private final Map<PinRef, NetDraft> netOf = new HashMap<>();

  MapDraft(BoardMap map) {
    this.map = map;
    map.parts().forEach(part -> add(PartDraft.known(part)));
    for (Net net : map.nets()) {
      NetDraft draft = NetDraft.known(net);
      add(draft);
      net.members().forEach(member -> netOf.putIfAbsent(member.pin(), draft));
    }
  }

  BoardMap map() {
    return map;
  }

  Collection<PartDraft> parts() {
    return parts.values();
  }

  Collection<NetDraft> nets() {
    return nets.values();
  }

  private void add(PartDraft part) {
    parts.put(part.id(), part);
    byDesignator.computeIfAbsent(part.designator(), d -> new ArrayList<>(1)).add(part);
  }

  private void add(NetDraft net) {
    nets.put(net.id(), net);
    byName.computeIfAbsent(net.name(), n -> new ArrayList<>(1)).add(net);
  }

  /** The part that is so called, if there is one. */
  Optional<PartDraft> find(PartName name) {
    List<PartDraft> called =
        byDesignator.getOrDefault(name.designator(), List.of()).stream()
            .filter(part -> name.board().isEmpty() || name.board().get().equals(part.board()))
            .toList();
    if (called.size() > 1) {
      String boards =
          called.stream().map(part -> part.board().text()).collect(Collectors.joining(", "));
      throw new IllegalArgumentException(
          "there are %d parts %s, on board %s: write which, as %s:%s"
              .formatted(
                  called.size(),
                  name.designator(),
                  boards,
                  called.get(0).board(),
                  name.designator()));
    }
    return called.stream().findFirst();
  }

  /** The part that is so called; made where there is none. */
  PartDraft findOrMake(PartName name) {
    return find(name)
        .orElseGet(
            () -> {
              BoardId board = name.board().orElseGet(() -> onlyBoard(map));
              PartDraft made = PartDraft.made(freeId(name.designator()), name.designator(), board);
              add(made);
              return made;
            });
  }

  /** The board of a part of which nobody said it. */
  static BoardId onlyBoard(BoardMap map) {
    if (map.boards().size() > 1) {
      String boards =
          map.boards().stream().map(board -> board.id().text()).collect(Collectors.joining(", "));
      throw new IllegalArgumentException(
          "the map has several boards, so one of them must be named: " + boards);
    }
    return map.boards().isEmpty() ? MAIN : map.boards().at(0).id();
  }

  private PartId freeId(Designator designator) {
    PartId id = new PartId(designator.text());
    for (int i = 2; parts.containsKey(id); i++) {
      id = new PartId(designator + "~" + i);
    }
    return id;
  }

  /** The net of that name, if there is one. */
  Optional<NetDraft> findNet(String name) {
    List<NetDraft> called = byName.getOrDefault(name, List.of());
    if (called.size() > 1) {
      throw new IllegalArgumentException(
          "there are %d nets called %s: join or rename them first".formatted(called.size(), name));
    }
    return called.stream().findFirst();
  }

  /** The net of that name; made where there is none. */
  NetDraft findOrMakeNet(String name) {
    return findNet(name)
        .orElseGet(
            () -> {
              NetDraft made = NetDraft.made(freeNetId(name), name);
              add(made);
              return made;
            });
  }

  private NetId freeNetId(String name) {
    NetId id = new NetId(name);
    for (int i = 2; nets.containsKey(id); i++) {
      id = new NetId(name + "~" + i);
    }
    return id;
  }

  Optional<NetDraft> netOf(PinRef pin) {
    return Optional.ofNullable(netOf.get(pin));
  }

  void setNetOf(PinRef pin, NetDraft net) {
    netOf.put(pin, net);
  }
}
