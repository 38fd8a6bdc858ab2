package org.relegend.lineup;

import java.util.Arrays;
import java.util.Optional;

/**
 * Decides pair by pair who belongs to a fit. A pair is judged by the fit of the others: its squared
 * distance from where they put it, over twice its expected variance, has the F(2, v) distribution
 * where the pair is right; it is left out at one chance in a hundred, shared among all pairs
 * (Bonferroni).
 */
final class PairSelection {
  private static final double LEVEL = 0.01;

  /** Variance in squared frame units below which scatter is rounding, about 1/1000 pixel. */
  private static final double ROUNDING = 1e-12;

  private PairSelection() {}

  /** The fit after taking away members that the others refute and adding those they confirm. */
  static Optional<LeastSquaresSolution> settled(LeastSquaresSolution start) {
    Optional<LeastSquaresSolution> current = Optional.of(start);
    for (Optional<LeastSquaresSolution> next = current;
        next.isPresent();
        next = withoutWorst(next.get())) {
      current = next;
    }
    for (Optional<LeastSquaresSolution> next = current;
        next.isPresent();
        next = withConfirmed(next.get())) {
      current = next;
    }
    return current;
  }

  /** How probable a disagreement like this pair's is, the number of pairs allowed for. */
  static double odds(LeastSquaresSolution fit, int pair) {
    boolean member = Arrays.binarySearch(fit.members, pair) >= 0;
    int freedom = fit.freedom() - (member ? 2 : 0);
    if (freedom <= 0) {
      return 1;
    }
    double square = member ? fit.deletedSquare(pair) : fit.outsideSquare(pair);
    double rest = fit.squares - (member ? square : 0);
    double variance = Math.max(ROUNDING, rest / freedom);
    return Math.min(1, fit.pairs.size() * Uncertainty.tail(square / (2 * variance), freedom));
  }

  private static Optional<LeastSquaresSolution> withoutWorst(LeastSquaresSolution fit) {
    int worst = -1;
    double least = LEVEL;
    for (int i : fit.members) {
      double odds = odds(fit, i);
      if (odds < least) {
        least = odds;
        worst = i;
      }
    }
    return worst < 0 ? Optional.empty() : fit.without(worst);
  }

  private static Optional<LeastSquaresSolution> withConfirmed(LeastSquaresSolution fit) {
    int[] more = new int[fit.pairs.size()];
    int count = 0;
    for (int i = 0; i < more.length; i++) {
      boolean member = Arrays.binarySearch(fit.members, i) >= 0;
      if (member || (fit.freedom() > 0 && fit.denominator(i) > 0 && odds(fit, i) >= LEVEL)) {
        more[count++] = i;
      }
    }
    return count > fit.members.length
        ? LeastSquaresSolution.of(fit.family, fit.pairs, Arrays.copyOf(more, count))
        : Optional.empty();
  }
}
