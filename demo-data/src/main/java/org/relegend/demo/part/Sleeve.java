package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Surface;

/**
 * A can in a shrunk sleeve: printed round the side, the sleeve turned over the rim, bare metal in
 * the middle of its top. The frame stands in the middle of the top, w outwards.
 *
 * @param print unrolled print, its left edge at the frame's u, millimetres along the rim
 */
record Sleeve(
    Paint sleeve, Paint top, Paint ink, Mask print, Frame frame, double radius, boolean scored)
    implements Skin {
  private static final double RIM = 0.9;

  @Override
  public void paint(Hit hit, Surface surface) {
    double px = hit.x - frame.origin().x();
    double py = hit.y - frame.origin().y();
    double pz = hit.z - frame.origin().z();
    double a = px * frame.u().x() + py * frame.u().y() + pz * frame.u().z();
    double b = px * frame.v().x() + py * frame.v().y() + pz * frame.v().z();
    double c = px * frame.w().x() + py * frame.w().y() + pz * frame.w().z();
    double out = Math.sqrt(a * a + b * b);
    double up = hit.nx * frame.w().x() + hit.ny * frame.w().y() + hit.nz * frame.w().z();
    if (up < 0.6) {
      surface.set(sleeve);
      double turn = StrictMath.atan2(b, a) / (2 * Math.PI);
      double along = (turn < 0 ? -turn : 1 - turn) * print.width() / print.scale();
      surface.cover(ink, print.at(along, -c));
      round(hit, surface, a, b, out, c > -0.5 ? (c + 0.5) * 1.3 : 0);
      return;
    }
    if (out > radius - RIM) {
      surface.set(sleeve);
      round(hit, surface, a, b, out, (out - radius + RIM) / RIM);
      return;
    }
    surface.set(top);
    if (scored) {
      double line = Math.min(Math.abs(a - b), Math.abs(a + b)) * 0.7071;
      if (line < 0.16 && out < radius * 0.62) {
        surface.shade(0.35 + 3 * line);
      }
    }
    if (out > radius - RIM - 0.25) {
      surface.shade(0.55);
    }
  }

  /** Bends the normal so that a sharp edge looks rounded: 0 leaves a top flat, a side upright. */
  private void round(Hit hit, Surface surface, double a, double b, double out, double bend) {
    double share = Math.max(0, Math.min(1, bend));
    double lean = 0.7 * share * share;
    double side = lean / Math.max(out, 1e-6);
    Frame f = frame;
    double up = hit.nx * f.w().x() + hit.ny * f.w().y() + hit.nz * f.w().z();
    double lift = up < 0.6 ? lean : 0;
    double out2 = up < 0.6 ? 0 : side;
    double nx = hit.nx + (f.u().x() * a + f.v().x() * b) * out2 + f.w().x() * lift;
    double ny = hit.ny + (f.u().y() * a + f.v().y() * b) * out2 + f.w().y() * lift;
    double nz = hit.nz + (f.u().z() * a + f.v().z() * b) * out2 + f.w().z() * lift;
    double inverse = 1 / Math.sqrt(nx * nx + ny * ny + nz * nz);
    surface.nx = nx * inverse;
    surface.ny = ny * inverse;
    surface.nz = nz * inverse;
  }
}
