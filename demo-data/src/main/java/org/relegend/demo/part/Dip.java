package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A dual in-line package with notch and pin-1 dot; soldered in, or in a turned-pin socket. */
final class Dip implements Family {
  private static final double PIN_WIDTH = 0.72;

  private final boolean socketed;

  Dip(boolean socketed) {
    this.socketed = socketed;
  }

  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double lift = socketed ? 4.3 : 0.7;
    double thick = 3.3;
    Frame middle =
        Frame.upright(
            new Vec(kit.part().at().x(), kit.part().at().y(), lift + thick / 2),
            socketed ? 0.8 * kit.wobble(3) : 0.2 * kit.wobble(3));
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    Frame top = middle.at(0, 0, thick / 2);
    kit.body(mould(skin(fitting, top), middle, a, b, thick / 2));
    for (Vec pad : kit.pads()) {
      pin(kit, middle, pad, lift, b);
    }
    if (socketed) {
      socket(kit, a);
    }
    kit.middle(top.origin());
  }

  /** Upper and lower half taper away from the parting line. */
  private static Solid mould(Skin skin, Frame middle, double a, double b, double half) {
    Solid.Builder builder = new Solid.Builder(skin).box(middle, a, b, half);
    for (int up = -1; up <= 1; up += 2) {
      for (int side = -1; side <= 1; side += 2) {
        builder.plane(middle.point(0, side * b, 0), middle.direction(0, side, up * 0.2).unit());
        builder.plane(middle.point(side * a, 0, 0), middle.direction(side, 0, up * 0.14).unit());
      }
    }
    return builder.build();
  }

  private static Skin skin(Fitting fitting, Frame top) {
    Paint mould = Paint.of(fitting.body(), 0.42);
    double a = fitting.length();
    double b = fitting.width();
    Mask dents = new Mask(a, b, 24);
    dents.disc(0.25, b / 2, 0.95);
    dents.disc(1.5, b - 1.45, 0.5);
    Skin dented = new Print(mould, dents, mould.darker(0.35), top.at(-a / 2, -b / 2, 0), 0.9);
    Frame face = top.at(0.5, 0, 0);
    return Print.lines(dented, fitting.marks(), Paint.of(fitting.ink(), 0.6), face, a - 3.2, 1.25);
  }

  private void pin(Kit kit, Frame middle, Vec pad, double lift, double halfWidth) {
    double side = Math.signum(pad.y() - middle.origin().y());
    double level = lift + 1.65;
    Vec bend = new Vec(pad.x(), pad.y(), level);
    double inner = Math.abs(pad.y() - middle.origin().y()) - halfWidth + 0.3;
    Frame flat = Frame.upright(bend.plus(new Vec(0, -side * inner / 2, 0)), 0);
    kit.detail(
        new Solid.Builder(Kit.TIN)
            .box(flat, PIN_WIDTH, inner / 2 + 0.13, 0.13)
            .plane(flat.point(0, side * (inner / 2 + 0.05), 0.06), new Vec(0, side, 1).unit())
            .build());
    double foot = socketed ? 3.2 : -0.2;
    double shoulder = socketed ? 3.4 : 0.9;
    upright(kit, pad, level, shoulder, PIN_WIDTH);
    upright(kit, pad, shoulder, foot, 0.28);
  }

  private static void upright(Kit kit, Vec pad, double from, double to, double halfWidth) {
    if (from - to < 0.05) {
      return;
    }
    Frame frame = Frame.upright(new Vec(pad.x(), pad.y(), (from + to) / 2), 0);
    kit.detail(new Solid.Builder(Kit.TIN).box(frame, halfWidth, 0.13, (from - to) / 2).build());
  }

  private static void socket(Kit kit, double half) {
    Vec at = new Vec(kit.part().at().x(), kit.part().at().y(), 0);
    Paint plastic = Paint.of(0x1C1C1E, 0.5);
    for (int side = -1; side <= 1; side += 2) {
      Frame rail = Frame.upright(at.plus(new Vec(0, side * 3.81, 1.9)), 0);
      kit.body(
          new Solid.Builder(plastic)
              .box(rail, half + 0.2, 1.27, 1.3)
              .bevel(rail, half + 0.2, 1.27, 1.3, 0.15)
              .build());
      Frame bar = Frame.upright(at.plus(new Vec(side * (half - 0.6), 0, 1.5)), 0);
      kit.detail(new Solid.Builder(plastic).box(bar, 0.7, 2.6, 0.9).build());
    }
    for (Vec pad : kit.pads()) {
      Frame collet = Frame.upright(pad.plus(new Vec(0, 0, 1.8)), 0);
      kit.detail(new Solid.Builder(Kit.BRASS).cylinder(collet, 0.68, 0.68, 1.65).build());
      Frame bore = Frame.upright(pad.plus(new Vec(0, 0, 3.4)), 0);
      kit.detail(new Solid.Builder(Paint.of(0x2A2116, 0.8)).cylinder(bore, 0.4, 0.4, 0.08).build());
    }
  }
}
