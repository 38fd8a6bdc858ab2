package org.relegend.circuit;

import java.util.regex.Pattern;

/** Values of resistors that stand in for a wire. */
final class ZeroOhm {
  private static final Pattern ZERO =
      Pattern.compile("(?i)(0+([.,]0+)?\\s*(r0*|ohms?|Ω|Ω)?|r0+|link)(\\s.*)?");

  private ZeroOhm() {}

  static boolean is(String value) {
    return ZERO.matcher(value.strip()).matches();
  }
}
