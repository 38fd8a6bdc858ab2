package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A polystyrene capacitor: foil under a clear skin, a coloured end at the outer foil. */
final class Polystyrene implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    Vec first = kit.pad("1");
    Vec last = kit.pad("2");
    double radius = fitting.width() / 2;
    double half = fitting.length() / 2;
    Vec middle = first.plus(last).times(0.5).plus(new Vec(0.1, 0.1 * kit.wobble(5), radius + 0.3));
    Frame frame = Frame.along(middle, last.minus(first).plus(new Vec(0, 0.15 * kit.wobble(6), 0)));
    Skin foil =
        new Bands(
            Paint.metal(fitting.body(), 0.22),
            frame,
            List.of(new Bands.Band(half * 0.62, half, Paint.of(0xA8281E, 0.25))));
    Frame face =
        new Frame(
            middle.plus(new Vec(-half * 0.15, 0, 0)),
            new Vec(1, 0, 0),
            new Vec(0, 1, 0),
            new Vec(0, 0, 1));
    Skin skin =
        Print.lines(
            foil, fitting.marks(), Paint.of(fitting.ink(), 0.6), face, half * 1.4, radius * 0.62);
    kit.body(new Solid.Builder(skin).cylinder(frame, radius, radius, half).build());
    for (int end = -1; end <= 1; end += 2) {
      kit.body(
          new Solid.Builder(skin)
              .ellipsoid(frame.at(0, 0, end * half), radius, radius, 0.55)
              .build());
    }
    Resistor.lead(kit, frame.point(0, 0, -half), first);
    Resistor.lead(kit, frame.point(0, 0, half), last);
    kit.middle(middle);
  }
}
