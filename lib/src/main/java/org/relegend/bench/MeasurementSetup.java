package org.relegend.bench;

import org.relegend.map.TextRules;

/**
 * How a reading was taken.
 *
 * @param against the id of the net that the black lead was on; empty for the map's reference
 * @param with the instrument
 * @param power whether the unit was on
 * @param lifted whether the part was out of circuit: removed, or one leg lifted
 * @param words the rest: controls, signal, load, warm-up
 */
public record MeasurementSetup(
    String against, Instrument with, Power power, boolean lifted, String words) {
  /** Whether the unit had power. */
  public enum Power {
    UNSTATED,
    ON,
    OFF;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Power of(String word) {
      return org.relegend.map.FixedWords.find(values(), Power::word, "state of power", word);
    }
  }

  public MeasurementSetup {
    TextRules.line("reference net", against);
    TextRules.line("conditions", words);
  }

  /** With this instrument, against the reference, nothing else said. */
  public static MeasurementSetup with(Instrument instrument) {
    return new MeasurementSetup("", instrument, Power.UNSTATED, false, "");
  }

  public MeasurementSetup with(Power changed) {
    return new MeasurementSetup(against, with, changed, lifted, words);
  }

  public MeasurementSetup withLifted(boolean changed) {
    return new MeasurementSetup(against, with, power, changed, words);
  }

  /** Whether a second reading taken so should show the same. */
  public boolean alike(MeasurementSetup other) {
    return against.equals(other.against)
        && power == other.power
        && lifted == other.lifted
        && words.equals(other.words);
  }
}
