package org.relegend.demo.photo;

import org.relegend.demo.design.Spot;
import org.relegend.demo.ray.Ray;
import org.relegend.demo.ray.Vec;

/**
 * A camera over the board. Places are in millimetres of the view: x to the right and y down on the
 * face that looks at the camera, z towards it.
 *
 * @param eye the lens's middle
 * @param target the place of the face in the middle of the picture
 * @param roll how far the camera is turned about its axis, degrees; the picture turns the other way
 * @param focal focal length in pixels
 * @param width picture width in pixels
 * @param height picture height in pixels
 * @param k1 radial lens distortion: a point at radius r (in focal lengths) in the picture shows
 *     what an ideal lens would show at r (1 + k1 r² + k2 r⁴)
 * @param k2 see {@code k1}
 * @param parallax how far tall parts lean: 1 as perspective has it, 0 not at all
 */
public record Camera(
    Vec eye,
    Spot target,
    double roll,
    double focal,
    int width,
    int height,
    double k1,
    double k2,
    double parallax) {
  public Camera {
    if (eye.z() < 50 || width < 1 || height < 1 || !(focal > 0)) {
      throw new IllegalArgumentException("a camera needs height, size and focal length: " + eye);
    }
  }

  /** The same camera with a picture of another size showing the same. */
  public Camera scaled(double factor) {
    return new Camera(
        eye,
        target,
        roll,
        focal * factor,
        (int) Math.rint(width * factor),
        (int) Math.rint(height * factor),
        k1,
        k2,
        parallax);
  }

  public Camera withLens(double first, double second) {
    return new Camera(eye, target, roll, focal, width, height, first, second, parallax);
  }

  public Camera withParallax(double share) {
    return new Camera(eye, target, roll, focal, width, height, k1, k2, share);
  }

  public Camera from(Vec place, Spot at, double turned) {
    return new Camera(place, at, turned, focal, width, height, k1, k2, parallax);
  }

  /** What precedes any number of pixels: the camera's axes worked out once. */
  public View view() {
    return new View(this);
  }

  /** A camera's axes, ready to turn pixels into lines of sight and back. */
  public static final class View {
    private final Camera camera;
    private final Vec ahead;
    private final Vec right;
    private final Vec down;

    View(Camera camera) {
      this.camera = camera;
      ahead = new Vec(camera.target.x(), camera.target.y(), 0).minus(camera.eye).unit();
      Vec level = new Vec(1, 0, 0);
      Vec across = level.minus(ahead.times(level.dot(ahead))).unit();
      Vec below = ahead.cross(across).times(-1);
      double angle = StrictMath.toRadians(camera.roll);
      double c = StrictMath.cos(angle);
      double s = StrictMath.sin(angle);
      right = across.times(c).plus(below.times(s));
      down = below.times(c).minus(across.times(s));
    }

    /**
     * The line of sight of a picture point, in pixels with whole numbers at pixel corners. It
     * starts at height {@code top} and sinks one millimetre per unit of its length.
     */
    public void aim(double px, double py, double top, Ray ray) {
      double x = (px - camera.width / 2.0) / camera.focal;
      double y = (py - camera.height / 2.0) / camera.focal;
      double square = x * x + y * y;
      double stretch = 1 + square * (camera.k1 + square * camera.k2);
      x *= stretch;
      y *= stretch;
      double dx = ahead.x() + right.x() * x + down.x() * y;
      double dy = ahead.y() + right.y() * x + down.y() * y;
      double dz = ahead.z() + right.z() * x + down.z() * y;
      double groundX = camera.eye.x() - camera.eye.z() * dx / dz;
      double groundY = camera.eye.y() - camera.eye.z() * dy / dz;
      double slantX = camera.parallax * (camera.eye.x() - groundX) / camera.eye.z();
      double slantY = camera.parallax * (camera.eye.y() - groundY) / camera.eye.z();
      ray.set(groundX + slantX * top, groundY + slantY * top, top, -slantX, -slantY, -1);
    }

    /** The picture point, in pixels, at which a place of the view is seen. */
    public Spot see(Vec place) {
      double lift = camera.parallax * place.z() / camera.eye.z();
      Vec ground =
          new Vec(
              (place.x() - lift * camera.eye.x()) / (1 - lift),
              (place.y() - lift * camera.eye.y()) / (1 - lift),
              0);
      Vec sight = ground.minus(camera.eye);
      double depth = sight.dot(ahead);
      double x = sight.dot(right) / depth;
      double y = sight.dot(down) / depth;
      double wanted = Math.sqrt(x * x + y * y);
      double shrink = wanted == 0 ? 1 : distorted(wanted) / wanted;
      return new Spot(
          camera.width / 2.0 + camera.focal * x * shrink,
          camera.height / 2.0 + camera.focal * y * shrink);
    }

    /** The picture radius r with r (1 + k1 r² + k2 r⁴) = ideal, by Newton's method. */
    private double distorted(double ideal) {
      double r = ideal;
      for (int k = 0; k < 20; k++) {
        double square = r * r;
        double value = r * (1 + square * (camera.k1 + square * camera.k2)) - ideal;
        double slope = 1 + square * (3 * camera.k1 + 5 * square * camera.k2);
        r -= value / slope;
      }
      return r;
    }
  }
}
