package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.relegend.lineup.FitWarning.Kind;
import org.relegend.map.Point;

/** Works out what a solution is worth: its errors, and the warnings it deserves. */
final class FitReport {
  /** Up to so many members a fit is made anew without each; beyond, the linear formula will do. */
  private static final int REFITTED = 40;

  private static final double NEARLY_ON_A_LINE = 0.1;

  /** Share of the picture's area below which the points' hull is crowded. */
  private static final double CROWDED = 0.1;

  /** Slant (length ratio of directions) of a board seen at 60 degrees. */
  private static final double SLANTED = 2;

  /** Share of the picture's diagonal that careful clicks stay well below. */
  private static final double LARGE_ERROR = 0.005;

  private final Fitter fitter;
  private final LeastSquaresSolution solution;
  private final Transform transform;
  private final List<PointPair> pairs;
  private final List<PointPair> used;
  private final Extent from;
  private final Extent to;

  FitReport(
      Fitter fitter, LeastSquaresSolution solution, List<PointPair> pairs, Extent from, Extent to) {
    this.fitter = fitter;
    this.solution = solution;
    this.pairs = pairs;
    this.from = from;
    this.to = to;
    transform = solution.transform();
    used = IntStream.of(solution.members).mapToObj(pairs::get).toList();
  }

  Fit fit() {
    List<PairError> errors = IntStream.range(0, pairs.size()).mapToObj(this::error).toList();
    double[] lengths =
        errors.stream().filter(PairError::used).mapToDouble(PairError::residual).sorted().toArray();
    int freedom = solution.freedom();
    double scatter =
        freedom > 0 ? Math.sqrt(solution.variance()) / solution.pairs.toScale : assumedScatter();
    LineUp lineUp =
        new FittedLineUp(solution, scatter, freedom > 0 ? freedom : Double.POSITIVE_INFINITY);
    return new Fit(
        fitter.model(),
        lineUp,
        pairs,
        errors,
        ErrorStatistics.rms(lengths),
        ErrorStatistics.p95(lengths),
        scatter,
        freedom,
        warnings(errors, scatter));
  }

  /** Clicks err on both pictures; the first one's error is seen through the fit. */
  private double assumedScatter() {
    double scale = transform.scaleAt(middle());
    return fitter.clickError() * Math.hypot(1, scale);
  }

  private Point middle() {
    return NormalisedPairs.centroid(froms());
  }

  private List<Point> froms() {
    return used.stream().map(PointPair::from).toList();
  }

  private PairError error(int pair) {
    boolean member = Arrays.binarySearch(solution.members, pair) >= 0;
    double residual = Math.sqrt(solution.squaredResidual(pair)) / solution.pairs.toScale;
    return new PairError(
        pair,
        member,
        residual,
        member ? leaveOneOut(pair) : residual,
        PairSelection.odds(solution, pair));
  }

  private double leaveOneOut(int pair) {
    if (solution.members.length <= REFITTED) {
      return solution
          .without(pair)
          .map(without -> Math.sqrt(without.squaredResidual(pair)) / solution.pairs.toScale)
          .orElse(Double.POSITIVE_INFINITY);
    }
    SymmetricMatrix free = SymmetricMatrix.ONE.minus(solution.leverage(pair)).inverse();
    double x = solution.residualX(pair);
    double y = solution.residualY(pair);
    return Math.hypot(free.xx() * x + free.xy() * y, free.xy() * x + free.yy() * y)
        / solution.pairs.toScale;
  }

  private List<FitWarning> warnings(List<PairError> errors, double scatter) {
    List<FitWarning> warnings = new ArrayList<>();
    String out =
        errors.stream()
            .filter(e -> !e.used())
            .map(e -> "%d (off by %.0f)".formatted(e.pair() + 1, e.residual()))
            .collect(Collectors.joining(", "));
    add(
        warnings,
        !out.isEmpty(),
        Kind.WRONG_PAIRS,
        "Left out, since the other pairs agree without them: pair " + out + ".");
    add(
        warnings,
        solution.freedom() == 0,
        Kind.EXACT,
        "So few pairs always fit, also if one is wrong: the stated error is assumed. Add a pair to"
            + " have it measured.");
    add(
        warnings,
        nearlyOnALine(),
        Kind.NEARLY_ON_A_LINE,
        "The points lie nearly on a line, so the fit is weak away from it. Add a pair to the side.");
    add(
        warnings,
        crowded(),
        Kind.CROWDED,
        "The points take up a small part of the picture, so the fit is weak elsewhere. Add pairs"
            + " near the other corners.");
    add(
        warnings,
        from.corners().stream().anyMatch(corner -> transform.denominator(corner) <= 0),
        Kind.FOLDS,
        "Part of the picture lies beyond the horizon of this fit. Check the pairs, or add some near"
            + " the corners.");
    add(
        warnings,
        transform.jacobian(middle()).slant() > SLANTED,
        Kind.SLANTED,
        "By this fit one picture was taken at more than 60 degrees from square on. If it was not, a"
            + " pair is wrong.");
    add(
        warnings,
        solution.freedom() > 0 && scatter > LARGE_ERROR * to.diagonal(),
        Kind.LARGE_ERROR,
        "The pairs are further from the fit than careful clicks are. One is wrong, or the model is"
            + " too plain for these pictures.");
    return warnings;
  }

  private boolean nearlyOnALine() {
    return fitter.model().fewest() > 2 && fitter.thickness(froms()) < NEARLY_ON_A_LINE;
  }

  private boolean crowded() {
    return used.size() > 2
        && from.area() > 0
        && PointSpread.area(PointSpread.hull(froms())) < CROWDED * from.area();
  }

  private static void add(List<FitWarning> warnings, boolean applies, Kind kind, String message) {
    if (applies) {
      warnings.add(new FitWarning(kind, message));
    }
  }
}
