package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Sorts the tokens of one value text into the value, its tolerance, its ratings and mere words. */
final class ValueParts {
  /**
   * One token that reads as a value, with what it can mean.
   *
   * @param bare a number without unit, prefix or letter
   */
  private record Piece(String token, boolean bare, List<TokenMeaning> meanings) {
    boolean means(Quantity quantity) {
      for (TokenMeaning each : meanings) {
        if (each.amount().quantity() == quantity) {
          return true;
        }
      }
      return false;
    }

    Optional<Amount> rating() {
      for (TokenMeaning each : meanings) {
        if (!bare && rates(each.amount().quantity())) {
          return Optional.of(each.amount());
        }
      }
      return Optional.empty();
    }
  }

  private static final Pattern TEMPERATURE = Pattern.compile("[0-9]{2,3}°?C");

  /** What may stand beside a bare number that is a value; beside other words it isn't taken. */
  private static final Set<String> DESCRIPTIONS =
      Set.of(
          "ceramic",
          "disc",
          "disk",
          "polystyrene",
          "styroflex",
          "polyester",
          "polypropylene",
          "polycarbonate",
          "mylar",
          "paper",
          "oil",
          "mica",
          "silver",
          "silvered",
          "tantalum",
          "bead",
          "electrolytic",
          "elco",
          "film",
          "foil",
          "metal",
          "metallised",
          "carbon",
          "composition",
          "comp",
          "wirewound",
          "wire-wound",
          "ww",
          "fusible",
          "ntc",
          "ptc",
          "trimmer",
          "preset",
          "pot",
          "choke",
          "coil",
          "rf",
          "axial",
          "radial",
          "smd",
          "chip",
          "x1",
          "x2",
          "y1",
          "y2",
          "np0",
          "npo",
          "c0g",
          "x7r",
          "x5r",
          "y5v",
          "z5u",
          "matched",
          "selected",
          "bipolar",
          "slow",
          "fast",
          "quick",
          "blow",
          "lin",
          "log");

  private final String text;
  private final Optional<Quantity> expected;
  private final List<Piece> values = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();
  private Optional<Tolerance> tolerance = Optional.empty();

  private ValueParts(String text, Optional<Quantity> expected) {
    this.text = text;
    this.expected = expected;
  }

  static ValueParts of(String text, Optional<Quantity> expected) {
    ValueParts parts = new ValueParts(text, expected);
    for (String token : ValueText.tokens(text)) {
      parts.sort(token);
    }
    return parts;
  }

  private void sort(String token) {
    Optional<Tolerance> result = ToleranceText.read(token);
    if (result.isPresent() && tolerance.isEmpty()) {
      tolerance = result;
    } else if (!waveform(token)) {
      value(token);
    }
  }

  private void value(String token) {
    boolean bare = Numeral.at(token, 0).map(number -> number.all(token)).orElse(false);
    boolean aside = jedec(token) || (bare && aside(token)) || temperature(token);
    List<TokenMeaning> meanings = aside ? List.of() : meanings(token);
    if (!meanings.isEmpty()) {
      values.add(new Piece(token, bare, meanings));
    } else if (ValueToken.startsNumber(token) && !aside && !nameLike(token)) {
      failed.add(token);
    } else {
      words.add(token);
    }
  }

  private List<TokenMeaning> meanings(String token) {
    List<TokenMeaning> meanings = new ArrayList<>();
    for (TokenMeaning each : ValueToken.read(token)) {
      if (!each.expected() || expects(each.amount().quantity())) {
        meanings.add(each);
      }
    }
    return meanings;
  }

  private boolean expects(Quantity quantity) {
    return expected.isPresent() && expected.get() == quantity;
  }

  /** A bare number behind words is no value: "BC 547", "see note 3"; but "ceramic 104" is one. */
  private boolean aside(String token) {
    return !words.isEmpty() && (expected.isEmpty() || token.length() < 3);
  }

  /** "85C" beside a value is what an electrolytic endures, no capacitance. */
  private boolean temperature(String token) {
    return values.stream().anyMatch(value -> !value.bare()) && TEMPERATURE.matcher(token).matches();
  }

  /** "AC" or "DC" behind a voltage or current. */
  private boolean waveform(String token) {
    boolean ac = token.equalsIgnoreCase("AC") || token.equals("~");
    if (values.isEmpty() || !(ac || token.equalsIgnoreCase("DC"))) {
      return false;
    }
    Piece last = values.get(values.size() - 1);
    if (!last.means(Quantity.VOLTAGE) && !last.means(Quantity.CURRENT)) {
      return false;
    }
    List<TokenMeaning> waved = new ArrayList<>();
    for (TokenMeaning each : last.meanings()) {
      Amount amount = each.amount();
      if (amount.quantity() == Quantity.VOLTAGE || amount.quantity() == Quantity.CURRENT) {
        Waveform form = ac ? Waveform.AC : Waveform.DC;
        Amount result = new Amount(amount.quantity(), amount.value(), form);
        waved.add(new TokenMeaning(result, each.tolerance(), each.expected(), each.why()));
      }
    }
    values.set(values.size() - 1, new Piece(last.token(), last.bare(), waved));
    return true;
  }

  /** But of a capacitor or coil, the JEDEC type numbers 1N… to 4N…: "1N914" is no 1.914 nF. */
  private boolean jedec(String token) {
    return !expects(Quantity.CAPACITANCE)
        && !expects(Quantity.INDUCTANCE)
        && !expects(Quantity.RESISTANCE)
        && token.length() > 3
        && token.charAt(0) >= '1'
        && token.charAt(0) <= '4'
        && token.charAt(1) == 'N'
        && Numeral.digit(token, 2)
        && Numeral.digit(token, 3);
  }

  /**
   * Of a part of unknown kind, a word or type number that starts with digits: "14-pin", "17-0-17",
   * "74LS00", "2SC1815".
   */
  private boolean nameLike(String token) {
    if (expected.isPresent()) {
      return false;
    }
    boolean upper = token.equals(token.toUpperCase(Locale.ROOT));
    boolean letterThenDigit = false;
    for (int at = 1; at < token.length(); at++) {
      letterThenDigit |= Character.isLetter(token.charAt(at - 1)) && Numeral.digit(token, at);
    }
    return token.indexOf('-') > 0 || (upper && letterThenDigit);
  }

  MarkingReadings<ValueReading> readings() {
    Optional<Piece> main = main();
    boolean asked = main.isPresent() && expected.map(main.get()::means).orElse(true);
    if (!asked && !failed.isEmpty()) {
      return MarkingReadings.malformed(
          MarkingText.quoted(failed.get(0))
              + " does not read as a value. Write it like 4k7, 4.7k, 0R47, 100n, 104K or 220u 25V.");
    }
    if (main.isPresent() && main.get().bare() && doubtful()) {
      return MarkingReadings.noValue(
          "%s: a bare number beside %s isn't taken for a value. Write its unit."
              .formatted(
                  MarkingText.quoted(text), failed.isEmpty() ? "such words" : failed.get(0)));
    }
    if (main.isEmpty() || (main.get().bare() && !asked)) {
      return MarkingReadings.noValue(
          "No value in %s: it reads as a description.".formatted(MarkingText.quoted(text)));
    }
    words.addAll(failed);
    return ComponentValues.answered(text, readings(main.get()), expected);
  }

  /**
   * Something beside that is neither a rating nor a word of the trade: an address, a type, a range.
   */
  private boolean doubtful() {
    return !failed.isEmpty()
        || words.stream().anyMatch(word -> !DESCRIPTIONS.contains(word.toLowerCase(Locale.ROOT)));
  }

  /**
   * The token that tells the value: of the expected quantity, with a unit rather than bare. Where
   * nothing is expected, a bare number beside words is part of a description ("2 pole switch").
   */
  private Optional<Piece> main() {
    Optional<Piece> best = Optional.empty();
    int bestRank = Integer.MAX_VALUE;
    for (Piece piece : values) {
      if (expected.isEmpty() && piece.bare() && !words.isEmpty()) {
        continue;
      }
      boolean wanted = expected.map(piece::means).orElse(piece.rating().isEmpty());
      int rank = (wanted ? 0 : 2) + (piece.bare() ? 1 : 0);
      if (rank < bestRank) {
        best = Optional.of(piece);
        bestRank = rank;
      }
    }
    return best;
  }

  private List<ValueReading> readings(Piece main) {
    List<TokenMeaning> chosen = new ArrayList<>(wanted(main));
    List<Amount> ratings = new ArrayList<>();
    boolean several = false;
    Quantity quantity = chosen.get(0).amount().quantity();
    List<Piece> others = new ArrayList<>(values);
    others.remove(main);
    for (Piece piece : others) {
      Optional<Amount> rating = piece.rating();
      if (rating.isPresent()) {
        ratings.add(rating.get());
      } else if (piece.means(quantity) && !piece.bare()) {
        chosen.addAll(wanted(piece));
        several = true;
      } else {
        words.add(piece.token());
      }
    }
    List<ValueReading> readings = new ArrayList<>();
    for (TokenMeaning candidate : chosen) {
      readings.add(reading(candidate, ratings, several));
    }
    return readings;
  }

  /** The meanings of the expected quantity, or all where none is expected or none is met. */
  private List<TokenMeaning> wanted(Piece piece) {
    if (expected.isEmpty() || !piece.means(expected.get())) {
      return piece.meanings();
    }
    List<TokenMeaning> wanted = new ArrayList<>();
    for (TokenMeaning each : piece.meanings()) {
      if (expects(each.amount().quantity())) {
        wanted.add(each);
      }
    }
    return wanted;
  }

  private ValueReading reading(TokenMeaning candidate, List<Amount> ratings, boolean several) {
    String why = candidate.why() + (several ? "; one of several values in the text" : "");
    if (tolerance.isPresent()
        && candidate.tolerance().isPresent()
        && !tolerance.equals(candidate.tolerance())) {
      why += ", but " + tolerance.get().text() + " is written out and taken";
    }
    Optional<Tolerance> result = tolerance.or(candidate::tolerance);
    return new ValueReading(candidate.amount(), result, ratings, words, why);
  }

  private static boolean rates(Quantity quantity) {
    return switch (quantity) {
      case VOLTAGE, CURRENT, POWER, APPARENT_POWER -> true;
      default -> false;
    };
  }
}
