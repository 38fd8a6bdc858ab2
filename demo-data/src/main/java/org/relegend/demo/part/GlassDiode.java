package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A diode in a small bead of glass, with a band at its cathode. */
final class GlassDiode implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    Vec anode = kit.pad("A");
    Vec cathode = kit.pad("K");
    double radius = fitting.width() / 2;
    double half = fitting.length() / 2;
    Vec middle = anode.plus(cathode).times(0.5).plus(new Vec(0.3 * kit.wobble(5), 0, radius + 0.3));
    Frame frame =
        Frame.along(middle, cathode.minus(anode).plus(new Vec(0, 0.2 * kit.wobble(6), 0)));
    Skin skin =
        new Bands(
            Paint.of(fitting.body(), 0.12),
            frame,
            List.of(new Bands.Band(half * 0.42, half * 0.82, Paint.of(fitting.ink(), 0.3))));
    kit.body(new Solid.Builder(skin).cylinder(frame, radius, radius, half * 0.8).build());
    for (int end = -1; end <= 1; end += 2) {
      kit.body(
          new Solid.Builder(skin)
              .ellipsoid(frame.at(0, 0, end * half * 0.8), radius, radius, half * 0.22)
              .build());
    }
    Resistor.lead(kit, frame.point(0, 0, -half), anode);
    Resistor.lead(kit, frame.point(0, 0, half), cathode);
    kit.middle(middle);
  }
}
