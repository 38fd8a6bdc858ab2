package org.relegend.bench;

import org.relegend.map.Texts;

/**
 * How a reading was taken.
 *
 * @param against the id of the net that the black lead was on; empty for the map's reference
 * @param with the instrument
 * @param power whether the unit was on
 * @param lifted whether the part was out of circuit: removed, or one leg lifted
 * @param words the rest: controls, signal, load, warm-up
 */
public record Setting(String against, Instrument with, Power power, boolean lifted, String words) {
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
      return org.relegend.map.Words.find(values(), Power::word, "state of power", word);
    }
  }

  public Setting {
    Texts.line("reference net", against);
    Texts.line("conditions", words);
  }

  /** With this instrument, against the reference, nothing else said. */
  public static Setting with(Instrument instrument) {
    return new Setting("", instrument, Power.UNSTATED, false, "");
  }

  public Setting with(Power changed) {
    return new Setting(against, with, changed, lifted, words);
  }

  public Setting withLifted(boolean changed) {
    return new Setting(against, with, power, changed, words);
  }

  /** Whether a second reading taken so should show the same. */
  public boolean alike(Setting other) {
    return against.equals(other.against)
        && power == other.power
        && lifted == other.lifted
        && words.equals(other.words);
  }
}
