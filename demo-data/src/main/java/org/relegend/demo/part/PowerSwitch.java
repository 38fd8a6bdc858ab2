package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** The mains switch: a moulded box with a metal yoke and a push rod to the board's left edge. */
final class PowerSwitch implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    double half = fitting.height() / 2;
    Frame middle = kit.upright(half + 0.2);
    Paint mould = Paint.of(fitting.body(), 0.45);
    Frame top = middle.at(0, 0, half);
    kit.body(
        new Solid.Builder(
                Print.lines(
                    mould,
                    fitting.marks(),
                    Paint.of(fitting.ink(), 0.6),
                    top.at(0.8, 0, 0),
                    a * 1.5,
                    1.3))
            .box(middle, a, b, half)
            .bevel(middle, a, b, half, 0.5)
            .build());
    for (int side = -1; side <= 1; side += 2) {
      Frame strap = top.at(0, side * (b - 1.6), 0.15);
      kit.detail(new Solid.Builder(Kit.STEEL).box(strap, a + 0.25, 0.9, 0.2).build());
    }
    Frame rod = middle.at(-a - 1.8, 0, 0.5);
    kit.body(
        new Solid.Builder(Paint.of(0xD8D2C2, 0.5))
            .box(rod, 2.4, 1.6, 1.6)
            .bevel(rod, 2.4, 1.6, 1.6, 0.3)
            .build());
    for (Vec pad : kit.pads()) {
      kit.wire(Kit.TIN, 0.5, pad.plus(new Vec(0, 0, 0.4)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(top.origin());
  }
}
