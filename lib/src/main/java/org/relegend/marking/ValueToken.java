package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one token of a part's value text: "4k7", "104K", "R47", "25V", "T100mA", "1/4W". */
final class ValueToken {
  /** Letters that may stand in place of the point, V, A and W by common practice (as in 5V1). */
  private static final String POINTS = "RrkKMGTLmuUµnNpPFHVvAW";

  /**
   * Four figures are the most that codes have (IEC 60062, as 59R04); crystals have more: 32k768.
   */
  private static final long MOST_IN_CODE = 9_999;

  private static final long MOST_IN_FREQUENCY = 999_999;

  private final String token;
  private final List<TokenMeaning> found = new ArrayList<>();

  private ValueToken(String token) {
    this.token = token;
  }

  /** Every meaning of the token, likeliest first; none if it is no value. */
  static List<TokenMeaning> read(String token) {
    ValueToken reader = new ValueToken(token);
    if (startsNumber(token)) {
      reader.number(afterCount(token));
    } else {
      reader.letterFirst();
    }
    return reader.found;
  }

  /** Whether the token starts as a number does, after a sign too. */
  static boolean startsNumber(String token) {
    int at = !token.isEmpty() && "+-±".indexOf(token.charAt(0)) >= 0 ? 1 : 0;
    boolean mark = at < token.length() && ".,".indexOf(token.charAt(at)) >= 0;
    return Numeral.digit(token, mark ? at + 1 : at);
  }

  /** Skips the count of "2x10k". */
  private static int afterCount(String token) {
    boolean counted =
        token.length() > 2
            && token.charAt(1) == 'x'
            && Numeral.digit(token, 0)
            && token.charAt(0) != '0'
            && Numeral.digit(token, 2);
    return counted ? 2 : 0;
  }

  private void number(int start) {
    Optional<Numeral> number = Numeral.at(token, start);
    if (number.isEmpty()) {
      return;
    }
    followed(number.get(), start == 0 ? "" : "each of the parts counted before the x; ");
    if (number.get().maybeGrouped()) {
      followed(number.get().grouped(), "the comma taken as thousands mark; ");
    }
  }

  private void followed(Numeral number, String note) {
    String rest = token.substring(number.end());
    if (rest.isEmpty()) {
      DigitCode.alone(number).forEach(candidate -> add(candidate, note));
    } else if (number.wholeOnly() && rest.length() > 1 && Numeral.digit(rest, 1)) {
      if (rest.charAt(0) == '/') {
        fraction(number, rest);
      } else if (POINTS.indexOf(rest.charAt(0)) >= 0) {
        pointed(number, rest);
      }
    } else {
      suffixed(number, rest, note);
    }
  }

  /** "1/4W". */
  private void fraction(Numeral above, String rest) {
    Optional<Numeral> below = Numeral.at(rest, 1);
    if (below.isPresent() && below.get().wholeOnly() && below.get().digits() > 0) {
      String unit = rest.substring(below.get().end());
      if (unit.equals("W") || unit.equals("w")) {
        Amount watts = new Amount(Quantity.POWER, (double) above.digits() / below.get().digits());
        found.add(new TokenMeaning(watts, Optional.empty(), false, "a fraction of a watt"));
      }
    }
  }

  /** Rest is the letter that stands in place of the point, the figures behind it and a tail. */
  private void pointed(Numeral before, String rest) {
    Optional<Numeral> joined = Numeral.at(rest, 1).flatMap(before::pointed);
    if (joined.isEmpty() || joined.get().digits() > MOST_IN_FREQUENCY) {
      return;
    }
    String point = rest.substring(0, 1);
    String tail = rest.substring(joined.get().end());
    String rule = "VAWFH".contains(point) ? "common practice" : "IEC 60062";
    String why = point + " in place of the point (" + rule + ")";
    for (UnitOfMeasure unit : UnitOfMeasure.of(point)) {
      if (joined.get().digits() <= MOST_IN_CODE || unit.quantity() == Quantity.FREQUENCY) {
        double value = joined.get().times(unit.exponent());
        tailed(TokenMeaning.of(unit, value, remarked(why, unit)), unit, point, tail);
      }
    }
  }

  /** What may follow the figures: nothing, the unit (4k7Ω, 4u7H) or a tolerance letter (4R7J). */
  private void tailed(TokenMeaning plain, UnitOfMeasure unit, String point, String tail) {
    boolean r = point.equalsIgnoreCase("R");
    boolean named = !(r && tail.equalsIgnoreCase(point)) && names(r ? tail : point + tail, unit);
    if (tail.isEmpty() || named) {
      found.add(plain);
    }
    boolean henries = named && unit.quantity() == Quantity.INDUCTANCE;
    if (tail.length() == 1 && !henries) {
      ToleranceLetter.of(tail.charAt(0))
          .ifPresent(letter -> TokenMeaning.withLetter(plain, letter, found));
    }
  }

  private static boolean names(String letters, UnitOfMeasure unit) {
    for (UnitOfMeasure named : UnitOfMeasure.of(letters)) {
      if (named.quantity() == unit.quantity() && named.exponent() == unit.exponent()) {
        return true;
      }
    }
    return false;
  }

  private void suffixed(Numeral number, String rest, String note) {
    List<UnitOfMeasure> units = UnitOfMeasure.of(rest);
    Optional<ToleranceLetter> letter =
        rest.length() == 1 ? ToleranceLetter.of(rest.charAt(0)) : Optional.empty();
    boolean code = letter.isPresent() && number.wholeOnly() && number.figures() == 3;
    // 104M is 100 nF ±20 % rather than 104 µF, and 104F is no 104 farads
    boolean codeFirst = code && (rest.equals("M") || rest.equals("F"));
    boolean ohms = false;
    boolean henries = false;
    for (UnitOfMeasure unit : units) {
      ohms |= unit.quantity() == Quantity.RESISTANCE;
      henries |= unit.quantity() == Quantity.INDUCTANCE;
      if (!codeFirst || unit.quantity() != Quantity.CAPACITANCE) {
        add(unit, number, note);
      }
    }
    if (letter.isPresent()) {
      // 221B is rather a house number: on a part of unknown kind only the usual letters count
      boolean usual = "JKMZ".contains(rest);
      boolean open = usual && (units.isEmpty() || (code && (rest.equals("K") || rest.equals("M"))));
      for (TokenMeaning each : DigitCode.withLetter(number, letter.get(), !open)) {
        // 470K is 470 kΩ; only where the letter is no prefix of ohms is 470J a chip resistor
        Quantity quantity = each.amount().quantity();
        boolean prefixed =
            quantity == Quantity.RESISTANCE ? ohms : quantity == Quantity.INDUCTANCE && henries;
        if (!prefixed) {
          add(each, note);
        }
      }
    }
    for (UnitOfMeasure unit : units) {
      if (codeFirst && unit.quantity() == Quantity.CAPACITANCE) {
        add(unit, number, note);
      }
    }
    if (found.isEmpty() && rest.length() > 1) {
      unitAndLetter(number, rest);
    }
  }

  /** "27KK", "100nJ", and fuses written "500mAT". */
  private void unitAndLetter(Numeral number, String rest) {
    char last = rest.charAt(rest.length() - 1);
    List<UnitOfMeasure> units = UnitOfMeasure.of(rest.substring(0, rest.length() - 1));
    Optional<ToleranceLetter> letter = ToleranceLetter.of(last);
    for (UnitOfMeasure unit : units) {
      TokenMeaning plain = TokenMeaning.of(unit, number.times(unit.exponent()), unitWhy(unit));
      if (unit.quantity() == Quantity.CURRENT && (last == 'T' || last == 'F')) {
        found.add(plain);
      } else if (letter.isPresent()) {
        TokenMeaning.withLetter(plain, letter.get(), found);
      }
    }
  }

  private void letterFirst() {
    int digits = 0;
    while (digits < token.length() && !Numeral.digit(token, digits)) {
      digits++;
    }
    if (digits == token.length() || digits == 0 || digits > 2) {
      return;
    }
    String letters = token.substring(0, digits);
    if (digits == 1 && "RrkKMLmuUµnNpP".contains(letters)) {
      // R47; upper-case letters other than R start too many type numbers to be taken unasked
      boolean asked = "KMLUNPm".contains(letters);
      pointed(Numeral.NOTHING, token);
      found.replaceAll(each -> asked ? expected(each) : each);
    }
    ValueToken behind = new ValueToken(token.substring(digits));
    behind.number(0);
    for (TokenMeaning each : behind.found) {
      fuse(letters, each);
      taper(letters, each);
    }
  }

  /** The blowing speed of IEC 60127 before the current: T100mA, F2A. */
  private void fuse(String letters, TokenMeaning candidate) {
    if (candidate.amount().quantity() == Quantity.CURRENT
        && !candidate.expected()
        && List.of("FF", "F", "M", "T", "TT").contains(letters)) {
      add(candidate, letters + " is the speed of a fuse; ");
    }
  }

  /** The taper letter of a potentiometer: B100K (common practice). */
  private void taper(String letters, TokenMeaning candidate) {
    if (candidate.amount().quantity() == Quantity.RESISTANCE
        && candidate.tolerance().isEmpty()
        && !Numeral.digit(token, token.length() - 1)
        && List.of("A", "B", "C").contains(letters)) {
      add(expected(candidate), letters + " is the taper of a potentiometer; ");
    }
  }

  private void add(UnitOfMeasure unit, Numeral number, String note) {
    add(TokenMeaning.of(unit, number.times(unit.exponent()), unitWhy(unit)), note);
  }

  private void add(TokenMeaning candidate, String note) {
    found.add(
        note.isEmpty()
            ? candidate
            : new TokenMeaning(
                candidate.amount(),
                candidate.tolerance(),
                candidate.expected(),
                note + candidate.why()));
  }

  private static TokenMeaning expected(TokenMeaning candidate) {
    return new TokenMeaning(candidate.amount(), candidate.tolerance(), true, candidate.why());
  }

  private static String unitWhy(UnitOfMeasure unit) {
    return remarked("a number with its unit or prefix", unit);
  }

  private static String remarked(String why, UnitOfMeasure unit) {
    return unit.remark().isEmpty() ? why : why + ", " + unit.remark();
  }
}
