package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A dipped tantalum bead, bent over a little so that its print shows. */
final class Bead implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double half = fitting.height() / 2;
    Frame frame = kit.upright(half + 1.0).leaning(5 * kit.wobble(4), -34 + 6 * kit.wobble(5));
    Frame face =
        new Frame(frame.point(0, 0, half * 0.3), frame.u(), frame.w().times(-1), frame.v());
    Skin skin =
        Print.lines(
            Paint.of(fitting.body(), 0.22),
            fitting.marks(),
            Paint.of(fitting.ink(), 0.5),
            face,
            fitting.length() - 0.5,
            fitting.height() / (fitting.marks().size() * 2.2));
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    kit.body(new Solid.Builder(skin).ellipsoid(frame, a, b, half).build());
    kit.body(
        new Solid.Builder(skin)
            .ellipsoid(frame.at(0, 0, -half * 0.45), a * 0.72, b * 0.7, half * 0.75)
            .build());
    for (Vec pad : kit.pads()) {
      double side = Math.signum(pad.x() - kit.part().at().x());
      kit.wire(
          Kit.TIN,
          0.26,
          frame.point(side * a * 0.42, 0, -half * 0.8),
          pad.plus(new Vec(0, 0, 0.7)),
          pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(frame.point(0, 0, half * 0.3));
  }
}
