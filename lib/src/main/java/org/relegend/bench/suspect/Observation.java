package org.relegend.bench.suspect;

/**
 * One quantity that was read and that each fault predicts: the difference of a node and its twin,
 * the mean of the two, or a node alone. Likelihoods are Student's t with four degrees of freedom,
 * whose heavy tails let one wrong reading or one wrong model pass (Lange, Little and Taylor, JASA
 * 84, 1989).
 *
 * @param node place of the node in the list of nodes
 * @param twin place of its twin; -1 where it stands alone
 * @param kind what of the two counts
 * @param value as read, in volts
 * @param sigma one standard deviation of healthy units, the model and the meter, in volts
 * @param offset to be added to what is predicted: by how much what is told of the node differs from
 *     the solution
 */
record Observation(int node, int twin, Kind kind, double value, double sigma, double offset) {
  enum Kind {
    DIFFERENCE,
    MEAN,
    ALONE
  }

  /** By this fraction a predicted change may be off: the degree of a fault is seldom known. */
  static final double CHANGE_ERROR = 0.12;

  private static final double FREEDOM = 4;

  /** What is expected at these volts of all nodes. */
  double expected(double[] volts) {
    return switch (kind) {
      case DIFFERENCE -> volts[node] - volts[twin];
      case MEAN -> (volts[node] + volts[twin]) / 2;
      case ALONE -> volts[node] + offset;
    };
  }

  /** Logarithm of the density of what was read, where the volts of all nodes are these. */
  double logLikelihood(double[] faulty, double[] healthy) {
    double expected = expected(faulty);
    double change = expected - expected(healthy);
    return logDensity(value - expected, Math.hypot(sigma, CHANGE_ERROR * change));
  }

  /** Logarithm of Student's density, up to a constant that is the same for all. */
  static double logDensity(double distance, double sigma) {
    double z = distance / sigma;
    return -(FREEDOM + 1) / 2 * Math.log1p(z * z / FREEDOM) - Math.log(sigma);
  }

  /** Of a cause that nobody thought of: healthy, or anywhere about as far as the supplies reach. */
  double logLikelihoodUnknown(double[] healthy, double span) {
    double distance = value - expected(healthy);
    double near = Math.exp(logDensity(distance, sigma));
    double wide = span / 8;
    double far = 1 / (wide * (1 + distance * distance / (wide * wide)));
    return Math.log(0.6 * near + 0.2 * far);
  }
}
