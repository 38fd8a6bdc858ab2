package org.relegend.lineup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.relegend.map.Point;

/**
 * A line-up made from many matches, which disagree with it for a reason: parts stand above the
 * board and lenses bend straight lines. That disagreement is the same for neighbours, so it doesn't
 * average out, and the error of least squares alone would promise far too much. The stated error is
 * therefore the mean square of the matches' own distances, those nearby counting most, besides that
 * of the fit.
 */
final class MatchedLineUp implements LineUp {
  /** How far neighbours count: standard deviation of the weights, as a share of the hull's size. */
  private static final double NEAR = 0.1;

  /** How many matches the mean over the whole picture counts for. */
  private static final double PRIOR = 8;

  private final LeastSquaresSolution solution;
  private final LineUp fitted;
  private final List<PointPair> matches;
  private final double near;
  private final double mean;

  /**
   * @param solution the fit of the matches on the board's plane
   * @param matches these, and those somewhat off it
   */
  MatchedLineUp(LeastSquaresSolution solution, List<PointPair> matches) {
    this.solution = solution;
    this.matches = List.copyOf(matches);
    double deviation = Math.sqrt(solution.variance()) / solution.pairs.toScale;
    fitted = new FittedLineUp(solution, deviation, solution.freedom());
    near = NEAR * Extent.around(matches.stream().map(PointPair::from).toList()).diagonal();
    mean = matches.stream().mapToDouble(this::variance).average().orElseThrow();
  }

  /**
   * From matches that were kept, of the plane and a little off it; none where they are too few or
   * fix no perspective. Those further off than three times what is usual are not of the plane.
   */
  static Optional<MatchedLineUp> of(List<PointPair> matches) {
    NormalisedPairs all = NormalisedPairs.of(matches, false, false);
    int[] every = IntStream.range(0, matches.size()).toArray();
    if (every.length <= TransformModel.HOMOGRAPHY.fewest()) {
      return Optional.empty();
    }
    return LeastSquaresSolution.of(HomographyFamily.HOMOGRAPHY, all, every)
        .flatMap(
            rough -> {
              double usual = median(rough, every);
              double fine = Math.max(usual / all.toScale, Double.MIN_NORMAL);
              Transform plane = PlaneFit.of(matches, rough.transform(), 4 * fine, fine);
              List<PointPair> onPlane =
                  matches.stream().filter(pair -> distance(plane, pair) <= 3 * fine).toList();
              NormalisedPairs kept = NormalisedPairs.of(onPlane, false, false);
              return LeastSquaresSolution.of(
                  HomographyFamily.HOMOGRAPHY, kept, IntStream.range(0, kept.size()).toArray());
            })
        .map(solution -> new MatchedLineUp(solution, matches));
  }

  private static double median(LeastSquaresSolution solution, int[] members) {
    double[] squares = IntStream.of(members).mapToDouble(solution::squaredResidual).toArray();
    Arrays.sort(squares);
    return Math.sqrt(squares[squares.length / 2]);
  }

  private static double distance(Transform transform, PointPair pair) {
    return transform.apply(pair.from()).distance(pair.to());
  }

  @Override
  public Transform transform() {
    return fitted.transform();
  }

  @Override
  public Uncertainty uncertainty(Point from) {
    double weights = PRIOR;
    double sum = PRIOR * mean;
    for (PointPair match : matches) {
      double distance = match.from().distance(from) / near;
      double weight = Math.exp(-distance * distance / 2);
      weights += weight;
      sum += weight * variance(match);
    }
    return fitted.uncertainty(from).plus(Uncertainty.round(Math.sqrt(sum / weights)));
  }

  /** Of one coordinate, by one match. */
  private double variance(PointPair match) {
    double distance = transform().apply(match.from()).distance(match.to());
    return distance * distance / 2;
  }

  @Override
  public String toString() {
    return "MatchedLineUp[" + transform() + ", of " + solution.members.length + " matches]";
  }
}
