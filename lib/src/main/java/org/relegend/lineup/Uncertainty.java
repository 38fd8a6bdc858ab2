package org.relegend.lineup;

/**
 * How far a carried point may lie from its true place: the covariance of its error, in squared
 * units of the picture it was carried to, and the degrees of freedom behind that covariance
 * (infinite where it is assumed or known rather than estimated from few pairs).
 */
public record Uncertainty(double xx, double xy, double yy, double freedom) {
  public static final Uncertainty NONE = new Uncertainty(0, 0, 0, Double.POSITIVE_INFINITY);

  /** Over a quarter turn, after which they repeat. */
  private static final int DIRECTIONS = 32;

  /** Halvings of the radius' range: to a billionth of it. */
  private static final int HALVINGS = 32;

  private static final double STATED = 0.95;

  public Uncertainty {
    if (Double.isNaN(xx + xy + yy) || xx < 0 || yy < 0 || !(freedom > 0)) {
      throw new IllegalArgumentException(
          "not a covariance: " + xx + ", " + xy + ", " + yy + " with " + freedom + " freedom");
    }
  }

  static Uncertainty of(SymmetricMatrix covariance, double freedom) {
    // rounding may leave a variance of nothing slightly negative
    return new Uncertainty(
        Math.max(0, covariance.xx()), covariance.xy(), Math.max(0, covariance.yy()), freedom);
  }

  /** The same error in every direction, with a known standard deviation along each axis. */
  public static Uncertainty round(double deviation) {
    return new Uncertainty(
        deviation * deviation, 0, deviation * deviation, Double.POSITIVE_INFINITY);
  }

  /** The radius of the circle round the carried point that holds the true one 95 times in 100. */
  public double radius95() {
    return radius(STATED);
  }

  /**
   * The radius that holds the true place with the given probability.
   *
   * <p>With the covariance estimated from v degrees of freedom, the squared error along a direction
   * with variance a is 2 a F, F having the F(2, v) distribution, whose upper tail is (1 + 2F/v)^
   * (-v/2) (closed form of the F distribution with two degrees of freedom in the numerator; as v
   * grows, exp(-F)). An ellipse is covered by averaging that over its directions, which is exact,
   * so no approximation by the longer axis is needed.
   *
   * @throws IllegalArgumentException unless 0 < probability < 1
   */
  public double radius(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException("a probability lies between 0 and 1, not " + probability);
    }
    SymmetricMatrix covariance = covariance();
    double longest = covariance.largestEigenvalue();
    if (longest == 0 || Double.isInfinite(longest)) {
      return longest;
    }
    double shortest = covariance.smallestEigenvalue();
    // the error of a circle with the longer axis is an upper bound, and bisection needs no more
    double high = Math.sqrt(2 * longest * quantile(1 - probability, freedom));
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (tail(middle * middle, longest, shortest) > 1 - probability) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** After a further map with these derivatives. */
  public Uncertainty through(Jacobian jacobian) {
    return of(covariance().through(jacobian), freedom);
  }

  /**
   * Together with an independent error. The freedom of the sum follows Welch and Satterthwaite,
   * applied to the traces.
   */
  public Uncertainty plus(Uncertainty other) {
    SymmetricMatrix sum = covariance().plus(other.covariance());
    double shares = square(covariance().trace()) / freedom;
    shares += square(other.covariance().trace()) / other.freedom;
    return of(sum, shares > 0 ? square(sum.trace()) / shares : Double.POSITIVE_INFINITY);
  }

  /** The F value with the given upper tail for 2 and v degrees of freedom. */
  static double quantile(double tail, double freedom) {
    return Double.isInfinite(freedom)
        ? -Math.log(tail)
        : freedom / 2 * Math.expm1(-2 / freedom * Math.log(tail));
  }

  /** The upper tail of the F distribution with 2 and v degrees of freedom. */
  static double tail(double f, double freedom) {
    return Double.isInfinite(freedom)
        ? Math.exp(-f)
        : Math.exp(-freedom / 2 * Math.log1p(2 * f / freedom));
  }

  private double tail(double squaredRadius, double longest, double shortest) {
    double sum = 0;
    for (int i = 0; i < DIRECTIONS; i++) {
      double angle = Math.PI / 2 * (i + 0.5) / DIRECTIONS;
      double along = square(Math.cos(angle)) * longest + square(Math.sin(angle)) * shortest;
      sum += tail(squaredRadius / (2 * along), freedom);
    }
    return sum / DIRECTIONS;
  }

  private SymmetricMatrix covariance() {
    return new SymmetricMatrix(xx, xy, yy);
  }

  private static double square(double value) {
    return value * value;
  }
}
