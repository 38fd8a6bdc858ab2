package org.relegend.bench.rule;

/** What is known of a node after its reading. */
public enum NodeVerdict {
  /** As its twin, or as the map says it should be. */
  GOOD,
  /** Otherwise. */
  BAD,
  /** Not read, or nothing to compare with. */
  UNKNOWN
}
