package org.relegend.marking;

import java.util.List;
import java.util.Optional;

/**
 * One meaning of one token of a part's value text.
 *
 * @param expected counts only where its quantity is expected of the part
 * @param why by which rule, for the user
 */
record Candidate(Amount amount, Optional<Tolerance> tolerance, boolean expected, String why) {

  static Candidate of(Unit unit, double value, String why) {
    Amount amount = new Amount(unit.quantity(), value, unit.waveform());
    return new Candidate(amount, Optional.empty(), unit.expected(), why);
  }

  /** Adds the value once for each meaning of the letter: not at all if it has none here. */
  static void withLetter(Candidate plain, ToleranceLetter letter, List<Candidate> into) {
    Amount amount = plain.amount();
    for (Tolerance tolerance : letter.meanings(amount.quantity(), amount.value())) {
      String why = plain.why() + "; " + letter + " is " + tolerance.text();
      into.add(new Candidate(amount, Optional.of(tolerance), plain.expected(), why));
    }
  }
}
