package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A medium-power transistor in a metal can, in a black star-shaped clip-on cooler. */
final class MetalCan implements Family {
  private static final int FINS = 10;

  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    Frame foot = kit.upright(0.9);
    Frame top = foot.at(0, 0, fitting.height());
    Skin skin =
        Print.lines(
            Kit.ALUMINIUM, fitting.marks(), Paint.of(fitting.ink(), 0.6), top, radius * 1.6, 1.0);
    Frame middle = foot.at(0, 0, fitting.height() / 2);
    kit.body(
        new Solid.Builder(skin).cylinder(middle, radius, radius, fitting.height() / 2).build());
    kit.body(
        new Solid.Builder(Kit.ALUMINIUM)
            .cylinder(foot.at(0, 0, 0.3), radius + 0.5, radius + 0.5, 0.25)
            .build());
    Frame tab = Frame.upright(foot.point(0, 0, 0.3), 45 + 180).at(radius + 0.8, 0, 0);
    kit.detail(new Solid.Builder(Kit.ALUMINIUM).box(tab, 0.7, 0.4, 0.2).build());
    cooler(kit, foot, radius);
    List<Vec> pads = kit.pads();
    for (Vec pad : pads) {
      kit.wire(Kit.TIN, 0.25, pad.plus(new Vec(0, 0, 1.1)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(top.origin());
  }

  private static void cooler(Kit kit, Frame foot, double radius) {
    Paint black = Paint.of(0x1B1B1D, 0.55);
    for (int k = 0; k < FINS; k++) {
      Frame turned = Frame.upright(foot.point(0, 0, 3.4), k * 360.0 / FINS + 9);
      Frame wall = turned.at(radius + 0.35, 0, 0);
      kit.body(new Solid.Builder(black).box(wall, 0.35, 1.35, 2.9).build());
      Frame fin = turned.at(radius + 2.0, 0, -0.2);
      kit.body(
          new Solid.Builder(black)
              .box(fin, 1.6, 0.45, 2.6)
              .bevel(fin, 1.6, 0.45, 2.6, 0.15)
              .build());
    }
  }
}
