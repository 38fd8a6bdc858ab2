package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.relegend.lineup.Refusal.Reason;
import org.relegend.map.Point;

/**
 * Fits a line-up to point pairs, and refuses with one reason where they give none. The same pairs
 * always give the same fit.
 *
 * <p>The fit minimises the squared distances in the second picture. Its stated error is that of its
 * own scatter, carried through (see {@link Uncertainty}); it knows nothing of what the model can't
 * express, such as lens distortion or parts that stand above the board.
 *
 * @param trusting whether every pair is used, however much it disagrees; otherwise wrong pairs are
 *     found and left out
 * @param clickError standard deviation of one coordinate of a click, in units of either picture:
 *     used only where the pairs just fix the fit and so can't tell
 */
public record Fitter(
    TransformModel model, SideRelation facing, boolean trusting, double clickError) {
  private static final int SAMPLES = 1000;
  private static final long SEED = 20_260_101;

  /** Thickness below which points count as lying on a line. */
  private static final double ON_A_LINE = 0.01;

  /** How much less by chance a mirrored fit must be to be believed against what is expected. */
  private static final double DECISIVE = Math.log(1e3);

  public Fitter {
    requireNonNull(model);
    requireNonNull(facing);
    if (!(clickError > 0) || Double.isInfinite(clickError)) {
      throw new IllegalArgumentException("a click's error is above zero, not " + clickError);
    }
  }

  /** Robust, of pictures whose sides aren't known, with clicks good for two pixels. */
  public static Fitter of(TransformModel model) {
    return new Fitter(model, SideRelation.UNKNOWN, false, 2);
  }

  public Fitter expecting(SideRelation sides) {
    return new Fitter(model, sides, trusting, clickError);
  }

  public Fitter trustingAll() {
    return new Fitter(model, facing, true, clickError);
  }

  public Fitter assumingClickError(double deviation) {
    return new Fitter(model, facing, trusting, deviation);
  }

  /** Of pictures whose sizes aren't known: the points' own extents stand for them. */
  public FitResult fit(List<PointPair> pairs) {
    if (pairs.isEmpty()) {
      return tooFew(0);
    }
    return fit(
        pairs,
        Extent.around(pairs.stream().map(PointPair::from).toList()),
        Extent.around(pairs.stream().map(PointPair::to).toList()));
  }

  /** Of pictures that take up these extents. */
  public FitResult fit(List<PointPair> pairs, Extent from, Extent to) {
    if (pairs.size() < model.fewest()) {
      return tooFew(pairs.size());
    }
    Optional<Refusal> unusable = repeated(pairs).or(() -> onALine(pairs));
    if (unusable.isPresent()) {
      return unusable.get();
    }
    Optional<Candidate> straight = candidate(pairs, to, false);
    Optional<Candidate> turned = mirrorsByItself() ? Optional.empty() : candidate(pairs, to, true);
    return better(straight, turned)
        .map(candidate -> judged(candidate.solution, pairs, from, to))
        .orElseGet(() -> pairs.size() == model.fewest() ? folded() : noAgreement());
  }

  private FitResult judged(
      LeastSquaresSolution solution, List<PointPair> pairs, Extent from, Extent to) {
    List<PointPair> used = IntStream.of(solution.members).mapToObj(pairs::get).toList();
    Optional<Refusal> refusal =
        onALine(used).or(() -> folded(solution)).or(() -> wrongSide(solution));
    return refusal.isPresent()
        ? refusal.get()
        : new FitReport(this, solution, pairs, from, to).fit();
  }

  /** Whether the model takes on the mirroring that the points have. */
  private boolean mirrorsByItself() {
    return model == TransformModel.AFFINE || model == TransformModel.HOMOGRAPHY;
  }

  private Optional<Candidate> candidate(List<PointPair> pairs, Extent to, boolean mirrored) {
    boolean oneScale = model == TransformModel.SHIFT || model == TransformModel.RIGID;
    NormalisedPairs coordinates = NormalisedPairs.of(pairs, mirrored, oneScale);
    TransformFamily family = TransformFamily.of(model);
    // a strip counts as if it were broader: pairs along it would else be judged by its width
    double area = Math.max(to.area(), to.diagonal() * to.diagonal() / 4);
    area *= coordinates.toScale * coordinates.toScale;
    Consensus consensus = new Consensus(family, coordinates, model.fewest(), area, SAMPLES);
    Optional<LeastSquaresSolution> solution =
        trusting || pairs.size() == model.fewest()
            ? LeastSquaresSolution.of(
                family, coordinates, IntStream.range(0, pairs.size()).toArray())
            : consensus.find(new SplittableRandom(SEED));
    return solution.map(found -> new Candidate(found, consensus.chance(found)));
  }

  /** The one less explained by chance; where the pairs can hardly tell, the one expected. */
  private Optional<Candidate> better(Optional<Candidate> straight, Optional<Candidate> turned) {
    if (straight.isEmpty() || turned.isEmpty()) {
      return straight.or(() -> turned);
    }
    double gain = straight.get().chance - turned.get().chance;
    double asked =
        switch (facing) {
          case SAME -> DECISIVE;
          case OPPOSITE -> -DECISIVE;
          case UNKNOWN -> 0;
        };
    return gain > asked ? turned : straight;
  }

  /** A solution, and the logarithm of how many as good chance would give. */
  private record Candidate(LeastSquaresSolution solution, double chance) {}

  private Optional<Refusal> wrongSide(LeastSquaresSolution solution) {
    boolean mirrors = solution.transform().mirrors();
    if (mirrors && facing == SideRelation.SAME) {
      return refused(
          Reason.MIRRORED,
          "The pairs fit only if one picture is mirrored, yet both are said to show the same side."
              + " Check the side of each picture, and whether one was flipped.");
    }
    if (!mirrors && facing == SideRelation.OPPOSITE) {
      return refused(
          Reason.NOT_MIRRORED,
          "The pairs fit without mirroring, yet the pictures are said to show opposite sides."
              + " Check the side of each picture, and whether one was flipped.");
    }
    return Optional.empty();
  }

  private static Optional<Refusal> folded(LeastSquaresSolution solution) {
    for (int i : solution.members) {
      if (solution.denominator(i) <= 0) {
        return Optional.of(folded());
      }
    }
    return Optional.empty();
  }

  private static Refusal folded() {
    return new Refusal(
        Reason.FOLDED,
        "The points follow each other in a different order on the two pictures, as no photo can show"
            + " them. Check that each pair is the same spot on both.");
  }

  private Optional<Refusal> onALine(List<PointPair> pairs) {
    if (!mirrorsByItself()) {
      return Optional.empty();
    }
    double thickness =
        Math.min(
            thickness(pairs.stream().map(PointPair::from).toList()),
            thickness(pairs.stream().map(PointPair::to).toList()));
    if (thickness >= ON_A_LINE) {
      return Optional.empty();
    }
    String which =
        model == TransformModel.AFFINE
            ? "The points lie on a line"
            : "All points, or all but one, lie on a line";
    return refused(
        Reason.ON_A_LINE,
        which + ", which fixes no " + model.title() + ". Add a pair well away from that line.");
  }

  /** Of the points that the model hangs on. */
  double thickness(List<Point> points) {
    return model == TransformModel.HOMOGRAPHY
        ? PointSpread.thicknessWithoutOne(points)
        : PointSpread.thickness(points);
  }

  private static Optional<Refusal> repeated(List<PointPair> pairs) {
    for (int i = 0; i < pairs.size(); i++) {
      for (int j = 0; j < i; j++) {
        boolean from = pairs.get(i).from().equals(pairs.get(j).from());
        if (from || pairs.get(i).to().equals(pairs.get(j).to())) {
          return refused(
              Reason.REPEATED_POINT,
              "Pairs %d and %d use the same point of the %s picture. Take one of them away."
                  .formatted(j + 1, i + 1, from ? "first" : "second"));
        }
      }
    }
    return Optional.empty();
  }

  private Refusal tooFew(int count) {
    int missing = model.fewest() - count;
    return new Refusal(
        Reason.TOO_FEW_PAIRS,
        "A %s needs at least %d %s; there %s %d. Add %d more."
            .formatted(
                model.title(),
                model.fewest(),
                model.fewest() == 1 ? "pair" : "pairs",
                count == 1 ? "is" : "are",
                count,
                missing));
  }

  private Refusal noAgreement() {
    return new Refusal(
        Reason.NO_AGREEMENT,
        "No set of pairs agrees on a %s better than chance would have it. Check that both pictures"
                .formatted(model.title())
            + " show the same board, and each pair the same spot.");
  }

  private static Optional<Refusal> refused(Reason reason, String message) {
    return Optional.of(new Refusal(reason, message));
  }
}
