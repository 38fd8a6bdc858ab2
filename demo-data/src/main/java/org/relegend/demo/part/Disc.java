package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A ceramic disc capacitor, leaning over so that its face shows. */
final class Disc implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    Frame frame = kit.upright(radius + 1.4).leaning(3 * kit.wobble(4), -33 + 6 * kit.wobble(5));
    Frame face = new Frame(frame.origin(), frame.u(), frame.w().times(-1), frame.v());
    Skin skin =
        Print.lines(
            Paint.of(fitting.body(), 0.45),
            fitting.marks(),
            Paint.of(fitting.ink(), 0.6),
            face,
            fitting.length() * 0.75,
            fitting.length() * 0.2);
    kit.body(new Solid.Builder(skin).ellipsoid(frame, radius, fitting.width() / 2, radius).build());
    for (Vec pad : kit.pads()) {
      double side = Math.signum(pad.x() - kit.part().at().x());
      Vec root = frame.point(side * radius * 0.66, 0, -radius * 0.62);
      kit.body(
          new Solid.Builder(skin)
              .ellipsoid(frame.at(side * radius * 0.68, 0, -radius * 0.62), 0.6, 0.55, 1.0)
              .build());
      kit.wire(Kit.TIN, 0.28, root, pad.plus(new Vec(0, 0, 0.8)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(frame.point(0, 0.3 * fitting.width(), radius * 0.1));
  }
}
