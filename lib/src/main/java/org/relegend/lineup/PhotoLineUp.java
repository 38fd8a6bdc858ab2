package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.relegend.lineup.PhotoResult.Aligned;
import org.relegend.lineup.PhotoResult.Evidence;
import org.relegend.lineup.PhotoResult.Reason;
import org.relegend.lineup.PhotoResult.Unaligned;
import org.relegend.lineup.ViewRefinement.View;
import org.relegend.map.Point;

/**
 * Lines up two photos of the same side of a board without clicks: features that look alike, the
 * views that some of them agree on, and small patches that confirm and refine the right one. It
 * never guesses: what isn't confirmed over a good part of a picture, and much better than any other
 * view, is refused with a reason. The same photos always give the same answer.
 *
 * <p>It works at no more than two megapixels, since what limits the result is that parts stand
 * above the board and that lenses bend. Limit: where each photo shows only one of two equal
 * circuits, and not the same one, nothing in them tells that they are not the same.
 */
public final class PhotoLineUp {
  private static final int WORKING_PIXELS = 2_000_000;
  private static final int FEWEST_FEATURES = 60;
  private static final int SAMPLES = 4000;
  private static final long SEED = 20_260_102;

  /** Views looked into: a repeated circuit gives as many as it has copies. */
  private static final int VIEWS = 4;

  /** Share of the second picture's diagonal that features may be off a view and still agree. */
  private static final double AGREES = 0.02;

  private static final double LARGEST_SCALE = 6;
  private static final double STEEPEST = 2.5;

  /**
   * Share of the second picture's diagonal that two views put the middle apart by, if different.
   */
  private static final double APART = 0.02;

  /** How many times as many patches must confirm a view as its rival. */
  private static final double MARGIN = 1.5;

  /** Distance from the plane, in working pixels, within which a patch confirms it. */
  private static final double CONFIRMS = 2;

  /** Distance, in working pixels, that low parts and lenses put patches off the plane. */
  private static final double NEAR = 6;

  private static final int FEWEST_ROUGHLY = 20;
  private static final int FEWEST_FINELY = 40;
  private static final double CONFIRMING_SHARE = 0.35;
  private static final double LEAST_SPREAD = 0.15;

  private final GreyImage from;
  private final GreyImage to;
  private final BooleanSupplier cancelled;

  private List<Point> spots = List.of();
  private int features;
  private int candidates;
  private int agreeing;
  private int patches;
  private int confirming;
  private int rival;
  private double spread;
  private double rms;
  private double p95;

  private PhotoLineUp(GreyImage from, GreyImage to, BooleanSupplier cancelled) {
    this.from = from;
    this.to = to;
    this.cancelled = cancelled;
  }

  /** Without being asked to give up. */
  public static PhotoResult of(GreyImage from, GreyImage to) {
    return of(from, to, () -> false);
  }

  /**
   * @param cancelled asked now and then whether to give up
   * @throws CancellationException once it says so
   */
  public static PhotoResult of(GreyImage from, GreyImage to, BooleanSupplier cancelled) {
    return new PhotoLineUp(from, to, cancelled).run();
  }

  private PhotoResult run() {
    List<Prepared> both = Stream.of(from, to).parallel().map(this::prepared).toList();
    Prepared a = both.get(0);
    Prepared b = both.get(1);
    spots = a.features.all();
    features = Math.min(spots.size(), b.features.all().size());
    if (features < FEWEST_FEATURES) {
      return refused(Reason.TOO_PLAIN);
    }
    List<Transform> views = views(FeatureMatcher.pairs(a.features, b.features));
    if (views.isEmpty()) {
      return refused(Reason.NO_AGREEMENT);
    }
    List<Transform> likely = views.stream().filter(this::likely).toList();
    return likely.isEmpty()
        ? refused(Reason.UNLIKELY)
        : best(likely, new ViewRefinement(from, a.image, b.image, this::proceed));
  }

  /** A photo at the size that is worked at, and its features. */
  private record Prepared(GreyImage.Scaled image, FeatureMatcher.Features features) {}

  private Prepared prepared(GreyImage photo) {
    proceed();
    GreyImage.Scaled image = photo.scaled(WORKING_PIXELS);
    proceed();
    // at half the size in each direction: larger structures tell more, and are seen through blur
    return new Prepared(image, FeatureMatcher.features(image.halved()));
  }

  /** The similarities that features agree on, one after the other. */
  private List<Transform> views(List<PointPair> pairs) {
    candidates = pairs.size();
    List<PointPair> left = new ArrayList<>(pairs);
    List<Transform> views = new ArrayList<>();
    while (views.size() < VIEWS && left.size() > TransformModel.SIMILARITY.fewest()) {
      proceed();
      Optional<LeastSquaresSolution> agreed = agreed(left);
      if (agreed.isEmpty()) {
        break;
      }
      int[] members = agreed.get().members;
      agreeing = Math.max(agreeing, members.length);
      views.add(agreed.get().transform());
      for (int i = members.length - 1; i >= 0; i--) {
        left.remove(members[i]);
      }
    }
    return views;
  }

  private Optional<LeastSquaresSolution> agreed(List<PointPair> pairs) {
    NormalisedPairs coordinates = NormalisedPairs.of(pairs, false, false);
    double scale = coordinates.toScale;
    double area = to.extent().area() * scale * scale;
    return new Consensus(
            LinearFamily.SIMILARITY, coordinates, TransformModel.SIMILARITY.fewest(), area, SAMPLES)
        .within(AGREES * to.extent().diagonal() * scale)
        .agreeing(new SplittableRandom(SEED))
        .flatMap(members -> LeastSquaresSolution.of(LinearFamily.SIMILARITY, coordinates, members));
  }

  /** Whether two photos of one board would be related like this. */
  private boolean likely(Transform transform) {
    Jacobian middle = transform.jacobian(from.extent().centre());
    return !transform.mirrors()
        && middle.slant() < STEEPEST
        && middle.scale() < LARGEST_SCALE
        && middle.scale() > 1 / LARGEST_SCALE
        && from.extent().corners().stream().allMatch(p -> transform.denominator(p) > 0);
  }

  private PhotoResult best(List<Transform> views, ViewRefinement refinement) {
    List<View> rough =
        views.stream()
            .map(refinement::roughly)
            .sorted(Comparator.comparingInt(view -> -view.within(CONFIRMS).size()))
            .toList();
    View best = rough.get(0);
    int support = best.within(CONFIRMS).size();
    rival =
        rough.stream()
            .filter(view -> different(view, best))
            .mapToInt(view -> view.within(CONFIRMS).size())
            .max()
            .orElse(0);
    patches = best.patches().size();
    confirming = support;
    if (support < FEWEST_ROUGHLY || !likely(best.transform())) {
      return refused(Reason.UNCONFIRMED);
    }
    return support < MARGIN * rival ? refused(Reason.AMBIGUOUS) : judged(refinement.finely(best));
  }

  private boolean different(View view, View best) {
    Point centre = from.extent().centre();
    return view.transform().denominator(centre) <= 0
        || view.transform().apply(centre).distance(best.transform().apply(centre))
            > APART * to.extent().diagonal();
  }

  private PhotoResult judged(View view) {
    List<PointPair> onPlane = view.within(CONFIRMS);
    patches = view.patches().size();
    confirming = onPlane.size();
    boolean confirmed =
        confirming >= FEWEST_FINELY
            && confirming >= CONFIRMING_SHARE * patches
            && likely(view.transform());
    if (!confirmed) {
      return refused(Reason.UNCONFIRMED);
    }
    measure(onPlane, view.transform());
    if (spread < LEAST_SPREAD) {
      return refused(Reason.TOO_NARROW);
    }
    NormalisedPairs coordinates = NormalisedPairs.of(onPlane, false, false);
    int[] all = IntStream.range(0, confirming).toArray();
    List<PointPair> matches = view.within(NEAR);
    return LeastSquaresSolution.of(HomographyFamily.HOMOGRAPHY, coordinates, all)
        .<PhotoResult>map(
            solution ->
                new Aligned(new MatchedLineUp(solution, matches), onPlane, matches, evidence()))
        .orElseGet(() -> refused(Reason.TOO_NARROW));
  }

  private void measure(List<PointPair> pairs, Transform transform) {
    double[] distances =
        pairs.stream()
            .mapToDouble(pair -> transform.apply(pair.from()).distance(pair.to()))
            .sorted()
            .toArray();
    rms = ErrorStatistics.rms(distances);
    p95 = ErrorStatistics.p95(distances);
    double onFirst =
        PointSpread.area(PointSpread.hull(pairs.stream().map(PointPair::from).toList()));
    double onSecond =
        PointSpread.area(PointSpread.hull(pairs.stream().map(PointPair::to).toList()));
    spread = Math.max(onFirst / from.extent().area(), onSecond / to.extent().area());
  }

  private Evidence evidence() {
    return new Evidence(
        features, candidates, agreeing, patches, confirming, rival, spread, rms, p95);
  }

  private Unaligned refused(Reason reason) {
    return new Unaligned(reason, PairSuggestions.first(from.extent(), spots), evidence());
  }

  private void proceed() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("lining up was given up");
    }
  }
}
