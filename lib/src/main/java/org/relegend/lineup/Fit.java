package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.List;
import org.relegend.map.Point;

/**
 * A line-up fitted to point pairs, with its error. Lengths are in units of the second picture.
 *
 * @param rms root mean square distance of the used pairs from the fit
 * @param p95 distance that 95 % of the used pairs keep within (nearest rank, so of few pairs the
 *     largest)
 * @param scatter standard deviation of one coordinate of a pair, corrected for the freedom the fit
 *     took: what a careful click is good for; assumed where {@code freedom} is 0
 * @param freedom degrees of freedom left to judge the fit by; 0 where the pairs just fix it
 */
public record Fit(
    TransformModel model,
    LineUp lineUp,
    List<PointPair> pairs,
    List<PairError> errors,
    double rms,
    double p95,
    double scatter,
    int freedom,
    List<FitWarning> warnings)
    implements FitResult {

  public Fit {
    requireNonNull(model);
    requireNonNull(lineUp);
    pairs = List.copyOf(pairs);
    errors = List.copyOf(errors);
    warnings = List.copyOf(warnings);
  }

  public Transform transform() {
    return lineUp.transform();
  }

  public boolean mirrors() {
    return transform().mirrors();
  }

  /** Indices of the pairs that the fit uses, rising. */
  public List<Integer> inliers() {
    return errors.stream().filter(PairError::used).map(PairError::pair).toList();
  }

  /** The pairs left out or worth another look, the worst first. */
  public List<PairError> doubtful() {
    return errors.stream()
        .filter(PairError::doubtful)
        .sorted(Comparator.comparingDouble(PairError::leaveOneOut).reversed())
        .toList();
  }

  public boolean warns(FitWarning.Kind kind) {
    return warnings.stream().anyMatch(w -> w.kind() == kind);
  }

  /** The error in millimetres, by the scale of the second picture. */
  public Millimetres errorIn(Scale scale) {
    double[] lengths =
        inliers().stream()
            .map(pairs::get)
            .mapToDouble(pair -> scale.distance(transform().apply(pair.from()), pair.to()))
            .sorted()
            .toArray();
    return new Millimetres(ErrorStatistics.rms(lengths), ErrorStatistics.p95(lengths));
  }

  /**
   * The circle of 95 % round a carried point, in millimetres by the scale of the second picture.
   */
  public double radius95(Point from, Scale scale) {
    return lineUp
        .uncertainty(from)
        .through(scale.toMillimetres().jacobian(transform().apply(from)))
        .radius95();
  }

  /** The error of a fit in millimetres. */
  public record Millimetres(double rms, double p95) {}
}
