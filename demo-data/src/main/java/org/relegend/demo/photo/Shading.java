package org.relegend.demo.photo;

import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Surface;
import org.relegend.demo.ray.Vec;

/**
 * How a lit surface looks to the camera: matt light after Lambert, mirrored light with Schlick's
 * approximation of Fresnel's law, the surroundings mirrored more or less sharply.
 */
final class Shading {
  private static final double DIELECTRIC = 0.042;

  private final Lighting light;
  private final Vec eye;
  private final Paint bounce;

  Shading(Shot shot) {
    light = shot.light();
    eye = shot.camera().eye();
    bounce = Paint.of(shot.look().laminate(), 1).darker(0.55);
  }

  /**
   * Adds the light of one surface point.
   *
   * @param lit share of the lamp that reaches the point
   * @param open share of the surroundings that reaches it
   * @param share how much of this light counts
   */
  void shade(Hit hit, Surface surface, double lit, double open, double share, double[] sum) {
    double lx = light.lamp().x() - hit.x;
    double ly = light.lamp().y() - hit.y;
    double lz = light.lamp().z() - hit.z;
    double far = Math.sqrt(lx * lx + ly * ly + lz * lz);
    lx /= far;
    ly /= far;
    lz /= far;
    double fall = Lighting.REFERENCE / far;
    double power = light.power() * fall * fall * lit;
    double matt = Math.max(0, lx * surface.nx + ly * surface.ny + lz * surface.nz);
    double up = 0.5 + 0.5 * surface.nz;
    double vx = eye.x() - hit.x;
    double vy = eye.y() - hit.y;
    double vz = eye.z() - hit.z;
    double v = 1 / Math.sqrt(vx * vx + vy * vy + vz * vz);
    double toEye = (vx * surface.nx + vy * surface.ny + vz * surface.nz) * v;
    double rx = 2 * toEye * surface.nx - vx * v;
    double ry = 2 * toEye * surface.ny - vy * v;
    double rz = 2 * toEye * surface.nz - vz * v;
    double away = 1 - Math.max(0, Math.min(1, toEye));
    double fresnel = away * away * away * away * away;
    double rough = surface.roughness * surface.roughness;
    double lamp = lobe(rx * lx + ry * ly + rz * lz, rough, far) * power;
    double sky =
        sky((vx * rx + vy * ry + vz * rz) * v, rx, ry, rz, surface.roughness)
            * light.ambient()
            * open;
    for (int k = 0; k < 3; k++) {
      double own = k == 0 ? surface.red : k == 1 ? surface.green : surface.blue;
      double lampTone = part(light.lampColour(), k);
      double skyTone = part(light.ambientColour(), k);
      double under = k == 0 ? bounce.red() : k == 1 ? bounce.green() : bounce.blue();
      double all = light.ambient() * open * (up * skyTone + (1 - up) * under * skyTone * 1.6);
      double diffuse = surface.metal ? 0.12 * own : own;
      double base = surface.metal ? own : DIELECTRIC;
      double mirror = base + (1 - base) * fresnel * (1 - surface.roughness);
      sum[k] +=
          share
              * (diffuse * (power * matt * lampTone + all)
                  + mirror * (lamp * lampTone + sky * skyTone));
    }
  }

  /** The lamp in a mirror of some roughness: its brightness about the direction where it stands. */
  private double lobe(double cosine, double rough, double far) {
    double seen = light.size() / far;
    double spread = 0.5 * seen * seen + 0.45 * rough * rough + 0.0006;
    double off = (1 - cosine) / spread;
    double low = 1 + off;
    return 0.5 / spread / (low * low);
  }

  /**
   * The surroundings in a mirror: a light ceiling, a brighter window on one side, dark towards the
   * horizon, the photographer's own shade.
   *
   * @param head the cosine between the mirrored line of sight and the camera
   */
  private static double sky(double head, double rx, double ry, double rz, double roughness) {
    double ceiling = 0.25 + 0.85 * smooth(rz, -0.15, 0.75, roughness);
    double window =
        2.4
            * smooth(rx * -0.62 + ry * 0.42 + rz * 0.66, 0.8, 0.93, roughness)
            * (1 - 0.4 * roughness);
    double self = 1 - 0.6 * smooth(head, 0.9, 0.985, roughness);
    return (ceiling + window) * self;
  }

  private static double smooth(double value, double from, double to, double roughness) {
    double soft = 0.55 * roughness * roughness;
    double t = Math.max(0, Math.min(1, (value - from + soft) / (to - from + 2 * soft)));
    return t * t * (3 - 2 * t);
  }

  private static double part(Vec colour, int k) {
    return k == 0 ? colour.x() : k == 1 ? colour.y() : colour.z();
  }
}
