package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Surface;
import org.relegend.demo.ray.Vec;

/** A 5 x 20 mm glass fuse in two spring clips. */
final class Fuse implements Family {
  private static final double RADIUS = 2.6;

  @Override
  public void build(Kit kit) {
    Vec first = kit.pad("1");
    Vec last = kit.pad("2");
    Vec middle = first.plus(last).times(0.5).plus(new Vec(0, 0, 5.6));
    Frame frame = Frame.along(middle, last.minus(first));
    kit.body(new Solid.Builder(new Glass()).cylinder(frame, 2.3, 2.3, 6).build());
    kit.detail(new Solid.Builder(Kit.TIN).cylinder(frame.at(0.3, 0.2, 0), 0.1, 0.1, 6).build());
    for (Vec pad : List.of(first, last)) {
      double side = Math.signum(pad.x() - middle.x());
      Frame cap = frame.at(0, 0, side * 7.6);
      kit.body(new Solid.Builder(Kit.ALUMINIUM).cylinder(cap, RADIUS, RADIUS, 2.5).build());
      clip(kit, middle.plus(new Vec(side * 8.2, 0, 0)), side);
    }
    kit.middle(middle);
  }

  private static void clip(Kit kit, Vec middle, double side) {
    Vec foot = new Vec(middle.x(), middle.y(), 0);
    Frame base = Frame.upright(foot.plus(new Vec(side * 0.6, 0, 1.0)), 0);
    kit.detail(new Solid.Builder(Kit.BRASS).box(base, 2.2, 2.9, 0.25).build());
    for (int flank = -1; flank <= 1; flank += 2) {
      Frame wall = Frame.upright(foot.plus(new Vec(0, flank * 2.85, 4.2)), 0);
      kit.detail(
          new Solid.Builder(Kit.BRASS).box(wall.leaning(0, -4 * flank), 1.9, 0.2, 3.4).build());
      Frame lip = Frame.upright(foot.plus(new Vec(0, flank * 3.0, 7.9)), 0);
      kit.detail(
          new Solid.Builder(Kit.BRASS).box(lip.leaning(0, 28 * flank), 1.9, 0.2, 0.8).build());
    }
    Frame stop = Frame.upright(foot.plus(new Vec(side * 2.4, 0, 3.4)), 0);
    kit.detail(new Solid.Builder(Kit.BRASS).box(stop, 0.2, 2.2, 2.4).build());
  }

  /** Thin glass: lets most of the light through, mirrors a little. */
  private static final class Glass implements Skin {
    private static final Paint PANE = Paint.of(0xCFD6D2, 0.05);

    @Override
    public void paint(Hit hit, Surface surface) {
      surface.set(PANE);
      surface.clear = 0.78 * Math.max(0, hit.nz);
    }
  }
}
