package org.relegend.map;

/**
 * A terminal of a part.
 *
 * @param number as printed or counted: "7", "+", "AC1"; unique in its part
 * @param role what it does, where known: "base", "out X"; else empty
 */
public record Pin(String number, String role) {
  public Pin {
    checkedNumber(number);
    TextRules.line("pin role", role);
  }

  static String checkedNumber(String number) {
    NameRules.checked("pin number", number);
    if (number.chars().anyMatch(Character::isWhitespace)) {
      throw new IllegalArgumentException("the pin number \"" + number + "\" holds a space");
    }
    return number;
  }
}
