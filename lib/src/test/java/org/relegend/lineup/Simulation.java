package org.relegend.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.relegend.map.Point;

/** Made-up views of one flat board with known truth: what the fits are measured against. */
final class Simulation {
  static final Extent PICTURE = Extent.of(4000, 3000);

  private final Random random;
  final Transform truth;

  /** A view turned anyhow, up to twice as near or far, and up to 40 degrees from square on. */
  Simulation(long seed) {
    this(seed, TransformModel.HOMOGRAPHY);
  }

  /** A view that the model can express. */
  Simulation(long seed, TransformModel model) {
    random = new Random(seed);
    truth = view(model);
  }

  private Transform view(TransformModel model) {
    double angle = between(-Math.PI, Math.PI);
    double scale = between(0.7, 1.4);
    double slant = Math.toRadians(model == TransformModel.SIMILARITY ? 0 : between(0, 40));
    double towards = between(-Math.PI, Math.PI);
    double distance =
        model == TransformModel.HOMOGRAPHY ? between(1.5, 3) * PICTURE.diagonal() / 2 : 1e12;
    Transform turned = turn(angle).after(Transform.scale(scale));
    Transform leant =
        new Transform(Math.cos(slant), 0, 0, 0, 1, 0, Math.sin(slant) / distance / scale, 0, 1);
    Transform view = turn(-towards).after(leant).after(turn(towards)).after(turned);
    Point centre = PICTURE.centre();
    return Transform.shift(centre.x(), centre.y())
        .after(view)
        .after(Transform.shift(-centre.x(), -centre.y()));
  }

  private static Transform turn(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Transform(c, -s, 0, s, c, 0, 0, 0, 1);
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Somewhere on the board, which takes up the middle nine tenths of the first picture. */
  Point place() {
    return new Point(between(0.05, 0.95) * PICTURE.width(), between(0.05, 0.95) * PICTURE.height());
  }

  /**
   * Clicked pairs, by turns somewhere in each quarter of the board: both points with noise, the
   * first few of them wrong altogether.
   */
  List<PointPair> pairs(int count, int wrong, double noise) {
    List<PointPair> pairs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point anywhere = place();
      double x = anywhere.x() / 2 + (i % 4 == 1 || i % 4 == 2 ? PICTURE.width() / 2 : 0);
      double y = anywhere.y() / 2 + (i % 4 >= 2 ? PICTURE.height() / 2 : 0);
      Point place = new Point(x, y);
      Point seen = truth.apply(i < wrong ? place() : place);
      pairs.add(new PointPair(clicked(place, noise), clicked(seen, noise)));
    }
    return pairs;
  }

  Point clicked(Point place, double noise) {
    return place.plus(noise * random.nextGaussian(), noise * random.nextGaussian());
  }
}
