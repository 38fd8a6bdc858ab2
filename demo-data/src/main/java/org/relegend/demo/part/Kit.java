package org.relegend.demo.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/** One part being put together: where it stands, what is to be fitted, and the solids so far. */
final class Kit {
  static final Paint TIN = Paint.metal(0xC4C5C2, 0.32);
  static final Paint ALUMINIUM = Paint.metal(0xCDCFD2, 0.28);
  static final Paint BRASS = Paint.metal(0xD9B45A, 0.25);
  static final Paint STEEL = Paint.metal(0xA9ABAE, 0.35);

  private final PlacedPart part;
  private final Map<String, PlacedPin> pins;
  private final Fitting fitting;
  private final long seed;
  private final List<Solid> solids = new ArrayList<>();
  private final List<Vec> hull = new ArrayList<>();
  private Vec middle;

  Kit(PlacedPart part, Map<String, PlacedPin> pins, Fitting fitting, long seed) {
    this.part = part;
    this.pins = pins;
    this.fitting = fitting;
    this.seed = seed;
    middle = new Vec(part.at().x(), part.at().y(), fitting.height());
  }

  PlacedPart part() {
    return part;
  }

  Fitting fitting() {
    return fitting;
  }

  long seed() {
    return seed;
  }

  /** The middle of a pin's pad, on the board's face. */
  Vec pad(String pin) {
    PlacedPin found = pins.get(pin);
    if (found == null) {
      throw new IllegalArgumentException(part.designator() + " has no pin " + pin);
    }
    return ground(found.at());
  }

  List<Vec> pads() {
    return pins.values().stream().map(pin -> ground(pin.at())).toList();
  }

  /** How carelessly the part was fitted: even over -1..1, one value a number. */
  double wobble(int number) {
    return 2 * Noise.of(seed, part.designator(), number) - 1;
  }

  /** Upright on the board over the part's middle, fitted a little askew. */
  Frame upright(double height) {
    Vec at = new Vec(part.at().x() + 0.18 * wobble(1), part.at().y() + 0.18 * wobble(2), height);
    return Frame.upright(at, 1.6 * wobble(3));
  }

  /** A solid that counts as the part's body. */
  void body(Solid solid) {
    solids.add(solid);
    hull.addAll(solid.hull());
  }

  /** A solid that does not: leads, clips, screws. */
  void detail(Solid solid) {
    solids.add(solid);
  }

  /** The point that is called the body's middle. */
  void middle(Vec at) {
    middle = at;
  }

  /** A round wire along a run of points. */
  void wire(Skin skin, double radius, Vec... run) {
    for (int k = 0; k + 1 < run.length; k++) {
      Vec half = run[k + 1].minus(run[k]).times(0.5);
      if (half.length() < 1e-6) {
        continue;
      }
      Frame frame = Frame.along(run[k].plus(half), half);
      detail(new Solid.Builder(skin).cylinder(frame, radius, radius, half.length()).build());
      if (k > 0) {
        Frame joint = Frame.upright(run[k], 0);
        detail(new Solid.Builder(skin).ellipsoid(joint, radius, radius, radius).build());
      }
    }
  }

  List<Solid> solids() {
    return solids;
  }

  Body whole() {
    return new Body(part.designator(), middle, hull);
  }

  private static Vec ground(Spot at) {
    return new Vec(at.x(), at.y(), 0);
  }
}
