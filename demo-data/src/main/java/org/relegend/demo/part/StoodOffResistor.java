package org.relegend.demo.part;

import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Vec;

/** A power resistor held off the board on its own leads. */
final class StoodOffResistor implements Family {
  @Override
  public void build(Kit kit) {
    Vec first = kit.pad("1");
    Vec last = kit.pad("2");
    double height = kit.fitting().height();
    Vec middle = first.plus(last).times(0.5).plus(new Vec(0.2, 0.7, height));
    Vec along = last.minus(first).unit().plus(new Vec(0, 0.05, 0.03));
    Frame frame = Frame.along(middle, along);
    Resistor.lying(kit, frame, kit.fitting().width() / 2, false);
    double half = kit.fitting().length() / 2;
    leg(kit, frame.point(0, 0, -half), first);
    leg(kit, frame.point(0, 0, half), last);
    kit.middle(middle);
  }

  private static void leg(Kit kit, Vec end, Vec pad) {
    Vec out = new Vec(pad.x() - end.x(), pad.y() - end.y(), 0);
    kit.wire(
        Kit.TIN,
        0.38,
        end.minus(out.times(0.4)),
        end.plus(out.times(0.75)),
        end.plus(out).plus(new Vec(0, 0, -0.7)),
        pad.plus(new Vec(0, 0, -0.5)));
  }
}
