package org.relegend.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * Colour refinement (1-WL) over parts and nets in its plainest form, for facts about decks: parts
 * begin with kind and value, ground is marked, and the ends of resistors and capacitors are not
 * told apart.
 */
final class AlikeClasses {
  private final Map<PartId, Integer> partColours = new HashMap<>();
  private final Map<NetId, Integer> netColours = new HashMap<>();

  AlikeClasses(BoardMap map) {
    Map<PinRef, NetId> nets = new HashMap<>();
    for (Net net : map.nets()) {
      net.pins().forEach(pin -> nets.put(pin, net.id()));
      netColours.put(net.id(), net.id().text().equals("0") ? -1 : -2);
    }
    map.parts()
        .forEach(part -> partColours.put(part.id(), (part.kind() + part.value()).hashCode()));
    int classes = 0;
    while (classes != count()) {
      classes = count();
      Map<PartId, List<Object>> parts = new HashMap<>();
      Map<NetId, List<List<Object>>> perNet = new HashMap<>();
      for (Part part : map.parts()) {
        List<String> ends = new ArrayList<>();
        part.pins()
            .forEach(
                pin -> {
                  NetId net = nets.get(part.ref(pin));
                  String role =
                      part.pin("1").isPresent() && part.pins().size() == 2 ? "" : pin.number();
                  ends.add(role + ":" + netColours.get(net));
                  perNet
                      .computeIfAbsent(net, key -> new ArrayList<>())
                      .add(List.of(role, partColours.get(part.id())));
                });
        ends.sort(null);
        parts.put(part.id(), List.of(partColours.get(part.id()), ends));
      }
      Map<NetId, List<Object>> grown = new HashMap<>();
      perNet.forEach(
          (net, list) -> grown.put(net, List.of(netColours.get(net), sorted(list).toString())));
      recolour(partColours, parts);
      recolour(netColours, grown);
    }
  }

  private static List<String> sorted(List<List<Object>> list) {
    return list.stream().map(Object::toString).sorted().toList();
  }

  private static <K> void recolour(Map<K, Integer> colours, Map<K, List<Object>> grown) {
    Map<List<Object>, Integer> names = new HashMap<>();
    grown.forEach((key, colour) -> names.putIfAbsent(colour, names.size()));
    grown.forEach((key, colour) -> colours.put(key, names.get(colour)));
  }

  private int count() {
    return new HashSet<>(partColours.values()).size() + new HashSet<>(netColours.values()).size();
  }

  List<List<PartId>> parts() {
    return classes(partColours);
  }

  List<List<NetId>> nets() {
    return classes(netColours);
  }

  private static <K extends Comparable<K>> List<List<K>> classes(Map<K, Integer> colours) {
    Map<Integer, Collection<K>> classes = new HashMap<>();
    colours.forEach(
        (key, colour) -> classes.computeIfAbsent(colour, c -> new TreeSet<>()).add(key));
    List<List<K>> lists = new ArrayList<>();
    classes.values().forEach(list -> lists.add(List.copyOf(list)));
    return lists;
  }
}
