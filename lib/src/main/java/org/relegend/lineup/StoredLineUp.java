package org.relegend.lineup;

import java.util.List;
import java.util.Optional;
import org.relegend.lineup.Refusal.Reason;
import org.relegend.map.BoardMap;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;

/**
 * What the pairs of two pictures that a map keeps come to.
 *
 * @param lineUp from the first picture to the second
 * @param fit what is known of each pair, where they were clicked
 */
public record StoredLineUp(PicturePairs pairs, LineUp lineUp, Optional<Fit> fit) {

  /** Either a line-up, or why there is none. */
  public sealed interface Result {
    PicturePairs pairs();
  }

  /** Lined up. */
  public record Lined(StoredLineUp kept) implements Result {
    @Override
    public PicturePairs pairs() {
      return kept.pairs();
    }
  }

  /** The pairs give no line-up. */
  public record Refused(PicturePairs pairs, Refusal refusal) implements Result {}

  /** Fits the pairs; none where the map lacks one of the pictures. */
  static Optional<Result> of(BoardMap map, PicturePairs pairs) {
    return map.picture(pairs.a()).flatMap(a -> map.picture(pairs.b()).map(b -> of(a, b, pairs)));
  }

  private static Result of(Picture a, Picture b, PicturePairs pairs) {
    List<PointPair> points =
        pairs.spots().stream().map(spot -> new PointPair(spot.onA(), spot.onB())).toList();
    if (pairs.origin() == Origin.AUTOMATIC) {
      return matched(a, b, points)
          .<Result>map(lineUp -> new Lined(new StoredLineUp(pairs, lineUp, Optional.empty())))
          .orElseGet(() -> new Refused(pairs, tooFew()));
    }
    FitResult result =
        Fitter.of(model(a, points.size()))
            .expecting(facing(a, b))
            .fit(points, Extent.of(a.width(), a.height()), Extent.of(b.width(), b.height()));
    return result instanceof Fit fit
        ? new Lined(new StoredLineUp(pairs, fit.lineUp(), Optional.of(fit)))
        : new Refused(pairs, (Refusal) result);
  }

  private static Optional<LineUp> matched(Picture a, Picture b, List<PointPair> points) {
    return a instanceof Page
        ? ScanLineUp.ofMatches(points, Extent.of(b.width(), b.height()))
        : MatchedLineUp.of(points).map(lineUp -> lineUp);
  }

  private static Refusal tooFew() {
    return new Refusal(
        Reason.NO_AGREEMENT,
        "What was matched by itself agrees on nothing. Line the photos up again.");
  }

  /**
   * What clicked pairs are fitted with: scans of a page are flat to each other, photos are seen in
   * perspective, and a plainer fit of photos would only look right.
   *
   * @param picture either of the two
   */
  public static TransformModel model(Picture picture, int pairs) {
    if (picture instanceof Page) {
      return pairs > 3 ? TransformModel.AFFINE : TransformModel.SIMILARITY;
    }
    return TransformModel.HOMOGRAPHY;
  }

  /** What two pictures of the map are known to show of the board. */
  public static SideRelation facing(Picture a, Picture b) {
    return a instanceof Photo first && b instanceof Photo second && first.side() != second.side()
        ? SideRelation.OPPOSITE
        : SideRelation.SAME;
  }
}
