package org.relegend.map;

import java.util.Locale;

/** Which side of a board a photo shows. The solder side is seen mirrored. */
public enum Side {
  COMPONENT,
  SOLDER;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads "component" or "solder".
   *
   * @throws IllegalArgumentException where it is neither
   */
  public static Side of(String word) {
    return FixedWords.find(values(), Side::word, "side", word);
  }
}
