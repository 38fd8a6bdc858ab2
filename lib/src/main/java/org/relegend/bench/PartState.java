package org.relegend.bench;

import java.util.Locale;
import org.relegend.map.NameRules;

/** What can be said of one fitted part; several may hold at once, as replaced and socketed. */
public enum PartState {
  ORIGINAL("original"),
  REPLACED("replaced"),
  RESOLDERED("re-soldered"),
  SOCKETED("socketed"),
  DAMAGED("damaged"),
  MISSING("missing"),
  UNKNOWN("unknown");

  private final String word;

  PartState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /**
   * Reads such a word; "resoldered" and "damaged pad" are taken too.
   *
   * @throws IllegalArgumentException where it is none of them
   */
  public static PartState of(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT).replace("-", "");
    for (PartState state : values()) {
      String word = state.word.replace("-", "");
      if (plain.equals(word) || plain.startsWith(word + " ")) {
        return state;
      }
    }
    throw new IllegalArgumentException(
        "\"%s\" is no condition: it is one of original, replaced, re-soldered, socketed, damaged,"
                .formatted(NameRules.printable(text))
            + " missing, unknown");
  }

  /** Whether somebody worked on the part. */
  public boolean reworked() {
    return this == REPLACED || this == RESOLDERED || this == SOCKETED;
  }
}
