package org.relegend.bench.rule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.relegend.circuit.Circuit;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;

/**
 * Which net and part does the same work in another channel: as declared in the map, and what
 * follows from that pin by pin. A net's twin has the twin pins; on two twin nets the one part of a
 * kind and value is the twin of the other's. What stays ambiguous has no twin here.
 */
public final class TwinIndex {
  private final Circuit circuit;
  private final NetChannels channels;
  private final Map<NetId, NetId> nets = new HashMap<>();
  private final Map<PartId, PartId> parts = new HashMap<>();
  private final Deque<NetId> open = new ArrayDeque<>();

  private TwinIndex(Circuit circuit, NetChannels channels) {
    this.circuit = circuit;
    this.channels = channels;
  }

  public static TwinIndex of(Circuit circuit) {
    return of(circuit, new NetChannels(circuit.map()));
  }

  static TwinIndex of(Circuit circuit, NetChannels channels) {
    TwinIndex twins = new TwinIndex(circuit, channels);
    circuit.map().twins().forEach(twins::declared);
    if (twins.parts.isEmpty() && twins.nets.isEmpty()) {
      twins.byNames();
    }
    twins.spread();
    return twins;
  }

  public Optional<NetId> net(NetId net) {
    return Optional.ofNullable(nets.get(net));
  }

  public Optional<PartId> part(PartId part) {
    return Optional.ofNullable(parts.get(part));
  }

  private void declared(TwinPair pair) {
    if (pair.a() instanceof Subject.OfPart a && pair.b() instanceof Subject.OfPart b) {
      pair(a.part(), b.part());
    } else if (pair.a() instanceof Subject.OfNet a && pair.b() instanceof Subject.OfNet b) {
      pair(a.net(), b.net());
    }
  }

  /** While nothing is declared: nets whose names differ in nothing but their channels' names. */
  private void byNames() {
    Map<String, List<Net>> alike = new TreeMap<>();
    for (Net net : circuit.map().nets()) {
      String channel = channel(net);
      if (!channel.isEmpty() && net.name().contains(channel)) {
        alike
            .computeIfAbsent(
                net.name().replaceFirst(Pattern.quote(channel), "\u0000"), n -> new ArrayList<>())
            .add(net);
      }
    }
    for (List<Net> pair : alike.values()) {
      if (pair.size() == 2 && !channel(pair.get(0)).equals(channel(pair.get(1)))) {
        pair(pair.get(0).id(), pair.get(1).id());
      }
    }
  }

  private String channel(Net net) {
    return channels.of(net.id());
  }

  private void pair(NetId a, NetId b) {
    if (!a.equals(b) && !nets.containsKey(a) && !nets.containsKey(b)) {
      nets.put(a, b);
      nets.put(b, a);
      open.add(a);
    }
  }

  private void pair(PartId a, PartId b) {
    if (a.equals(b) || parts.containsKey(a) || parts.containsKey(b)) {
      return;
    }
    parts.put(a, b);
    parts.put(b, a);
    Optional<Part> first = circuit.map().part(a);
    if (first.isPresent()) {
      for (Pin pin : first.get().pins()) {
        Optional<NetId> one = only(new PinRef(a, pin.number()));
        Optional<NetId> other = only(new PinRef(b, pin.number()));
        if (one.isPresent() && other.isPresent()) {
          pair(one.get(), other.get());
        }
      }
    }
  }

  private Optional<NetId> only(PinRef pin) {
    List<Net> found = circuit.index().netsOf(pin);
    return found.size() == 1 ? Optional.of(found.get(0).id()) : Optional.empty();
  }

  /** Each net again whenever a pair is added, since that may settle what was ambiguous. */
  private void spread() {
    int before = -1;
    while (parts.size() != before) {
      before = parts.size();
      open.addAll(List.copyOf(nets.keySet()));
      while (!open.isEmpty()) {
        NetId a = open.remove();
        NetId b = nets.get(a);
        if (b != null) {
          match(a, b);
        }
      }
    }
  }

  private void match(NetId a, NetId b) {
    Map<String, List<PartId>> here = looks(a);
    Map<String, List<PartId>> there = looks(b);
    here.forEach(
        (look, found) -> {
          List<PartId> others = there.getOrDefault(look, List.of());
          if (found.size() == 1 && others.size() == 1) {
            pair(found.get(0), others.get(0));
          }
        });
  }

  private Map<String, List<PartId>> looks(NetId net) {
    Map<String, List<PartId>> looks = new TreeMap<>();
    for (PinRef pin : circuit.map().net(net).map(Net::pins).orElse(List.of())) {
      Optional<Part> part = circuit.map().part(pin.part());
      if (part.isPresent() && !parts.containsKey(pin.part())) {
        String look = "%s|%s|%s".formatted(part.get().kind(), part.get().value(), pin.pin());
        looks
            .computeIfAbsent(look + "|" + ends(part.get(), net), key -> new ArrayList<>(1))
            .add(pin.part());
      }
    }
    return looks;
  }

  /** The part's other ends: shared nets by name, paired ones alike in both channels. */
  private String ends(Part part, NetId here) {
    return circuit.netsOf(part.id()).stream()
        .filter(net -> !net.equals(here))
        .map(this::shared)
        .sorted()
        .toList()
        .toString();
  }

  private String shared(NetId net) {
    NetId twin = nets.get(net);
    if (twin != null) {
      return net.compareTo(twin) < 0 ? net.text() : twin.text();
    }
    boolean common = circuit.map().net(net).map(n -> channel(n).isEmpty()).orElse(true);
    return common ? net.text() : "";
  }
}
