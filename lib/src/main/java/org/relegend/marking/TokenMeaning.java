package org.relegend.marking;

import java.util.List;
import java.util.Optional;

/**
 * One meaning of one token of a part's value text.
 *
 * @param expected counts only where its quantity is expected of the part
 * @param why by which rule, for the user
 */
record TokenMeaning(Amount amount, Optional<Tolerance> tolerance, boolean expected, String why) {

  static TokenMeaning of(UnitOfMeasure unit, double value, String why) {
    Amount amount = new Amount(unit.quantity(), value, unit.waveform());
    return new TokenMeaning(amount, Optional.empty(), unit.expected(), why);
  }

  /** Adds the value once for each meaning of the letter: not at all if it has none here. */
  static void withLetter(TokenMeaning plain, ToleranceLetter letter, List<TokenMeaning> into) {
    Amount amount = plain.amount();
    for (Tolerance tolerance : letter.meanings(amount.quantity(), amount.value())) {
      String why = plain.why() + "; " + letter + " is " + tolerance.text();
      into.add(new TokenMeaning(amount, Optional.of(tolerance), plain.expected(), why));
    }
  }
}
