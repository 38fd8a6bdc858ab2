package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.relegend.map.Point;

/**
 * A board as it is seen square on: what four corners of a rectangle of known size, on a photo taken
 * askew, tell of how the photo is to be drawn. Right for what lies on the board; what stands above
 * it leans as it does on the photo.
 *
 * @param toPhoto from pixels of the drawing to pixels of the photo
 * @param width of the drawing, in pixels
 * @param height of the drawing, in pixels
 * @param pixelsPerMillimetre of the drawing, the same everywhere and in both directions
 */
public record Rectification(Transform toPhoto, int width, int height, double pixelsPerMillimetre) {
  /** What is drawn round the rectangle, as a share of its longer side. */
  private static final double MARGIN = 0.04;

  private static final double MOST_PIXELS = 24e6;

  /** How much better the sides must suit the exchanged size to call it exchanged, as a factor. */
  private static final double EXCHANGED = 2;

  /** Least height of the rectangle on the photo, as a share of its width. */
  private static final double THIN = 0.02;

  /**
   * From the corners, in any order. The one nearest the photo's upper left corner becomes the upper
   * left one. As many pixels as the rectangle takes on the photo, 24 million at most.
   *
   * @param corners four points of the photo
   * @param width of the rectangle, along its upper edge, in millimetres
   * @param height of the rectangle, in millimetres
   * @throws IllegalArgumentException where they are no corners of such a rectangle; the message
   *     says why
   */
  public static Rectification of(List<Point> corners, double width, double height) {
    if (!(width > 0 && height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
      throw new IllegalArgumentException(
          "width and height of the board are two lengths above 0 mm");
    }
    List<Point> round = clockwise(corners);
    double across = round.get(0).distance(round.get(1)) + round.get(3).distance(round.get(2));
    double down = round.get(1).distance(round.get(2)) + round.get(0).distance(round.get(3));
    if (misfit(across / down, height / width) * EXCHANGED < misfit(across / down, width / height)) {
      throw new IllegalArgumentException(
          "these corners are %s, the size given is not: exchange width and height"
              .formatted(across > down ? "wider than high" : "higher than wide"));
    }
    double area = PointSpread.area(round);
    double margin = MARGIN * Math.max(width, height);
    double wide = width + 2 * margin;
    double high = height + 2 * margin;
    double scale =
        Math.min(Math.sqrt(area / (width * height)), Math.sqrt(MOST_PIXELS / (wide * high)));
    List<Point> drawn =
        List.of(
            new Point(margin * scale, margin * scale),
            new Point((margin + width) * scale, margin * scale),
            new Point((margin + width) * scale, (margin + height) * scale),
            new Point(margin * scale, (margin + height) * scale));
    return new Rectification(
        through(drawn, round),
        Math.max(1, (int) Math.rint(wide * scale)),
        Math.max(1, (int) Math.rint(high * scale)),
        scale);
  }

  /** By how much two ratios differ, as a factor of 1 or more. */
  private static double misfit(double ratio, double other) {
    return Math.exp(Math.abs(Math.log(ratio / other)));
  }

  private static List<Point> clockwise(List<Point> corners) {
    if (corners.size() != 4) {
      throw new IllegalArgumentException("four corners are needed, not " + corners.size());
    }
    // with y downwards, the hull's order is clockwise as it is seen
    List<Point> hull = PointSpread.hull(corners);
    double size = Extent.around(corners).diagonal();
    if (hull.size() < 4 || PointSpread.area(hull) < THIN * size * size) {
      throw new IllegalArgumentException(
          "these four points are no corners of a rectangle seen from anywhere: one lies inside or"
              + " on the line of the others");
    }
    int first =
        IntStream.range(0, 4)
            .boxed()
            .min(Comparator.comparingDouble(i -> hull.get(i).x() + hull.get(i).y()))
            .orElseThrow();
    return IntStream.range(0, 4).mapToObj(i -> hull.get((first + i) % 4)).toList();
  }

  private static Transform through(List<Point> from, List<Point> to) {
    List<PointPair> pairs = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      pairs.add(new PointPair(from.get(i), to.get(i)));
    }
    int[] all = {0, 1, 2, 3};
    return LeastSquaresSolution.of(
            HomographyFamily.HOMOGRAPHY, NormalisedPairs.of(pairs, false, false), all)
        .map(LeastSquaresSolution::transform)
        .orElseThrow(
            () -> new IllegalArgumentException("these four corners fix no view of a rectangle"));
  }

  /**
   * Spots spread over the drawing, each with its place on the photo, as far as it lies on it.
   *
   * @param photo the photo's size
   */
  public List<PointPair> spots(Extent photo) {
    List<PointPair> spots = new ArrayList<>();
    int steps = 6;
    for (int row = 0; row <= steps; row++) {
      for (int column = 0; column <= steps; column++) {
        Point drawn = new Point(hundredths(width, column, steps), hundredths(height, row, steps));
        if (toPhoto.denominator(drawn) > 0) {
          Point there = toPhoto.apply(drawn);
          if (photo.contains(there)) {
            spots.add(new PointPair(drawn, there));
          }
        }
      }
    }
    return spots;
  }

  private static double hundredths(double size, int step, int steps) {
    return Math.rint(100 * size * step / steps) / 100;
  }
}
