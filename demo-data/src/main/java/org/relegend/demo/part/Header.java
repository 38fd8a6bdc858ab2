package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A two-pin header in a nylon shroud that is open at the top. */
final class Header implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    double h = fitting.height();
    Paint nylon = Paint.of(fitting.body(), 0.55);
    Frame foot = kit.upright(0.1);
    kit.body(new Solid.Builder(nylon).box(foot.at(0, 0, 1.2), a, b, 1.2).build());
    for (int side = -1; side <= 1; side += 2) {
      Frame end = foot.at(side * (a - 0.45), 0, h / 2);
      kit.body(new Solid.Builder(nylon).box(end, 0.45, b, h / 2).build());
      Frame wall = foot.at(0, side * (b - 0.45), side < 0 ? h / 2 : h * 0.36);
      kit.body(new Solid.Builder(nylon).box(wall, a, 0.45, side < 0 ? h / 2 : h * 0.36).build());
    }
    for (Vec pad : kit.pads()) {
      Frame post = Frame.upright(pad.plus(new Vec(0, 0, h * 0.45)), 0);
      kit.detail(new Solid.Builder(Kit.BRASS).box(post, 0.32, 0.32, h * 0.5).build());
    }
    kit.middle(foot.point(0, 0, h));
  }
}
