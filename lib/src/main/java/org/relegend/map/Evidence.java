package org.relegend.map;

import java.util.Locale;

/** How a technician knows something, in falling trust. */
public enum Evidence {
  /** Ohms measured, at both ends. */
  MEASURED,
  /** A continuity tester beeped: also low resistors, coils and fuses do that. */
  BEEPED,
  /** Copper or a marking was seen. */
  SEEN,
  /** Value and place fit, or the twin. */
  MATCHED,
  /** Concluded from the drawing. */
  INFERRED,
  /** Guessed. */
  GUESSED;

  /** The word used in files, tables and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads such a word.
   *
   * @throws IllegalArgumentException where it is none of them
   */
  public static Evidence of(String word) {
    return FixedWords.find(values(), Evidence::word, "evidence", word);
  }

  /** The one that can be trusted less: a path is as good as its weakest link. */
  public Evidence weaker(Evidence other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
