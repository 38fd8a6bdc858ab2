package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** An open preset lying flat: a wafer with its carbon track, and the slotted wiper. */
final class Preset implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    Frame wafer = kit.upright(2.2);
    Frame top = wafer.at(0, 0, 0.6);
    Mask track = new Mask(2 * radius, 2 * radius, 24);
    track.ring(radius, radius, radius * 0.52, radius * 0.86);
    Mask gap = new Mask(2 * radius, 2 * radius, 24);
    gap.box(radius - 0.8, radius, radius + 0.8, 2 * radius);
    Skin base = Paint.of(fitting.body(), 0.5);
    Skin carbon =
        new Print(base, track, Paint.of(0x17171A, 0.35), top.at(-radius, -radius, 0), 0.8);
    Skin skin =
        new Print(carbon, gap, Paint.of(fitting.body(), 0.5), top.at(-radius, -radius, 0), 0.8);
    kit.body(new Solid.Builder(skin).cylinder(wafer, radius, radius, 0.6).build());
    rotor(kit, top, radius);
    for (Vec pad : kit.pads()) {
      Frame leg = Frame.upright(pad.plus(new Vec(0, 0, 0.9)), 0);
      kit.detail(new Solid.Builder(Kit.TIN).box(leg, 0.6, 0.2, 1.3).build());
    }
    kit.middle(top.point(0, 0, 1.2));
  }

  private static void rotor(Kit kit, Frame top, double radius) {
    double turn = 200 + 110 * kit.wobble(11);
    Frame hub = Frame.upright(top.point(0, 0, 0.7), turn);
    Mask slot = new Mask(3.6, 3.6, 30);
    slot.box(0.1, 1.5, 3.5, 2.1);
    Skin skin = new Print(Kit.STEEL, slot, Paint.of(0x1E1C1A, 0.8), hub.at(-1.8, -1.8, 0.6), 0.8);
    kit.detail(new Solid.Builder(skin).cylinder(hub, 1.7, 1.7, 0.6).build());
    Frame arm = hub.at(radius * 0.42, 0, -0.1);
    kit.detail(new Solid.Builder(Kit.STEEL).box(arm, radius * 0.36, 0.7, 0.2).build());
    kit.detail(
        new Solid.Builder(Kit.STEEL)
            .ellipsoid(hub.at(radius * 0.7, 0, -0.25), 0.7, 0.9, 0.4)
            .build());
  }
}
