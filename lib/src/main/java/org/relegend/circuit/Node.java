package org.relegend.circuit;

import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** A place that a probe can be put to: a net, or a pin that isn't on any net yet. */
public sealed interface Node {
  record OfNet(NetId net) implements Node {
    @Override
    public Subject subject() {
      return Subject.of(net);
    }
  }

  /** A pin of which nobody knows yet what it is joined to. */
  record OfPin(PinRef pin) implements Node {
    @Override
    public Subject subject() {
      return Subject.of(pin);
    }
  }

  static Node of(NetId net) {
    return new OfNet(net);
  }

  static Node of(PinRef pin) {
    return new OfPin(pin);
  }

  Subject subject();
}
