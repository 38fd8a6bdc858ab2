package org.relegend.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/** The nets of one version, looked up by id and by pin. */
final class VersionNets {
  static final int NONE = -1;

  private final List<Net> nets;
  private final Map<NetId, Integer> byId = new HashMap<>();
  private final Map<PinRef, Integer> byPin = new HashMap<>();
  private final Map<PinRef, Net.Member> members = new HashMap<>();
  private final Set<PinRef> twice = new HashSet<>();

  VersionNets(BoardMap map) {
    nets = List.copyOf(map.nets());
    for (int i = 0; i < nets.size(); i++) {
      byId.put(nets.get(i).id(), i);
      for (Net.Member member : nets.get(i).members()) {
        members.put(member.pin(), member);
        if (byPin.put(member.pin(), i) != null) {
          twice.add(member.pin());
        }
      }
    }
  }

  List<Net> nets() {
    return nets;
  }

  Net net(int index) {
    return nets.get(index);
  }

  /** The index of a net; {@link #NONE} where the version hasn't it. */
  int index(NetId id) {
    return byId.getOrDefault(id, NONE);
  }

  /** The index of the net a pin is on; {@link #NONE} where it is on none. */
  int netOf(PinRef pin) {
    return byPin.getOrDefault(pin, NONE);
  }

  Set<PinRef> pins() {
    return byPin.keySet();
  }

  /** Pins that are on more than one net, which is a fault that the checks tell. */
  Set<PinRef> twice() {
    return twice;
  }

  List<PinCells.On> on(PinRef pin) {
    List<PinCells.On> found = new ArrayList<>();
    if (twice.contains(pin)) {
      for (Net net : nets) {
        net.member(pin).ifPresent(member -> found.add(new PinCells.On(net.id(), member)));
      }
    } else {
      int index = netOf(pin);
      Net.Member member = members.get(pin);
      if (index != NONE && member != null) {
        found.add(new PinCells.On(nets.get(index).id(), member));
      }
    }
    return found;
  }
}
