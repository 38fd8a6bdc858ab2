package org.relegend.demo.photo;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Pads;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Track;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.StrokeFont;
import org.relegend.demo.part.Specimen;

/** The board's copper as a mask, seen from one side. */
final class Copper {
  static final double LINK_PAD = 1.0;
  private static final double ROUNDING = 1.1;

  private Copper() {}

  /** Where a place on the component side lies in the view of a side. */
  static Spot seen(Spot at, Side side, Design design) {
    return side == Side.COMPONENT ? at : new Spot(design.width() - at.x(), at.y());
  }

  static Mask mask(Specimen specimen, Side side, double scale) {
    Design design = specimen.design();
    Mask mask = new Mask(design.width(), design.height(), scale);
    for (Track track : specimen.artwork().tracks()) {
      List<double[]> run = new ArrayList<>();
      for (Spot at : rounded(track.points())) {
        Spot there = seen(at, side, design);
        run.add(new double[] {there.x(), there.y()});
      }
      mask.stroke(run, track.width());
    }
    for (PlacedPin pin : design.pins()) {
      Spot at = seen(pin.at(), side, design);
      mask.disc(at.x(), at.y(), Pads.radius(design, pin));
    }
    for (Link link : specimen.artwork().links()) {
      for (Spot end : List.of(link.from(), link.to())) {
        Spot at = seen(end, side, design);
        mask.disc(at.x(), at.y(), LINK_PAD);
      }
    }
    return mask;
  }

  /** Adds the board's own number, etched in copper, readable from the solder side. */
  static void number(Mask mask, String number, Spot at, double capHeight) {
    for (List<double[]> run : StrokeFont.strokes(number)) {
      List<double[]> placed =
          run.stream()
              .map(p -> new double[] {at.x() + p[0] * capHeight, at.y() + p[1] * capHeight})
              .toList();
      mask.stroke(placed, capHeight * 0.17);
    }
  }

  /** The same run with its corners cut round, as laid tape turns. */
  private static List<Spot> rounded(List<Spot> points) {
    List<Spot> run = new ArrayList<>();
    run.add(points.get(0));
    for (int k = 1; k + 1 < points.size(); k++) {
      Spot corner = points.get(k);
      Spot in = towards(corner, points.get(k - 1));
      Spot out = towards(corner, points.get(k + 1));
      for (int n = 0; n <= 4; n++) {
        double t = n / 4.0;
        double a = (1 - t) * (1 - t);
        double b = 2 * t * (1 - t);
        double c = t * t;
        run.add(
            new Spot(
                a * in.x() + b * corner.x() + c * out.x(),
                a * in.y() + b * corner.y() + c * out.y()));
      }
    }
    run.add(points.get(points.size() - 1));
    return run;
  }

  private static Spot towards(Spot from, Spot to) {
    double length = from.distance(to);
    double step = Math.min(ROUNDING, length / 2) / Math.max(length, 1e-9);
    return new Spot(from.x() + (to.x() - from.x()) * step, from.y() + (to.y() - from.y()) * step);
  }
}
