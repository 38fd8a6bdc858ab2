package org.relegend.lineup;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.relegend.map.Point;

/** All trials of one number of pairs and of wrong ones among them. */
final class CoverageCell {
  private static final int PLACES = 8;

  final TransformModel model;
  final int pairs;
  final int wrong;
  int refused;
  int warned;
  int exact;
  int reported;
  double held;
  final int trials;
  private final double[] errors;
  private final double[] radii;

  CoverageCell(TransformModel model, int pairs, int wrong, int trials) {
    this.model = model;
    this.trials = trials;
    errors = new double[trials];
    radii = new double[trials];
    this.pairs = pairs;
    this.wrong = wrong;
  }

  /** Whether the right pairs are enough to tell the wrong ones by. */
  boolean knowable() {
    return wrong == 0 || pairs - wrong > model.fewest();
  }

  int fits() {
    return trials - refused;
  }

  double coverage() {
    return 100 * held / reported;
  }

  void run() {
    for (int trial = 0; trial < trials; trial++) {
      long seed = 1_000_003L * trial + 1009L * pairs + 31L * wrong + model.parameters();
      Simulation simulation = new Simulation(seed, model);
      List<PointPair> clicks = simulation.pairs(pairs, wrong, 2);
      FitResult result =
          Fitter.of(model)
              .expecting(SideRelation.SAME)
              .fit(clicks, Simulation.PICTURE, Simulation.PICTURE);
      if (result instanceof Fit fit) {
        exact += fit.warns(FitWarning.Kind.EXACT) ? 1 : 0;
        judge(simulation, fit);
      } else {
        refused++;
      }
    }
  }

  /** Only fits without a warning, but for what they left out or assume, count as told. */
  private void judge(Simulation simulation, Fit fit) {
    boolean doubted =
        fit.warnings().stream()
            .anyMatch(
                w -> w.kind() != FitWarning.Kind.WRONG_PAIRS && w.kind() != FitWarning.Kind.EXACT);
    if (doubted) {
      warned++;
      return;
    }
    for (int i = 0; i < PLACES; i++) {
      Point place = simulation.place();
      double error =
          simulation.truth.apply(place).distance(fit.lineUp().carry(place).orElseThrow());
      double radius = fit.lineUp().radius95(place);
      held += error <= radius ? 1.0 / PLACES : 0;
      errors[reported] = error;
      radii[reported] = radius;
    }
    reported++;
  }

  /**
   * "3.4, 9.1; 2 %": median error, the one that 95 % keep within, in pixels, and how many fits were
   * refused or warned of. Errors mean nothing where a wrong pair can't be told from a right one.
   */
  String summary() {
    if (!knowable()) {
      return String.format(Locale.ROOT, "can't be told; %.0f %%", notToldShare());
    }
    String share = refused + warned > 0 ? "; %.0f %%".formatted(notToldShare()) : "";
    return String.format(
        Locale.ROOT, "%.1f, %.1f%s", quantile(errors, 0.5), quantile(errors, 0.95), share);
  }

  private double notToldShare() {
    return 100.0 * (refused + warned) / trials;
  }

  private double quantile(double[] values, double share) {
    double[] sorted = Arrays.copyOf(values, reported);
    Arrays.sort(sorted);
    return reported == 0 ? Double.NaN : sorted[(int) (share * reported)];
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s of %d pairs, %d wrong: %s, stated radius %.1f, covered %.1f %%",
        model.title(),
        pairs,
        wrong,
        summary(),
        quantile(radii, 0.5),
        coverage());
  }
}
