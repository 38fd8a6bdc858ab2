package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Surface;
import org.relegend.demo.ray.Vec;

/** The mains transformer: laminated core across, taped winding on its bobbin, label on the tape. */
final class Transformer implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double a = fitting.length() / 2;
    double b = fitting.width() / 2;
    double h = fitting.height();
    Frame foot = kit.upright(0.3);
    Paint bobbin = Paint.of(0xB9A98A, 0.55);
    Frame base = foot.at(0, 0, 1.2);
    kit.body(new Solid.Builder(bobbin).box(base, a * 0.92, b, 1.2).build());
    Frame core = foot.at(0, 0, h / 2 + 0.6);
    kit.body(new Solid.Builder(new Laminations(core)).box(core, a, b * 0.46, h / 2 - 0.6).build());
    winding(kit, foot, a, b, h);
    for (int side = -1; side <= 1; side += 2) {
      Frame flange = foot.at(0, side * (b - 0.5), h * 0.42);
      kit.body(
          new Solid.Builder(bobbin)
              .box(flange, a * 0.68, 0.6, h * 0.4)
              .bevel(flange, a * 0.68, 0.6, h * 0.4, 0.4)
              .build());
      for (int end = -1; end <= 1; end += 2) {
        Frame bolt = foot.at(end * (a - 2.6), side * b * 0.3, h);
        TerminalBlock.screw(kit, bolt.at(0, 0, -0.2), 30 + 60 * kit.wobble(30 + side + 3 * end));
      }
    }
    for (Vec pad : kit.pads()) {
      kit.wire(Kit.TIN, 0.5, pad.plus(new Vec(0, 0, 1.2)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(foot.point(0, 0, h));
  }

  private static void winding(Kit kit, Frame foot, double a, double b, double h) {
    Fitting fitting = kit.fitting();
    Frame middle = foot.at(0, 0, h * 0.42);
    Frame top = middle.at(0, b * 0.72, h * 0.38);
    Skin tape = Paint.of(fitting.body(), 0.3);
    Skin skin =
        Print.lines(tape, fitting.marks(), Paint.of(fitting.ink(), 0.6), top, a * 1.15, b * 0.16);
    kit.body(
        new Solid.Builder(skin)
            .box(middle, a * 0.62, b - 1.2, h * 0.38)
            .bevel(middle, a * 0.62, b - 1.2, h * 0.38, 2.2)
            .build());
  }

  /** Stacked sheet iron, edge on, varnished. */
  private record Laminations(Frame core) implements Skin {
    private static final Paint IRON = Paint.of(0x4C4A49, 0.4);

    @Override
    public void paint(Hit hit, Surface surface) {
      surface.set(IRON);
      double across =
          (hit.x - core.origin().x()) * core.v().x() + (hit.y - core.origin().y()) * core.v().y();
      double sheet = across / 0.5 + 100;
      double part = sheet - Math.floor(sheet);
      surface.shade(part < 0.22 ? 0.6 : 0.95 + 0.05 * (((long) Math.floor(sheet)) * 7 % 5));
    }
  }
}
