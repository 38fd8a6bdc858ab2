package org.relegend.demo.photo;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.part.Specimen;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** What stands on the solder side: cut leads, and wires that someone soldered on. */
final class Underside {
  private static final Paint LEAD = Paint.metal(0xB9BAB6, 0.35);
  private static final Paint INSULATION = Paint.of(0xB83A2A, 0.4);

  private final Specimen specimen;
  private final Design design;

  Underside(Specimen specimen) {
    this.specimen = specimen;
    this.design = specimen.design();
  }

  List<Solid> solids() {
    List<Solid> solids = new ArrayList<>();
    for (PlacedPin pin : design.pins()) {
      Spot at = Copper.seen(pin.at(), Side.SOLDER, design);
      double tall = 1.1 + 0.7 * Noise.of(specimen.seed(), pin.name(), 1);
      double radius = 0.27 + 0.06 * Noise.of(specimen.seed(), pin.name(), 2);
      Frame frame =
          Frame.upright(new Vec(at.x(), at.y(), tall / 2), 0)
              .leaning(
                  16 * Noise.of(specimen.seed(), pin.name(), 3) - 8,
                  16 * Noise.of(specimen.seed(), pin.name(), 4) - 8);
      solids.add(new Solid.Builder(LEAD).cylinder(frame, radius, radius, tall / 2).build());
    }
    for (Link repair : specimen.repairs()) {
      wire(repair, solids);
    }
    return solids;
  }

  /** An insulated wire in a slack bow between two joints. */
  private void wire(Link repair, List<Solid> solids) {
    Spot from = Copper.seen(repair.from(), Side.SOLDER, design);
    Spot to = Copper.seen(repair.to(), Side.SOLDER, design);
    double length = from.distance(to);
    double sideX = -(to.y() - from.y()) / length;
    double sideY = (to.x() - from.x()) / length;
    int steps = 24;
    Vec before = new Vec(from.x(), from.y(), 0.9);
    for (int k = 1; k <= steps; k++) {
      double t = k / (double) steps;
      double bow = 4 * t * (1 - t);
      Vec at =
          new Vec(
              from.x() + (to.x() - from.x()) * t + sideX * 3.2 * bow * (1 - 0.6 * t),
              from.y() + (to.y() - from.y()) * t + sideY * 3.2 * bow * (1 - 0.6 * t),
              0.9 + 1.8 * bow);
      boolean bare = k <= 3 || k > steps - 3;
      double radius = bare ? 0.28 : 0.6;
      Paint skin = bare ? LEAD : INSULATION;
      Vec half = at.minus(before).times(0.5);
      Frame frame = Frame.along(before.plus(half), half);
      solids.add(new Solid.Builder(skin).cylinder(frame, radius, radius, half.length()).build());
      solids.add(
          new Solid.Builder(skin).ellipsoid(Frame.upright(at, 0), radius, radius, radius).build());
      before = at;
    }
  }
}
