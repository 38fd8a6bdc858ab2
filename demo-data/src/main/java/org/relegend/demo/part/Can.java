package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A radial electrolytic capacitor: a sleeved can with its minus stripe. */
final class Can implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    double height = fitting.height();
    Frame foot = kit.upright(0.2).leaning(2.2 * kit.wobble(4), 2.2 * kit.wobble(5));
    Frame top = foot.at(0, 0, height);
    Skin skin =
        new Sleeve(
            Paint.of(fitting.body(), 0.32),
            Kit.ALUMINIUM,
            Paint.of(fitting.ink(), 0.5),
            print(fitting, radius, height),
            top,
            radius,
            fitting.length() > 7);
    kit.body(
        new Solid.Builder(skin)
            .cylinder(foot.at(0, 0, height / 2), radius, radius, height / 2)
            .build());
    for (Vec pad : kit.pads()) {
      kit.wire(Kit.TIN, 0.35, pad.plus(new Vec(0, 0, 0.5)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(top.origin());
  }

  /** The sleeve unrolled: the stripe on the minus side, the print three times. */
  private static Mask print(Fitting fitting, double radius, double height) {
    double round = 2 * Math.PI * radius;
    Mask mask = new Mask(round, height, 20);
    double stripe = Math.min(2.2, radius * 0.55);
    mask.box(0, 0, stripe / 2, height);
    mask.box(round - stripe / 2, 0, round, height);
    double cap = Math.min(1.9, round / 15);
    for (int k = 0; k < fitting.marks().size(); k++) {
      for (double at : new double[] {0.2, 0.5, 0.8}) {
        Print.text(
            mask, fitting.marks().get(k), round * at, 1.2 + k * cap * 1.6, cap, round * 0.25);
      }
    }
    return mask;
  }
}
