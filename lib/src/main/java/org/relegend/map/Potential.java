package org.relegend.map;

/**
 * What voltage a net is known to carry when the instrument works.
 *
 * @param nature what kind of net it is
 * @param volts nominal, against the reference net; root mean square for AC and mains; 0 while
 *     unknown
 */
public record Potential(Nature nature, double volts) {
  /** The kinds of net that matter for hazards and for readings. */
  public enum Nature {
    /** Not said. */
    UNKNOWN,
    /** Joined to the mains. */
    MAINS,
    /** Protective earth. */
    EARTH,
    /** What voltages are measured against. */
    REFERENCE,
    /** A direct voltage, as a supply rail. */
    DC,
    /** An alternating voltage, as a transformer's secondary. */
    AC;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Nature of(String word) {
      return FixedWords.find(values(), Nature::word, "potential", word);
    }
  }

  public static final Potential UNKNOWN = new Potential(Nature.UNKNOWN, 0);

  public Potential {
    if (!Double.isFinite(volts) || Math.abs(volts) > 1e6) {
      throw new IllegalArgumentException("a potential of " + volts + " V can't be");
    }
    volts += 0.0; // no negative zero
  }
}
