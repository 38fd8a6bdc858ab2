package org.relegend.lineup;

import java.util.Arrays;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Finds the pairs that agree, among wrong ones, without a threshold given beforehand: random sample
 * consensus in its a-contrario form (Moisan and Stival 2004). Every hypothesis from the fewest
 * pairs is judged by how many agreeing pairs chance would give: with n pairs, s of them in the
 * sample and the k best within e of their place on a picture of area A, that number is (n - s) C(n,
 * k) C(k, s) (pi e^2 / A)^(k - s). The least wins; a hundredth or more means that chance explains
 * the agreement.
 */
final class Consensus {
  /** Natural logarithm of the expected number of chance agreements below which one is believed. */
  static final double BELIEVED = Math.log(1e-2);

  /** How much more by chance a fit may look for being whole, rather than the part found first. */
  private static final double INDULGED = Math.log(1e3);

  /** Squared frame units below which two points are the same. */
  private static final double SAME = 1e-24;

  /** Up to so many samples, all are tried; beyond, as many random ones. */
  private final int most;

  private final TransformFamily family;
  private final NormalisedPairs pairs;
  private final int sample;
  private final double logArea;
  private final double[] logFactorial;

  private double best = BELIEVED;
  private int[] agreeing = {};

  /**
   * @param area of the second picture, in its frame's units
   */
  Consensus(TransformFamily family, NormalisedPairs pairs, int sample, double area, int most) {
    this.family = family;
    this.pairs = pairs;
    this.sample = sample;
    this.most = most;
    logArea = Math.log(area);
    logFactorial = new double[pairs.size() + 1];
    for (int i = 1; i < logFactorial.length; i++) {
      logFactorial[i] = logFactorial[i - 1] + Math.log(i);
    }
  }

  /** Only pairs within this squared distance, in frame units, may agree; anything unless said. */
  private double farthest = Double.POSITIVE_INFINITY;

  /** Lets only pairs within a distance of the second picture's frame agree. */
  Consensus within(double distance) {
    farthest = distance * distance;
    return this;
  }

  /** The least-squares fit of the pairs that agree; none if chance explains every agreement. */
  Optional<LeastSquaresSolution> find(RandomGenerator random) {
    return agreeing(random)
        .flatMap(members -> LeastSquaresSolution.of(family, pairs, members))
        .map(this::whole)
        .filter(solution -> chance(solution) < BELIEVED);
  }

  /**
   * Natural logarithm of how many fits like this one, or better, chance would give; 0 for the
   * fewest pairs, which always fit.
   */
  double chance(LeastSquaresSolution solution) {
    double largest = 0;
    for (int i : solution.members) {
      largest = Math.max(largest, solution.squaredResidual(i));
    }
    return pairs.size() == sample ? 0 : chance(solution.members.length, largest);
  }

  private double chance(int agreeing, double largestSquare) {
    double share = Math.min(0, Math.log(Math.PI * Math.max(largestSquare, SAME)) - logArea);
    return Math.log(pairs.size() - sample)
        + logChoose(pairs.size(), agreeing)
        + logChoose(agreeing, sample)
        + (agreeing - sample) * share;
  }

  /** With the members that a closer look adds or takes away, unless that makes it look chancy. */
  private LeastSquaresSolution whole(LeastSquaresSolution core) {
    return PairSelection.settled(core)
        .filter(settled -> chance(settled) < chance(core) + INDULGED)
        .orElse(core);
  }

  /** The agreeing pairs themselves, in rising order. */
  Optional<int[]> agreeing(RandomGenerator random) {
    int n = pairs.size();
    if (Math.exp(logChoose(n, sample)) <= most) {
      tryAll(new int[sample], 0, 0);
    } else {
      for (int i = 0; i < most; i++) {
        judge(drawn(random, n));
      }
    }
    return agreeing.length > 0 ? Optional.of(agreeing) : Optional.empty();
  }

  private void tryAll(int[] chosen, int filled, int next) {
    if (filled == sample) {
      judge(chosen);
      return;
    }
    for (int i = next; i <= pairs.size() - (sample - filled); i++) {
      chosen[filled] = i;
      tryAll(chosen, filled + 1, i + 1);
    }
  }

  private int[] drawn(RandomGenerator random, int n) {
    int[] chosen = new int[sample];
    for (int k = 0; k < sample; ) {
      int candidate = random.nextInt(n);
      boolean fresh = true;
      for (int j = 0; j < k; j++) {
        fresh &= chosen[j] != candidate;
      }
      if (fresh) {
        chosen[k++] = candidate;
      }
    }
    return chosen;
  }

  private void judge(int[] members) {
    Optional<double[]> numbers = family.solve(pairs, members);
    if (numbers.isEmpty()) {
      return;
    }
    double[] squares = squaredDistances(numbers.get(), members);
    double[] near = Arrays.stream(squares).filter(square -> square < farthest).sorted().toArray();
    int bestCount = 0;
    for (int k = sample + 1; k <= near.length; k++) {
      double chance = chance(k, near[k - 1]);
      if (chance < best) {
        best = chance;
        bestCount = k;
      }
    }
    if (bestCount > 0) {
      keep(squares, near[bestCount - 1]);
    }
  }

  private void keep(double[] squares, double largest) {
    agreeing = new int[squares.length];
    int count = 0;
    for (int i = 0; i < squares.length; i++) {
      if (squares[i] <= largest) {
        agreeing[count++] = i;
      }
    }
    agreeing = Arrays.copyOf(agreeing, count);
  }

  /** Infinite for pairs beyond the horizon, as seen from the sample; the sample itself at zero. */
  private double[] squaredDistances(double[] numbers, int[] members) {
    double[] squares = new double[pairs.size()];
    double[] m = family.matrix(numbers);
    double side = 0;
    for (int i : members) {
      double w = m[6] * pairs.fromX[i] + m[7] * pairs.fromY[i] + m[8];
      if (side * w < 0) {
        Arrays.fill(squares, Double.POSITIVE_INFINITY); // the horizon runs through the sample
        return squares;
      }
      side = w;
    }
    for (int i = 0; i < squares.length; i++) {
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      double w = m[6] * x + m[7] * y + m[8];
      double dx = pairs.toX[i] - (m[0] * x + m[1] * y + m[2]) / w;
      double dy = pairs.toY[i] - (m[3] * x + m[4] * y + m[5]) / w;
      squares[i] = w * side > 0 ? dx * dx + dy * dy : Double.POSITIVE_INFINITY;
    }
    for (int i : members) {
      squares[i] = 0;
    }
    return squares;
  }

  private double logChoose(int n, int k) {
    return logFactorial[n] - logFactorial[k] - logFactorial[n - k];
  }
}
