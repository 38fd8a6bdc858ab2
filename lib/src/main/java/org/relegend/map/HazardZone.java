package org.relegend.map;

import java.util.List;
import java.util.Locale;

/**
 * An outlined region of a picture where someone can be hurt.
 *
 * @param outline at least three corners, in order
 */
public record HazardZone(
    ZoneId id,
    PictureId picture,
    Kind kind,
    List<Point> outline,
    String note,
    List<Attestation> evidence)
    implements Keyed<ZoneId> {
  /** What threatens there. */
  public enum Kind {
    MAINS,
    HIGH_VOLTAGE,
    STORED_CHARGE,
    HOT,
    /** Something that harms by touch, breath or breaking: beryllium oxide, mercury, acid, oil. */
    SUBSTANCE;

    /** In words: "stored charge". */
    public String words() {
      return word().replace('-', ' ');
    }

    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Kind of(String word) {
      return FixedWords.find(values(), Kind::word, "kind of hazard", word);
    }
  }

  public HazardZone {
    outline = List.copyOf(outline);
    evidence = List.copyOf(evidence);
    TextRules.note(note);
    if (outline.size() < 3) {
      throw new IllegalArgumentException(
          "the outline of zone %s needs three corners".formatted(id));
    }
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("zone %s without evidence".formatted(id));
    }
  }

  @Override
  public ZoneId key() {
    return id;
  }
}
