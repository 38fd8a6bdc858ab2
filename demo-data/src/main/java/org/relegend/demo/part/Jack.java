package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A jack that stands on the board: a square body, a threaded bush, the hole for the plug. */
final class Jack implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double half = fitting.length() / 2;
    double tall = fitting.height() * 0.62;
    Frame middle = kit.upright(tall / 2 + 0.2);
    Paint plastic = Paint.of(fitting.body(), 0.5);
    kit.body(
        new Solid.Builder(plastic)
            .box(middle, half, half, tall / 2)
            .bevel(middle, half, half, tall / 2, 0.35)
            .build());
    Frame top = middle.at(0, 0, tall / 2);
    double bush = fitting.height() - tall;
    kit.body(
        new Solid.Builder(Kit.STEEL)
            .cylinder(top.at(0, 0, 0.2), half * 0.84, half * 0.84, 0.2)
            .build());
    kit.body(
        new Solid.Builder(new Grooves(top))
            .cylinder(top.at(0, 0, bush / 2), 2.9, 2.9, bush / 2)
            .build());
    Frame rim = top.at(0, 0, bush);
    kit.detail(new Solid.Builder(Paint.of(0x0B0B0C, 0.9)).cylinder(rim, 1.8, 1.8, 0.04).build());
    for (Vec pad : kit.pads()) {
      Frame tag = Frame.upright(pad.plus(new Vec(0, 0, 0.3)), 0);
      kit.detail(new Solid.Builder(Kit.TIN).box(tag, 0.5, 0.2, 0.8).build());
    }
    kit.middle(rim.origin());
  }

  /** Nickel with the grooves of a thread. */
  private record Grooves(Frame foot) implements org.relegend.demo.ray.Skin {
    @Override
    public void paint(org.relegend.demo.ray.Hit hit, org.relegend.demo.ray.Surface surface) {
      surface.set(Kit.ALUMINIUM);
      double up = (hit.z - foot.origin().z()) / 0.5;
      double groove = up - Math.floor(up);
      if (hit.nz < 0.5) {
        surface.nz += groove < 0.5 ? 0.6 : -0.6;
        double inverse =
            1
                / Math.sqrt(
                    surface.nx * surface.nx + surface.ny * surface.ny + surface.nz * surface.nz);
        surface.nx *= inverse;
        surface.ny *= inverse;
        surface.nz *= inverse;
      }
    }
  }
}
