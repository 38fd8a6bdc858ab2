package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/**
 * An axial electrolytic capacitor stood on end over its minus pad: the plus lead comes out of the
 * seal on top, over the rim and down to the plus pad.
 */
final class UprightAxial implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    double height = fitting.height();
    Vec minus = kit.pad("-");
    Vec plus = kit.pad("+");
    Vec away = minus.minus(plus).unit();
    Frame foot =
        Frame.upright(minus.plus(away.times(0.8)).plus(new Vec(0, 0, 0.6)), 12)
            .leaning(1.5 + kit.wobble(4), 1.5 * kit.wobble(5));
    Frame top = foot.at(0, 0, height);
    Skin skin =
        new Sleeve(
            Paint.of(fitting.body(), 0.3),
            Kit.ALUMINIUM,
            Paint.of(fitting.ink(), 0.5),
            print(fitting, radius, height),
            top,
            radius,
            false);
    kit.body(
        new Solid.Builder(skin)
            .cylinder(foot.at(0, 0, height / 2), radius, radius, height / 2)
            .build());
    double seal = radius * 0.68;
    kit.body(new Solid.Builder(Paint.of(0x3A2A22, 0.7)).ellipsoid(top, seal, seal, 1.1).build());
    Vec crown = top.point(0, 0, 1.0);
    Vec over = new Vec(plus.x(), plus.y(), crown.z() + 1.6);
    Vec halfway = crown.plus(over).times(0.5);
    kit.wire(
        Kit.TIN,
        0.4,
        crown,
        crown.plus(new Vec(-0.2, 0, 1.6)),
        halfway.plus(new Vec(0, 0, 1.7)),
        over.plus(new Vec(0.3, 0, 0.3)),
        over.plus(new Vec(0, 0, -1.2)),
        plus.plus(new Vec(0, 0, -0.5)));
    kit.middle(top.point(0, 0, 0.6));
  }

  private static Mask print(Fitting fitting, double radius, double height) {
    double round = 2 * Math.PI * radius;
    Mask mask = new Mask(round, height, 20);
    double cap = Math.min(1.8, round / 18);
    for (int k = 0; k < fitting.marks().size(); k++) {
      for (double at : new double[] {0.17, 0.5, 0.83}) {
        Print.text(mask, fitting.marks().get(k), round * at, 3 + k * cap * 1.6, cap, round * 0.28);
      }
    }
    mask.box(0, 1.6, round, 1.9);
    return mask;
  }
}
