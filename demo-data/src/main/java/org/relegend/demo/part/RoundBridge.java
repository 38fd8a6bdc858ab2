package org.relegend.demo.part;

import org.relegend.demo.draw.Mask;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A rectifier bridge in a round pot, its four terminals marked on top. */
final class RoundBridge implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    double radius = fitting.length() / 2;
    double height = fitting.height();
    Frame foot = kit.upright(1.2);
    Frame top = foot.at(0, 0, height);
    Mask mask = new Mask(2 * radius, 2 * radius, 24);
    Vec plus = kit.pad("PLUS");
    for (String pin : new String[] {"PLUS", "AC1", "AC2", "MINUS"}) {
      Vec out = kit.pad(pin).minus(kit.pad("PLUS").plus(kit.pad("MINUS")).times(0.5));
      String sign = pin.equals("PLUS") ? "+" : pin.equals("MINUS") ? "-" : "~";
      Print.text(mask, sign, radius + out.x() * 0.95, radius + out.y() * 0.95 - 0.7, 1.3, 2);
    }
    Print.text(mask, fitting.marks().get(0), radius, radius - 0.55, 1.0, radius * 1.2);
    Skin skin =
        new Print(
            Paint.of(fitting.body(), 0.45),
            mask,
            Paint.of(fitting.ink(), 0.6),
            top.at(-radius, -radius, 0),
            0.9);
    Frame middle = foot.at(0, 0, height / 2);
    Vec slant = plus.minus(kit.pad("MINUS")).unit();
    kit.body(
        new Solid.Builder(skin)
            .cylinder(middle, radius, radius, height / 2)
            .plane(middle.origin().plus(slant.times(radius * 0.9)), slant)
            .build());
    for (Vec pad : kit.pads()) {
      kit.wire(Kit.TIN, 0.4, pad.plus(new Vec(0, 0, 1.4)), pad.plus(new Vec(0, 0, -0.5)));
    }
    kit.middle(top.origin());
  }
}
