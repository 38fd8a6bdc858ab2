package org.relegend.twin;

import org.relegend.map.Subject;

/** Two that are said to be twins: parts, sections, pins or nets. */
public record TwinSeed(Subject a, Subject b) {
  public TwinSeed {
    if (a.getClass() != b.getClass()) {
      throw new IllegalArgumentException(
          "%s and %s can't be twins: a part has a part, a net has a net".formatted(a, b));
    }
    if (a.equals(b)) {
      throw new IllegalArgumentException(a + " can't be its own twin");
    }
  }

  TwinSeed reversed() {
    return new TwinSeed(b, a);
  }
}
