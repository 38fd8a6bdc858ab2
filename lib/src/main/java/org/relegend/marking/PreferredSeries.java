package org.relegend.marking;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The preferred number series of IEC 60063. Members repeat in every decade.
 *
 * <p>E24 and coarser are historic lists, eight of whose members differ from the rounded geometric
 * series; E48 to E192 are that series to three figures, with one exception.
 */
public enum PreferredSeries {
  /** From memory of IEC 60063. */
  E3(10, 22, 47),
  E6(10, 15, 22, 33, 47, 68),
  E12(10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82),
  E24(
      10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82,
      91),
  E48,
  E96,
  E192;

  /** Far below the steps of E192 (1.2 %), far above the rounding of doubles. */
  private static final double CLOSENESS = 1e-6;

  @SuppressWarnings("ImmutableEnumChecker") // filled once, never handed out
  private final int[] members;

  /** The listed two-figure members, kept with three figures; without a list, the geometric rule. */
  PreferredSeries(int... twoFigures) {
    int size = Integer.parseInt(name().substring(1));
    this.members =
        twoFigures.length > 0
            ? Arrays.stream(twoFigures).map(member -> member * 10).toArray()
            : geometric(size);
  }

  private static int[] geometric(int size) {
    int[] members = new int[size];
    for (int i = 0; i < size; i++) {
      members[i] = (int) Math.round(100 * Math.pow(10, (double) i / size));
    }
    if (size == 192) {
      members[185] = 920; // the rule gives 919
    }
    return members;
  }

  /** The members from 100 up to, not including, 1000; those of E24 and coarser end in zero. */
  public List<Integer> members() {
    return Arrays.stream(members).boxed().toList();
  }

  /** Whether the value is a member in some decade; zero and negative values are in none. */
  public boolean contains(double value) {
    if (!inReach(value)) {
      return false;
    }
    Neighbours neighbours = around(value);
    return neighbours.below() == neighbours.above();
  }

  /**
   * The members around the value.
   *
   * @throws IllegalArgumentException unless the value is positive, between 1e-30 and 1e30
   */
  public Neighbours around(double value) {
    if (!inReach(value)) {
      throw new IllegalArgumentException("no preferred values around " + value);
    }
    int exponent = (int) Math.floor(Math.log10(value)) - 2;
    double below = DecimalParser.value(members[members.length - 1], exponent - 1);
    for (int member : members) {
      double at = DecimalParser.value(member, exponent);
      if (at >= value * (1 - CLOSENESS)) {
        return between(below, value, at);
      }
      below = at;
    }
    return between(below, value, DecimalParser.value(members[0], exponent + 1));
  }

  /** Wider than any unit needs, and far from where doubles lose figures. */
  private static boolean inReach(double value) {
    return value >= 1e-30 && value <= 1e30;
  }

  private static Neighbours between(double below, double value, double above) {
    return above - value <= CLOSENESS * value
        ? new Neighbours(above, above, above)
        : new Neighbours(below, above, value / below <= above / value ? below : above);
  }

  /**
   * The members next to a value, in its unit.
   *
   * @param below the greatest member not above the value
   * @param above the least member not below it; both are equal if the value is a member itself
   * @param nearest the one at the smaller ratio from the value
   */
  public record Neighbours(double below, double above, double nearest) {}

  /**
   * The series made for parts of this tolerance: E6 for 20 %, E12 for 10 %, E24 for 5 %, E48 for 2
   * %, E96 for 1 %, E192 for 0.5 % and closer; in between, that of the next wider tolerance. Close
   * parts are sold in E24 values as well (common practice), and E24 is no subset of E96.
   *
   * @param fraction the wider of the two limits, 0.05 for 5 %
   */
  public static PreferredSeries pairedWith(double fraction) {
    if (!(fraction >= 0)) {
      throw new IllegalArgumentException("no tolerance: " + fraction);
    }
    double[] widest = {0.005, 0.01, 0.02, 0.05, 0.10, 0.20};
    int rank = 0;
    while (rank < widest.length && fraction > widest[rank] + 1e-9) {
      rank++;
    }
    return values()[values().length - 1 - rank];
  }

  /** The series with the fewest members that has the value. */
  public static Optional<PreferredSeries> coarsestWith(double value) {
    return Arrays.stream(values()).filter(series -> series.contains(value)).findFirst();
  }
}
