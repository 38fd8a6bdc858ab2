package org.relegend.marking;

import java.util.Optional;

/**
 * What is known of the part that a marking stands on.
 *
 * @param quantity that its value must tell; empty where nothing is known
 * @param part its class; empty where only the quantity is known
 */
record MarkContext(Optional<Quantity> quantity, Optional<PartClass> part) {
  static final MarkContext NOTHING = new MarkContext(Optional.empty(), Optional.empty());

  static MarkContext of(Quantity quantity) {
    return new MarkContext(Optional.of(quantity), Optional.empty());
  }

  static MarkContext of(PartClass part) {
    return new MarkContext(Optional.of(part.quantity()), Optional.of(part));
  }

  /** Whether nothing at all is known. */
  boolean open() {
    return quantity.isEmpty();
  }

  /** Whether the part is told to be of this class, or its quantity at least leaves it possible. */
  boolean may(PartClass other) {
    return part.map(known -> known == other)
        .orElseGet(() -> quantity.map(known -> known == other.quantity()).orElse(false));
  }

  /** As {@link #may}, or nothing is known. */
  boolean mayOrOpen(PartClass other) {
    return open() || may(other);
  }

  /** Whether the part is told to be of this class. */
  boolean is(PartClass other) {
    return part.isPresent() && part.get() == other;
  }
}
