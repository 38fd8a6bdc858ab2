package org.relegend.twin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.lineup.Fit;
import org.relegend.lineup.FitResult;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.Refusal;
import org.relegend.lineup.Transform;
import org.relegend.lineup.TransformModel;
import org.relegend.lineup.Uncertainty;
import org.relegend.map.Point;

/**
 * How one channel lies to its twin on photos: shifted, turned, mirrored and scaled, as one or,
 * where blocks were moved, in groups. A placement that no group takes in is left out.
 */
public final class ChannelFit {
  /** A group needs one pair more than fixes it, so that chance can't make one. */
  private static final int SMALLEST_GROUP = 4;

  private final List<Fit> groups;
  private final List<PointPair> pairs;
  private final Set<Integer> leftOut;

  private ChannelFit(List<Fit> groups, List<PointPair> pairs, Set<Integer> leftOut) {
    this.groups = List.copyOf(groups);
    this.pairs = List.copyOf(pairs);
    this.leftOut = leftOut;
  }

  /** What came of it: a fit, or in words why there is none. */
  public record Result(Optional<ChannelFit> fit, String text) {}

  /**
   * Fits the second channel to the first.
   *
   * @param pairs where twins are placed, in picture units; at least three, since two just fix a fit
   *     and could not tell how far it can be trusted
   */
  public static Result of(List<PointPair> pairs) {
    if (pairs.size() < 3) {
      return new Result(
          Optional.empty(),
          "Place at least three pairs of twins (there are %d): then the rest can be predicted."
              .formatted(pairs.size()));
    }
    List<Fit> groups = new ArrayList<>();
    List<Integer> rest = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      rest.add(i);
    }
    String refusal = "";
    while (rest.size() >= (groups.isEmpty() ? 3 : SMALLEST_GROUP)) {
      FitResult result =
          Fitter.of(TransformModel.SIMILARITY).fit(rest.stream().map(pairs::get).toList());
      if (result instanceof Refusal refused) {
        refusal = refused.message();
        break;
      }
      Fit fit = (Fit) result;
      List<Integer> used = fit.inliers().stream().map(rest::get).toList();
      boolean fewest = used.size() < (groups.isEmpty() ? 3 : SMALLEST_GROUP);
      if (fewest || fit.freedom() < 1) {
        break;
      }
      groups.add(fit);
      rest.removeAll(used);
    }
    int taken = pairs.size() - rest.size();
    if (groups.isEmpty() || 2 * taken < pairs.size()) {
      return new Result(
          Optional.empty(),
          "The layouts don't repeat: of %d placed pairs no more than %d lie to each other in one way."
                  .formatted(pairs.size(), taken)
              + (refusal.isEmpty() ? "" : " " + refusal));
    }
    return new Result(
        Optional.of(new ChannelFit(groups, pairs, new TreeSet<>(rest))), text(groups, rest.size()));
  }

  private static String text(List<Fit> groups, int left) {
    String mirrored = groups.get(0).mirrors() ? ", mirrored" : "";
    String many = groups.size() > 1 ? " in %d groups".formatted(groups.size()) : "";
    String out = left > 0 ? "; %d placed pairs don't fit".formatted(left) : "";
    return "The layouts repeat" + mirrored + many + out + ".";
  }

  /** Indices of the pairs that no group takes in. */
  public Set<Integer> leftOut() {
    return leftOut;
  }

  public int groups() {
    return groups.size();
  }

  /** How far a point of the first channel is from the placed twins of its group, on average. */
  double distance(Point from) {
    Fit fit = nearest(from, true);
    List<Integer> used = fit.inliers();
    double x = used.stream().mapToDouble(i -> fit.pairs().get(i).from().x()).average().orElse(0);
    double y = used.stream().mapToDouble(i -> fit.pairs().get(i).from().y()).average().orElse(0);
    return Math.hypot(from.x() - x, from.y() - y);
  }

  /** What carries the surroundings of this point of the first channel to the second. */
  Transform forwards(Point from) {
    return nearest(from, true).transform();
  }

  Transform backwards(Point from) {
    return nearest(from, false).transform().inverse();
  }

  /** Where the twin of what is at this point of the first channel should lie. */
  public Place forward(Point from) {
    Fit fit = nearest(from, true);
    return place(
        fit.transform().apply(from), fit.lineUp().uncertainty(from), fit.scatter(), fit.freedom());
  }

  /** The other way round: from the second channel to the first. */
  public Place backward(Point from) {
    Fit fit = nearest(from, false);
    double scale = fit.transform().inverse().scaleAt(from);
    return place(
        fit.transform().inverse().apply(from),
        fit.lineUp().reversed().uncertainty(from),
        fit.scatter() * scale,
        fit.freedom());
  }

  /** The group that the placed pair nearest to the point belongs to. */
  private Fit nearest(Point at, boolean forward) {
    return groups.stream()
        .min(Comparator.comparingDouble(fit -> distance(fit, at, forward)))
        .orElseThrow();
  }

  private static double distance(Fit fit, Point at, boolean forward) {
    return fit.inliers().stream()
        .map(fit.pairs()::get)
        .map(pair -> forward ? pair.from() : pair.to())
        .mapToDouble(point -> Math.hypot(point.x() - at.x(), point.y() - at.y()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The error of a single new place is that of the fit and its own scatter together, both estimated
   * by the same residuals.
   */
  private static Place place(Point at, Uncertainty ofFit, double scatter, int freedom) {
    double own = scatter * scatter;
    Uncertainty both =
        new Uncertainty(ofFit.xx() + own, ofFit.xy(), ofFit.yy() + own, Math.max(1, freedom));
    return new Place(at, both.radius95());
  }

  /** All pairs it was fitted to. */
  public List<PointPair> pairs() {
    return pairs;
  }

  /** A predicted place, with the circle that should hold the true one 95 times in 100. */
  public record Place(Point at, double radius95) {}
}
