package org.relegend.demo.ray;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex body: what lies inside all of its quadrics and behind all of its planes. Immutable once
 * built.
 */
public final class Solid {
  static final Solid NOTHING = new Solid(new Builder(Paint.of(0, 1)));

  private final Quadric[] quadrics;
  private final double[] planes;
  final Skin skin;
  final Vec low;
  final Vec high;
  private final List<Vec> hull;

  private Solid(Builder builder) {
    quadrics = builder.quadrics.toArray(new Quadric[0]);
    planes = builder.planes.stream().mapToDouble(Double::doubleValue).toArray();
    skin = builder.skin;
    low = builder.low;
    high = builder.high;
    hull = List.copyOf(builder.hull);
  }

  public Skin skin() {
    return skin;
  }

  /** Points whose convex hull is, or closely surrounds, the body. */
  public List<Vec> hull() {
    return hull;
  }

  /**
   * Whether the line enters the body after {@code from} and before {@code to}; notes t and face.
   */
  boolean meets(Ray ray, double from, double to, Hit hit) {
    hit.enter = Double.NEGATIVE_INFINITY;
    hit.leave = Double.POSITIVE_INFINITY;
    hit.enterFace = -1;
    for (int k = 0; k < quadrics.length; k++) {
      if (!quadrics[k].narrow(ray, hit, k)) {
        return false;
      }
    }
    for (int k = 0; k < planes.length; k += 4) {
      double speed = planes[k] * ray.dx + planes[k + 1] * ray.dy + planes[k + 2] * ray.dz;
      double gap =
          planes[k + 3] - planes[k] * ray.ox - planes[k + 1] * ray.oy - planes[k + 2] * ray.oz;
      if (speed > -1e-12 && speed < 1e-12) {
        if (gap < 0) {
          return false;
        }
      } else {
        double t = gap / speed;
        if (speed < 0) {
          if (t > hit.enter) {
            hit.enter = t;
            hit.enterFace = quadrics.length + k / 4;
          }
        } else if (t < hit.leave) {
          hit.leave = t;
        }
        if (hit.enter >= hit.leave) {
          return false;
        }
      }
    }
    return hit.enter > from && hit.enter < to;
  }

  void normal(Hit hit) {
    if (hit.face < quadrics.length) {
      quadrics[hit.face].normal(hit.x, hit.y, hit.z, hit);
    } else {
      int k = (hit.face - quadrics.length) * 4;
      hit.nx = planes[k];
      hit.ny = planes[k + 1];
      hit.nz = planes[k + 2];
    }
  }

  /** Collects quadrics and planes; the body must be bounded by {@link #bounds} or an ellipsoid. */
  public static final class Builder {
    private static final double[] RING = ring();

    private final Skin skin;
    private final List<Quadric> quadrics = new ArrayList<>();
    private final List<Double> planes = new ArrayList<>();
    private final List<Vec> hull = new ArrayList<>();
    private Vec low = new Vec(-1e9, -1e9, -1e9);
    private Vec high = new Vec(1e9, 1e9, 1e9);

    public Builder(Skin skin) {
      this.skin = skin;
    }

    public Builder ellipsoid(Frame frame, double a, double b, double c) {
      Quadric quadric = Quadric.ellipsoid(frame, a, b, c);
      quadrics.add(quadric);
      bounds(frame.origin(), quadric.reach(frame, a, b, c));
      for (int k = 0; k < RING.length; k += 2) {
        hull.add(frame.point(a * RING[k], b * RING[k + 1], 0));
        hull.add(frame.point(a * RING[k], 0, c * RING[k + 1]));
        hull.add(frame.point(0, b * RING[k], c * RING[k + 1]));
      }
      return this;
    }

    /** A cylinder of radii a, b about w, from {@code -half} to {@code +half}, closed by planes. */
    public Builder cylinder(Frame frame, double a, double b, double half) {
      Quadric quadric = Quadric.cylinder(frame, a, b);
      quadrics.add(quadric);
      bounds(frame.origin(), quadric.reach(frame, a, b, half));
      plane(frame.point(0, 0, half), frame.w());
      plane(frame.point(0, 0, -half), frame.w().times(-1));
      for (int k = 0; k < RING.length; k += 2) {
        hull.add(frame.point(a * RING[k], b * RING[k + 1], half));
        hull.add(frame.point(a * RING[k], b * RING[k + 1], -half));
      }
      return this;
    }

    /** Six planes; half sizes along u, v, w. */
    public Builder box(Frame frame, double a, double b, double c) {
      plane(frame.point(0, 0, c), frame.w());
      plane(frame.point(0, 0, -c), frame.w().times(-1));
      plane(frame.point(a, 0, 0), frame.u());
      plane(frame.point(-a, 0, 0), frame.u().times(-1));
      plane(frame.point(0, b, 0), frame.v());
      plane(frame.point(0, -b, 0), frame.v().times(-1));
      bounds(
          frame.origin(),
          new Vec(
              span(frame.u().x() * a, frame.v().x() * b, frame.w().x() * c),
              span(frame.u().y() * a, frame.v().y() * b, frame.w().y() * c),
              span(frame.u().z() * a, frame.v().z() * b, frame.w().z() * c)));
      for (int k = 0; k < 8; k++) {
        hull.add(frame.point((k & 1) == 0 ? -a : a, (k & 2) == 0 ? -b : b, (k & 4) == 0 ? -c : c));
      }
      return this;
    }

    /** Cuts off a box's upper edges and its upright edges at 45 degrees. */
    public Builder bevel(Frame frame, double a, double b, double c, double cut) {
      for (int k = -1; k <= 1; k += 2) {
        plane(frame.point(k * a, 0, c - cut), frame.direction(k, 0, 1).unit());
        plane(frame.point(0, k * b, c - cut), frame.direction(0, k, 1).unit());
        for (int n = -1; n <= 1; n += 2) {
          plane(frame.point(k * a, n * (b - cut), 0), frame.direction(k, n, 0).unit());
        }
      }
      return this;
    }

    /** Keeps what lies behind the plane. */
    public Builder plane(Vec point, Vec normal) {
      planes.add(normal.x());
      planes.add(normal.y());
      planes.add(normal.z());
      planes.add(normal.dot(point));
      return this;
    }

    public Solid build() {
      return new Solid(this);
    }

    private void bounds(Vec middle, Vec reach) {
      Vec under = middle.minus(reach);
      Vec over = middle.plus(reach);
      low =
          new Vec(
              Math.max(low.x(), under.x()),
              Math.max(low.y(), under.y()),
              Math.max(low.z(), under.z()));
      high =
          new Vec(
              Math.min(high.x(), over.x()),
              Math.min(high.y(), over.y()),
              Math.min(high.z(), over.z()));
    }

    private static double span(double a, double b, double c) {
      return Math.abs(a) + Math.abs(b) + Math.abs(c);
    }

    private static double[] ring() {
      double[] ring = new double[32];
      for (int k = 0; k < 16; k++) {
        ring[2 * k] = StrictMath.cos(k * Math.PI / 8);
        ring[2 * k + 1] = StrictMath.sin(k * Math.PI / 8);
      }
      return ring;
    }
  }
}
