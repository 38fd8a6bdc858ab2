package org.relegend.demo.photo;

import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Ray;
import org.relegend.demo.ray.Surface;
import org.relegend.demo.ray.Vec;

/** Follows lines of sight into the stage and tells their light; one a thread. */
final class Tracer {
  private static final int LAMP_RAYS = 4;

  private final Stage stage;
  private final Camera.View view;
  private final Shading shading;
  private final Ray ray = new Ray();
  private final Ray other = new Ray();
  private final Hit hit = new Hit();
  private final Hit blocker = new Hit();
  private final Surface surface = new Surface();
  private final Paint edge;
  private final double top;

  /** The light found last: red, green, blue. */
  final double[] light = new double[3];

  Tracer(Stage stage) {
    this.stage = stage;
    view = stage.shot.camera().view();
    shading = new Shading(stage.shot);
    edge = Paint.of(stage.shot.look().laminate(), 0.8).darker(0.8);
    top = stage.scene.summit() + 0.5;
  }

  /** Fills in the light that comes to a picture point, in pixels. */
  void see(double px, double py) {
    light[0] = 0;
    light[1] = 0;
    light[2] = 0;
    view.aim(px, py, top, ray);
    double share = 1;
    double from = 0;
    for (int layers = 0; layers < 3; layers++) {
      if (!stage.scene.nearest(ray, from, top, hit)) {
        ground(share);
        return;
      }
      surface.nx = hit.nx;
      surface.ny = hit.ny;
      surface.nz = hit.nz;
      hit.solid.skin().paint(hit, surface);
      double clear = surface.clear;
      body(share * (1 - clear));
      if (clear <= 0) {
        return;
      }
      share *= clear;
      from = hit.t + 1e-3;
    }
    ground(share);
  }

  private void body(double share) {
    double open = 0.5 + 0.5 * Math.min(1, Math.max(0, hit.z) / 9);
    double dust = 0.93 + 0.14 * Noise.smooth(stage.shot.seed() + 3, hit.x * 4, hit.y * 4);
    surface.shade(dust);
    if (surface.metal) {
      dent();
    }
    shading.shade(hit, surface, lit(), open, share, light);
  }

  /** No metal part is quite flat or clean. */
  private void dent() {
    long seed = stage.shot.seed();
    double a = Noise.smooth(seed + 5, hit.x * 1.7, hit.y * 1.7 + hit.z) - 0.5;
    double b = Noise.smooth(seed + 6, hit.x * 1.7 + hit.z, hit.y * 1.7) - 0.5;
    double c = Noise.smooth(seed + 7, hit.x * 7, hit.y * 7 + 3 * hit.z) - 0.5;
    surface.nx += 0.09 * a + 0.03 * c;
    surface.ny += 0.09 * b - 0.03 * c;
    double inverse =
        1 / Math.sqrt(surface.nx * surface.nx + surface.ny * surface.ny + surface.nz * surface.nz);
    surface.nx *= inverse;
    surface.ny *= inverse;
    surface.nz *= inverse;
    surface.roughness = Math.min(1, surface.roughness + 0.1 * Math.abs(c));
    surface.shade(0.96 + 0.14 * a);
  }

  private double lit() {
    Vec lamp = stage.shot.light().lamp();
    double dx = lamp.x() - hit.x;
    double dy = lamp.y() - hit.y;
    double dz = lamp.z() - hit.z;
    if (dx * hit.nx + dy * hit.ny + dz * hit.nz <= 0) {
      return 0;
    }
    double turn =
        Noise.at(stage.shot.seed(), (long) (hit.x * 900), (long) (hit.y * 900)) * 2 * Math.PI;
    double c = StrictMath.cos(turn) * stage.shot.light().size() * 0.7;
    double s = StrictMath.sin(turn) * stage.shot.light().size() * 0.7;
    int free = 0;
    for (int k = 0; k < LAMP_RAYS; k++) {
      double ex = k == 0 ? c : k == 1 ? -s : k == 2 ? -c : s;
      double ey = k == 0 ? s : k == 1 ? c : k == 2 ? -s : -c;
      other.set(
          hit.x + hit.nx * 0.03,
          hit.y + hit.ny * 0.03,
          hit.z + hit.nz * 0.03,
          dx + ex,
          dy + ey,
          dz);
      free += stage.scene.blocked(other, 1e-5, 1, blocker) ? 0 : 1;
    }
    return free / (double) LAMP_RAYS;
  }

  /** What lies under all bodies: the board's face, its edge, or the bench. */
  private void ground(double share) {
    double x = ray.atX(top);
    double y = ray.atY(top);
    if (stage.onBoard(x, y)) {
      place(x, y, 0);
      stage.face.paint(hit, surface);
      double lamp = stage.shadow.lamp(x, y);
      double round = 0.25 + 0.75 * stage.shadow.round(x, y);
      shading.shade(hit, surface, lamp, round, share, light);
      return;
    }
    double lowX = ray.atX(top + Stage.THICK);
    double lowY = ray.atY(top + Stage.THICK);
    if (stage.onBoard(lowX, lowY)) {
      place(x, y, -0.5);
      surface.set(edge);
      shading.shade(hit, surface, 0.7, 0.6, share, light);
      return;
    }
    bench(share);
  }

  private void bench(double share) {
    double x = ray.atX(top + stage.depth);
    double y = ray.atY(top + stage.depth);
    place(x, y, -stage.depth);
    stage.shot.bench().paint(x, y, stage.shot.seed() + 77, surface);
    double lamp = 1;
    double round = 1;
    if (stage.shot.boardThere()) {
      Vec from = stage.shot.light().lamp();
      double rise = stage.depth / (from.z() + stage.depth);
      double beside = beside(x + (from.x() - x) * rise, y + (from.y() - y) * rise);
      double soft = 0.6 + stage.shot.light().size() * rise;
      lamp = ease((beside + soft) / (2 * soft));
      round = 0.35 + 0.65 * ease(beside(x, y) / (1.8 * stage.depth) + 0.25);
    }
    shading.shade(hit, surface, lamp, round, share, light);
  }

  /** How far outside the board's outline a place lies; negative inside. */
  private double beside(double x, double y) {
    double outX = Math.max(-x, x - stage.width);
    double outY = Math.max(-y, y - stage.height);
    if (outX > 0 && outY > 0) {
      return Math.sqrt(outX * outX + outY * outY);
    }
    return Math.max(outX, outY);
  }

  private void place(double x, double y, double z) {
    hit.x = x;
    hit.y = y;
    hit.z = z;
    hit.nx = 0;
    hit.ny = 0;
    hit.nz = 1;
    surface.nx = 0;
    surface.ny = 0;
    surface.nz = 1;
  }

  private static double ease(double t) {
    double clipped = Math.max(0, Math.min(1, t));
    return clipped * clipped * (3 - 2 * clipped);
  }
}
