package org.relegend.twin;

import java.util.List;

/**
 * Seeds that can't all be right.
 *
 * @param pairs the fewest that cause it
 */
public record Contradiction(List<Seed> pairs, String reason) {
  public Contradiction {
    pairs = List.copyOf(pairs);
  }
}
