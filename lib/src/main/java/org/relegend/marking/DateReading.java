package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One way to read a date code.
 *
 * @param week as written, 1 to 53
 * @param monday the first day of that week; empty if the year has no such week in that scheme, so
 *     that year or scheme is wrong
 * @param maker the three-digit number of the maker as written, "137"; empty when the code has none
 * @param why how the code was read so; a sentence for the user
 */
public record DateReading(
    int year, int week, WeekScheme scheme, Optional<LocalDate> monday, String maker, String why) {
  public DateReading {
    requireNonNull(scheme);
    requireNonNull(monday);
    if (!maker.isEmpty() && !maker.matches("[0-9]{3}")) {
      throw new IllegalArgumentException("a maker number has three digits, not " + maker);
    }
    requireNonNull(why);
  }

  /** The maker, where its number is known here. */
  public Optional<EiaMaker> knownMaker() {
    return maker.isEmpty() ? Optional.empty() : EiaMaker.of(Integer.parseInt(maker));
  }
}
