package org.relegend.marking;

/**
 * The years in which a part may have been made, both included. An instrument of 1978 still in its
 * original state narrows it to 1945 to 1978.
 */
public record YearRange(int first, int last) {
  /** From the first year of the EIA scheme, the hundred years that two digits can tell apart. */
  public static final YearRange ANY = new YearRange(1945, 2044);

  public YearRange {
    if (first < 1900 || last > 2200 || first > last) {
      throw new IllegalArgumentException("no range of years: %d to %d".formatted(first, last));
    }
  }

  /** From the first year of the EIA scheme to this one. */
  public static YearRange upTo(int last) {
    return new YearRange(ANY.first, last);
  }

  public boolean contains(int year) {
    return year >= first && year <= last;
  }
}
