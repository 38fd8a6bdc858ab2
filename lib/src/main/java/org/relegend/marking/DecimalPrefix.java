package org.relegend.marking;

/** The decimal prefixes met on parts and meters (ISO 80000-1; the symbol µ is U+00B5). */
enum DecimalPrefix {
  PICO("p", -12),
  NANO("n", -9),
  MICRO("µ", -6),
  MILLI("m", -3),
  NONE("", 0),
  KILO("k", 3),
  MEGA("M", 6),
  GIGA("G", 9),
  TERA("T", 12);

  final String symbol;
  final int exponent;

  DecimalPrefix(String symbol, int exponent) {
    this.symbol = symbol;
    this.exponent = exponent;
  }

  /** Whether these letters are this prefix and nothing else; u serves for µ and K for k. */
  boolean named(String letters) {
    return letters.equals(symbol) && this != NONE
        || this == MICRO && letters.equals("u")
        || this == KILO && letters.equals("K");
  }
}
