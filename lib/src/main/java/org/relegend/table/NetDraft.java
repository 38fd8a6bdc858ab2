package org.relegend.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Attestation;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/** A net while tables are read into it. */
final class NetDraft {
  private final @Nullable Net before;
  private Net net;
  private final Map<PinRef, Net.Member> members = new LinkedHashMap<>();
  private boolean changed;

  private NetDraft(@Nullable Net before, Net net) {
    this.before = before;
    this.net = net;
    net.members().forEach(member -> members.put(member.pin(), member));
  }

  static NetDraft known(Net net) {
    return new NetDraft(net, net);
  }

  static NetDraft made(NetId id, String name) {
    return new NetDraft(null, Net.named(id).withName(name));
  }

  NetId id() {
    return net.id();
  }

  String name() {
    return net.name();
  }

  /** All but its pins, as the map has it or as was read since. */
  Net fields() {
    return net;
  }

  void setFields(Net stated) {
    changed |= !stated.equals(net);
    net = stated;
  }

  boolean isNew() {
    return before == null;
  }

  boolean isChanged() {
    return changed || isNew();
  }

  boolean has(PinRef pin) {
    return members.containsKey(pin);
  }

  /** Joins a pin; one that is joined already gains the attestation unless it has one like it. */
  void join(PinRef pin, Attestation attestation) {
    Net.Member known = members.get(pin);
    if (known == null) {
      members.put(pin, new Net.Member(pin, List.of(attestation)));
      changed = true;
    } else if (!ImportAttestations.by(attestation, known.evidence())) {
      members.put(pin, known.confirmedBy(attestation));
      changed = true;
    }
  }

  void cut(PinRef pin) {
    changed |= members.remove(pin) != null;
  }

  Net finished() {
    return net.withMembers(List.copyOf(members.values()));
  }
}
