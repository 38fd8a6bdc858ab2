package org.relegend.circuit;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.relegend.map.PartId;

/**
 * What an extended node passes through, and how the switches stand.
 *
 * @param positions position of switches and relays, in the words of their kind ("on", "1"), or
 *     {@link #OPEN}; one that isn't said is in its kind's rest position if it has one, else
 *     undecided
 */
public record PassageOptions(Set<Passage> passages, Map<PartId, String> positions) {
  /** The position in which no contact is closed. */
  public static final String OPEN = "open";

  public static final PassageOptions NOTHING = new PassageOptions(Set.of(), Map.of());

  public static final PassageOptions ALL = of(Passage.values());

  public PassageOptions {
    passages = Set.copyOf(passages);
    positions = Map.copyOf(positions);
  }

  public static PassageOptions of(Passage... passages) {
    Set<Passage> set = EnumSet.noneOf(Passage.class);
    set.addAll(Arrays.asList(passages));
    return new PassageOptions(set, Map.of());
  }

  public boolean passes(Passage passage) {
    return passages.contains(passage);
  }

  public PassageOptions without(Passage passage) {
    Set<Passage> fewer = EnumSet.noneOf(Passage.class);
    passages.stream().filter(other -> other != passage).forEach(fewer::add);
    return new PassageOptions(fewer, positions);
  }

  public PassageOptions withPosition(PartId part, String position) {
    Map<PartId, String> more = new HashMap<>(positions);
    more.put(part, position);
    return new PassageOptions(passages, more);
  }
}
