package org.relegend.lineup;

import org.relegend.map.Point;

/** A line-up whose error follows from the least squares behind it. */
final class FittedLineUp implements LineUp {
  private final LeastSquaresSolution solution;
  private final Transform transform;
  private final double frameVariance;
  private final double freedom;

  /**
   * @param deviation of one coordinate of a pair, in units of the second picture
   * @param freedom behind that deviation; infinite where it is assumed
   */
  FittedLineUp(LeastSquaresSolution solution, double deviation, double freedom) {
    this.solution = solution;
    this.freedom = freedom;
    transform = solution.transform();
    double framed = deviation * solution.pairs.toScale;
    frameVariance = framed * framed;
  }

  @Override
  public Transform transform() {
    return transform;
  }

  @Override
  public Uncertainty uncertainty(Point from) {
    Point p = solution.pairs.fromFrame.apply(from);
    double toScale = solution.pairs.toScale;
    SymmetricMatrix covariance =
        solution.leverage(p.x(), p.y()).times(frameVariance / (toScale * toScale));
    return Uncertainty.of(covariance, freedom);
  }

  @Override
  public String toString() {
    return "FittedLineUp[" + transform + "]";
  }
}
