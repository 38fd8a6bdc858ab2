package org.relegend.solve;

import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Ways to a solution that Newton's method doesn't find at once: op-amps' gain raised step by step,
 * a conductance at every node taken away step by step, all sources turned up from nothing, and last
 * the course of time with a capacitor at every node (pseudo-transient continuation, Kelley and
 * Keyes, SIAM Journal on Numerical Analysis 35, 1998).
 */
final class Continuation {
  private static final int STEPS = 60;

  private final NodalSystem system;
  private final double[] start;

  Continuation(NodalSystem system, double[] start) {
    this.system = system;
    this.start = start;
  }

  /** The voltages of all nodes; nothing where no way leads to a solution. */
  Optional<double[]> solved() {
    double[] x = start.clone();
    return newton(system).run(x, STEPS) ? Optional.of(x) : solvedTheLongWay();
  }

  /** As {@link #solved}, where Newton's method is known to fail from here. */
  Optional<double[]> solvedTheLongWay() {
    double[] zero = new double[start.length];
    return byTime(start)
        .or(() -> byLeak(zero))
        .or(() -> byTime(zero))
        .or(this::byGain)
        .or(this::bySources);
  }

  private static Newton newton(NodalSystem system) {
    return new Newton(system, new DenseStep());
  }

  private Optional<double[]> byGain() {
    double[] x = start.clone();
    for (double gain = 3; gain < 1e8; gain *= 3) {
      if (!newton(system.withGainAtMost(gain)).run(x, STEPS)) {
        return Optional.empty();
      }
    }
    return newton(system).run(x, STEPS) ? Optional.of(x) : Optional.empty();
  }

  private Optional<double[]> byLeak(double[] from) {
    double[] x = from.clone();
    double[] zero = new double[x.length];
    for (double siemens = 0.1; siemens > 1e-13; siemens /= 5) {
      if (!newton(system).run(x, STEPS, siemens, zero)) {
        return Optional.empty();
      }
    }
    return newton(system).run(x, STEPS) ? Optional.of(x) : Optional.empty();
  }

  private Optional<double[]> bySources() {
    return stepped(system::withSourcesAt);
  }

  /** From 0 to 1 in steps that shrink where one fails. */
  private Optional<double[]> stepped(DoubleFunction<NodalSystem> at) {
    double[] x = new double[start.length];
    double reached = 0;
    double step = 0.1;
    while (reached < 1) {
      double next = Math.min(1, reached + step);
      double[] trial = x.clone();
      if (newton(at.apply(next)).run(trial, STEPS)) {
        x = trial;
        reached = next;
        step *= 2;
      } else {
        step /= 4;
        if (step < 1e-4) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(x);
  }

  private Optional<double[]> byTime(double[] from) {
    double[] x = from.clone();
    double siemens = 1e-2;
    for (int count = 0; count < 150; count++) {
      double[] trial = x.clone();
      if (newton(system).run(trial, 30, siemens, x)) {
        x = trial;
        siemens /= 10;
      } else {
        siemens *= 30;
      }
      if (siemens < 1e-14) {
        return newton(system).run(x, STEPS) ? Optional.of(x) : Optional.empty();
      }
      if (siemens > 1e6) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
