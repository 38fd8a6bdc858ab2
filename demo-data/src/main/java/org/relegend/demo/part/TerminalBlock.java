package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** The mains terminal block: a moulded bar with a slotted screw over each terminal. */
final class TerminalBlock implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    double half = fitting.height() / 2;
    Frame middle = kit.upright(half + 0.1);
    Paint mould = Paint.of(fitting.body(), 0.5);
    kit.body(
        new Solid.Builder(mould).box(middle, a, b, half).bevel(middle, a, b, half, 0.5).build());
    Frame top = middle.at(0, 0, half);
    int index = 0;
    for (Vec pad : kit.pads()) {
      double x = pad.x() - middle.origin().x();
      Frame well = Frame.upright(top.point(x, 0.6, 0), 0);
      kit.detail(new Solid.Builder(mould.darker(0.25)).cylinder(well, 2.5, 2.5, 0.03).build());
      screw(kit, well.at(0, 0, -0.9), 40 + 70 * kit.wobble(20 + index));
      Frame mouth = middle.at(x, -b, -half * 0.2);
      kit.detail(new Solid.Builder(mould.darker(0.15)).box(mouth, 1.9, 0.03, 1.6).build());
      index++;
    }
    for (int side = -1; side <= 1; side += 2) {
      Frame rib = top.at(side * a / 3, 0, 0.25);
      kit.body(new Solid.Builder(mould).box(rib, 0.5, b - 0.3, 0.5).build());
    }
    kit.middle(top.origin());
  }

  /** A cheese-head screw seen from above, its slot turned by some degrees. */
  static void screw(Kit kit, Frame at, double turned) {
    Frame head = Frame.upright(at.point(0, 0, 0.5), turned);
    Mask slot = new Mask(4.2, 4.2, 26);
    slot.box(0.1, 1.75, 4.1, 2.45);
    Skin skin = new Print(Kit.STEEL, slot, Paint.of(0x14120F, 0.9), head.at(-2.1, -2.1, 0.5), 0.8);
    kit.detail(new Solid.Builder(skin).cylinder(head, 2.05, 2.05, 0.5).build());
  }
}
