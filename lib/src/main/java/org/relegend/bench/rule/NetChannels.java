package org.relegend.bench.rule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;

/**
 * Which channel each net works in: as the map says; where it says so of no net, as tables leave it,
 * that of the net's parts where they are all of one.
 */
final class NetChannels {
  private final Map<NetId, String> byNet = new HashMap<>();

  NetChannels(BoardMap map) {
    boolean declared = map.nets().stream().anyMatch(net -> !net.channel().isEmpty());
    for (Net net : map.nets()) {
      byNet.put(net.id(), declared ? net.channel() : ofParts(map, net));
    }
  }

  /** Empty where a net is shared or nobody knows. */
  String of(NetId net) {
    return byNet.getOrDefault(net, "");
  }

  /** Whether any net is known to work in one. */
  boolean any() {
    return byNet.values().stream().anyMatch(channel -> !channel.isEmpty());
  }

  private static String ofParts(BoardMap map, Net net) {
    Set<String> channels = new HashSet<>();
    for (PinRef pin : net.pins()) {
      channels.add(map.part(pin.part()).map(Part::channel).orElse(""));
    }
    return channels.size() == 1 ? channels.iterator().next() : "";
  }
}
