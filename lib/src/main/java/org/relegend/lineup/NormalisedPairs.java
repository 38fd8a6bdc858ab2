package org.relegend.lineup;

import java.util.List;
import org.relegend.map.Point;

/**
 * Point pairs in a frame that is kind to arithmetic: centroids at zero, mean distance from it the
 * square root of two (Hartley and Zisserman, Multiple View Geometry, 4.4; rule from memory). The
 * second picture's frame is shifted and scaled only, so least squares there are least squares in
 * its pixels. For a mirrored fit the first picture's frame is also turned over left to right, so
 * that no family of transforms needs a mirrored twin.
 */
final class NormalisedPairs {
  final double[] fromX;
  final double[] fromY;
  final double[] toX;
  final double[] toY;
  final Transform fromFrame;
  final Transform toFrame;

  /** Normalised units of the second picture per unit of the picture itself. */
  final double toScale;

  private NormalisedPairs(List<PointPair> pairs, Transform fromFrame, Transform toFrame) {
    int n = pairs.size();
    this.fromFrame = fromFrame;
    this.toFrame = toFrame;
    toScale = toFrame.m00();
    fromX = new double[n];
    fromY = new double[n];
    toX = new double[n];
    toY = new double[n];
    for (int i = 0; i < n; i++) {
      Point from = fromFrame.apply(pairs.get(i).from());
      Point to = toFrame.apply(pairs.get(i).to());
      fromX[i] = from.x();
      fromY[i] = from.y();
      toX[i] = to.x();
      toY[i] = to.y();
    }
  }

  /**
   * @param oneScale both frames scaled alike, for families that can't scale
   */
  static NormalisedPairs of(List<PointPair> pairs, boolean mirrored, boolean oneScale) {
    List<Point> from = pairs.stream().map(PointPair::from).toList();
    List<Point> to = pairs.stream().map(PointPair::to).toList();
    Transform toFrame = frame(to, spread(to));
    Transform fromFrame = frame(from, spread(oneScale ? to : from));
    Transform flip = new Transform(mirrored ? -1 : 1, 0, 0, 0, 1, 0, 0, 0, 1);
    return new NormalisedPairs(pairs, flip.after(fromFrame), toFrame);
  }

  /** The transform between the pictures of one between the frames. */
  Transform unframed(Transform framed) {
    return toFrame.inverse().after(framed).after(fromFrame);
  }

  int size() {
    return fromX.length;
  }

  /**
   * The frame for points: centroid to zero, and the given mean distance to the square root of 2.
   */
  static Transform frame(List<Point> points, double spread) {
    Point centre = centroid(points);
    double scale = spread > 0 ? Math.sqrt(2) / spread : 1;
    return Transform.scale(scale).after(Transform.shift(-centre.x(), -centre.y()));
  }

  /** Mean distance from the centroid. */
  static double spread(List<Point> points) {
    Point centre = centroid(points);
    return points.stream().mapToDouble(centre::distance).average().orElse(0);
  }

  static Point centroid(List<Point> points) {
    double x = 0;
    double y = 0;
    for (Point p : points) {
      x += p.x();
      y += p.y();
    }
    return new Point(x / points.size(), y / points.size());
  }
}
