package org.relegend.solve;

import org.hipparchus.analysis.differentiation.Gradient;

/** A law that is written as formulas; its slopes are those of automatic differentiation. */
interface SmoothLaw extends DeviceLaw {
  /** The currents into the terminals at these voltages. */
  Gradient[] currents(Gradient[] v);

  @Override
  default void conduct(double[] v, double[] i, double[] g) {
    int n = terminals();
    Gradient[] x = new Gradient[n];
    for (int k = 0; k < n; k++) {
      x[k] = Gradient.variable(n, k, v[k]);
    }
    Gradient[] currents = currents(x);
    for (int k = 0; k < n; k++) {
      i[k] = currents[k].getValue();
      for (int m = 0; m < n; m++) {
        g[k * n + m] = currents[k].getPartialDerivative(m);
      }
    }
  }

  /** From -1 to 1, with slope 1 in the middle and flat at both ends: x / sqrt(1 + x²). */
  static Gradient saturated(Gradient x) {
    return x.divide(x.multiply(x).add(1).sqrt());
  }

  /** Nearly x where positive, nearly nothing where negative, rounded over this width. */
  static Gradient positive(Gradient x, double width) {
    return x.add(x.multiply(x).add(width * width).sqrt()).multiply(0.5);
  }

  /** Nearly the smaller of two, rounded over this width. */
  static Gradient smaller(Gradient a, Gradient b, double width) {
    return a.subtract(positive(a.subtract(b), width));
  }

  /** ln(1 + exp(x)), without overflow. */
  static Gradient softPlus(Gradient x) {
    return x.getValue() > 0 ? x.add(x.negate().exp().log1p()) : x.exp().log1p();
  }
}
