package org.relegend.solve;

import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/**
 * Newton's method on the node equations, with each device's own limit of a step and, where it goes
 * to and fro, damping. An anchor holds all nodes near given voltages, for ways from easy to hard.
 */
final class Newton {
  private static final double ABSOLUTE = 1e-7;
  private static final double RELATIVE = 1e-8;

  /** After so many steps they are halved, and so on. */
  private static final int PATIENCE = 40;

  private final NodalSystem system;
  private final LinearStep step;
  private final DMatrixRMaj slopes;
  private final double[] rest;

  Newton(NodalSystem system, LinearStep step) {
    this.system = system;
    this.step = step;
    this.slopes = new DMatrixRMaj(system.size(), system.size());
    this.rest = new double[system.size()];
  }

  /**
   * Walks x to a solution.
   *
   * @param x where to begin; where it ended, in place
   * @return whether it is a solution
   */
  boolean run(double[] x, int steps) {
    return run(x, steps, 0, x.clone());
  }

  /**
   * @param siemens from each node to its anchor
   */
  boolean run(double[] x, int steps, double siemens, double[] anchor) {
    double[] @Nullable [] seen = new double[system.devices()][];
    double[] change = new double[x.length];
    for (int count = 0; count < steps; count++) {
      boolean limited = system.fill(x, seen, slopes, rest);
      for (int n = 0; n < x.length && siemens > 0; n++) {
        slopes.data[n * x.length + n] += siemens;
        rest[n] += siemens * (x[n] - anchor[n]);
      }
      if (!step.solve(slopes, rest, change)) {
        return false;
      }
      int halvings = count / PATIENCE;
      double damping = Math.pow(0.5, halvings);
      boolean still = true;
      for (int n = 0; n < x.length; n++) {
        still &= Math.abs(change[n]) <= ABSOLUTE + RELATIVE * Math.abs(x[n]);
        x[n] -= damping * change[n];
      }
      if (!DenseStep.allFinite(x)) {
        return false;
      }
      if (still && !limited) {
        return true;
      }
    }
    return false;
  }

  /** The slopes at these voltages. */
  DMatrixRMaj slopesAt(double[] x) {
    system.fill(x, new double[system.devices()][], slopes, rest);
    return slopes.copy();
  }
}
