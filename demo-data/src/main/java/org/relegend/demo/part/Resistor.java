package org.relegend.demo.part;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** A carbon film resistor lying on the board: a cylinder between two bulges, with its bands. */
final class Resistor implements Family {
  @Override
  public void build(Kit kit) {
    Fitting fitting = kit.fitting();
    Vec first = kit.pad("1");
    Vec last = kit.pad("2");
    double radius = fitting.width() / 2;
    double lift = radius + 0.15 + 0.25 * Math.abs(kit.wobble(4));
    Vec middle =
        first.plus(last).times(0.5).plus(new Vec(0.25 * kit.wobble(5), 0.12 * kit.wobble(6), lift));
    Vec along = last.minus(first).unit();
    Vec tilt = new Vec(0, 0.02 * kit.wobble(7), 0.012 * kit.wobble(8));
    Frame frame = Frame.along(middle, along.plus(tilt));
    lying(kit, frame, radius, kit.wobble(9) < 0);
    lead(kit, frame.point(0, 0, -fitting.length() / 2), first);
    lead(kit, frame.point(0, 0, fitting.length() / 2), last);
    kit.middle(middle);
  }

  /** The body along w; {@code turned} tells that its first band lies at the far end. */
  static void lying(Kit kit, Frame frame, double radius, boolean turned) {
    double half = kit.fitting().length() / 2;
    Paint body = Paint.of(kit.fitting().body(), 0.35);
    Skin skin = new Bands(body, frame, bands(kit.part().value(), half, turned));
    double neck = radius * 0.8;
    double bulge = radius * 1.05;
    kit.body(new Solid.Builder(skin).cylinder(frame, neck, neck, half - bulge * 0.8).build());
    for (int end = -1; end <= 1; end += 2) {
      Frame at = frame.at(0, 0, end * (half - bulge));
      kit.body(new Solid.Builder(skin).ellipsoid(at, radius, radius, bulge).build());
      Frame tip = frame.at(0, 0, end * (half - bulge * 0.35));
      kit.detail(
          new Solid.Builder(skin)
              .ellipsoid(tip, radius * 0.55, radius * 0.55, bulge * 0.6)
              .build());
    }
  }

  private static List<Bands.Band> bands(String value, double half, boolean turned) {
    List<Paint> paints = ColourCode.bands(value);
    double[] places = {-0.74, -0.38, -0.04, 0.62};
    double width = half * 0.2;
    List<Bands.Band> bands = new ArrayList<>();
    for (int k = 0; k < places.length; k++) {
      double at = half * places[k] * (turned ? -1 : 1);
      bands.add(new Bands.Band(at - width / 2, at + width / 2, paints.get(k)));
    }
    return bands;
  }

  static void lead(Kit kit, Vec from, Vec pad) {
    Vec level = pad.minus(from);
    Vec outward = new Vec(level.x(), level.y(), 0);
    double length = outward.length();
    Vec step = outward.times(1 / length);
    double radius = 0.32;
    Vec bend = new Vec(pad.x(), pad.y(), from.z());
    kit.wire(
        Kit.TIN,
        radius,
        from.minus(step.times(0.3)),
        bend.minus(step.times(0.9)),
        bend.minus(step.times(0.25)).plus(new Vec(0, 0, -0.25)),
        bend.plus(new Vec(0, 0, -0.9)),
        pad.plus(new Vec(0, 0, -0.5)));
  }
}
