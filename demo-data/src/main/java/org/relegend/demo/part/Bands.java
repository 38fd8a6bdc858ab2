package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Surface;

/** Rings of paint about a frame's w. */
record Bands(Skin base, Frame frame, List<Band> bands) implements Skin {
  /** One ring: from and to along w, in millimetres from the frame's origin. */
  record Band(double from, double to, Paint paint) {}

  Bands {
    bands = List.copyOf(bands);
  }

  @Override
  public void paint(Hit hit, Surface surface) {
    base.paint(hit, surface);
    double along =
        (hit.x - frame.origin().x()) * frame.w().x()
            + (hit.y - frame.origin().y()) * frame.w().y()
            + (hit.z - frame.origin().z()) * frame.w().z();
    for (int k = 0; k < bands.size(); k++) {
      Band band = bands.get(k);
      double inside = Math.min(along - band.from, band.to - along);
      if (inside > -0.03) {
        surface.cover(band.paint, Math.min(1, (inside + 0.03) / 0.06));
      }
    }
  }
}
