package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A film capacitor in a moulded box, value on its top. */
final class BoxCapacitor implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double half = fitting.height() / 2;
    Frame frame = kit.upright(half + 0.3).leaning(1.5 * kit.wobble(4), 3 * kit.wobble(5));
    Frame top = frame.at(0, 0, half);
    Skin skin =
        Print.lines(
            Paint.of(fitting.body(), 0.3),
            fitting.marks(),
            Paint.of(fitting.ink(), 0.5),
            top,
            fitting.length() - 0.8,
            fitting.width() / (fitting.marks().size() * 1.9));
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    kit.body(new Solid.Builder(skin).box(frame, a, b, half).bevel(frame, a, b, half, 0.3).build());
    for (Vec pad : kit.pads()) {
      kit.wire(Kit.TIN, 0.3, pad.plus(new Vec(0, 0, 0.6)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(top.origin());
  }
}
