package org.relegend.twin;

import java.util.List;

/**
 * Seeds that can't all be right.
 *
 * @param pairs the fewest that cause it
 */
public record SeedContradiction(List<TwinSeed> pairs, String reason) {
  public SeedContradiction {
    pairs = List.copyOf(pairs);
  }
}
