package org.relegend.map;

/**
 * What a net is known by inside the map for good: made from its first name, and kept when the net
 * is renamed.
 */
public record NetId(String text) implements Comparable<NetId> {
  public NetId {
    NameRules.checked("net id", text);
  }

  @Override
  public int compareTo(NetId other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
