package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A small transistor in a TO-92 body, its flat side printed, leads spread to the pads. */
final class To92 implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double height = fitting.height();
    Frame foot = kit.upright(2.6).leaning(4 * kit.wobble(4), -8 + 5 * kit.wobble(5));
    double radius = fitting.length() / 2;
    double flat = radius * 0.58;
    Frame middle = foot.at(0, 0, height / 2);
    Frame face = new Frame(middle.point(0, flat, 0), middle.u(), middle.w().times(-1), middle.v());
    Skin skin =
        Print.lines(
            Paint.of(fitting.body(), 0.4),
            fitting.marks(),
            Paint.of(fitting.ink(), 0.6),
            face,
            radius * 1.7,
            0.85);
    kit.body(
        new Solid.Builder(skin)
            .cylinder(middle, radius, radius, height / 2)
            .plane(middle.point(0, flat, 0), middle.v())
            .plane(middle.point(0, flat, height / 2 - 0.35), middle.direction(0, 1, 1).unit())
            .build());
    List<Vec> pads = kit.pads();
    for (int k = 0; k < pads.size(); k++) {
      Vec root = foot.point((k - 1) * 1.27, 0, 0.2);
      kit.wire(
          Kit.TIN,
          0.26,
          root,
          pads.get(k).plus(new Vec(0, 0, 1.1)),
          pads.get(k).plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(foot.point(0, 0, height));
  }
}
