package org.relegend.circuit;

import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/** What a person's name for a node turned out to mean. */
public sealed interface NodeName {
  /** A net as built. */
  record OfNet(NetId net) implements NodeName {}

  /** A pin, for all that is joined to it. */
  record OfPin(PinRef pin) implements NodeName {}

  /** A net that only the drawing has: the board has its pins elsewhere. */
  record OfDrawnNet(String name) implements NodeName {}
}
