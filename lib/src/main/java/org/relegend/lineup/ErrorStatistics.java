package org.relegend.lineup;

/** The figures that sum up a list of distances. */
final class ErrorStatistics {
  private ErrorStatistics() {}

  static double rms(double[] distances) {
    double sum = 0;
    for (double d : distances) {
      sum += d * d;
    }
    return Math.sqrt(sum / distances.length);
  }

  /** Nearest rank, of distances in rising order. */
  static double p95(double[] sorted) {
    return sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
  }
}
