package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.StrokeFont;
import org.relegend.demo.ray.Frame;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Surface;

/**
 * Lettering or pattern over another skin, on what faces along the frame's w: the mask's upper left
 * corner at the frame's origin, u to its right, v down.
 */
record Print(Skin base, Mask mask, Paint ink, Frame frame, double facing) implements Skin {
  private static final double SCALE = 22;

  /** Lines of text in the middle of a face; {@code frame}'s origin is the face's middle. */
  static Print lines(
      Skin base, List<String> lines, Paint ink, Frame frame, double width, double capHeight) {
    double pitch = capHeight * 1.55;
    double height = pitch * lines.size() + capHeight * 0.4;
    Mask mask = new Mask(width, height, SCALE);
    for (int k = 0; k < lines.size(); k++) {
      text(mask, lines.get(k), width / 2, capHeight * 0.4 + k * pitch, capHeight, width * 0.96);
    }
    return new Print(base, mask, ink, frame.at(-width / 2, -height / 2, 0), 0.3);
  }

  /** One line centred about x, its capitals' tops at y, narrowed to fit {@code most}. */
  static void text(Mask mask, String line, double x, double y, double capHeight, double most) {
    double natural = StrokeFont.width(line) * capHeight;
    double squeeze = Math.min(1, most / Math.max(natural, 1e-9));
    for (List<double[]> run : StrokeFont.strokes(line)) {
      List<double[]> placed =
          run.stream()
              .map(
                  p ->
                      new double[] {
                        x - natural * squeeze / 2 + p[0] * capHeight * squeeze, y + p[1] * capHeight
                      })
              .toList();
      mask.stroke(placed, capHeight * 0.15);
    }
  }

  @Override
  public void paint(Hit hit, Surface surface) {
    base.paint(hit, surface);
    double along = hit.nx * frame.w().x() + hit.ny * frame.w().y() + hit.nz * frame.w().z();
    if (along < facing) {
      return;
    }
    double px = hit.x - frame.origin().x();
    double py = hit.y - frame.origin().y();
    double pz = hit.z - frame.origin().z();
    double a = px * frame.u().x() + py * frame.u().y() + pz * frame.u().z();
    double b = px * frame.v().x() + py * frame.v().y() + pz * frame.v().z();
    double cover = mask.at(a, b);
    if (cover > 0) {
      surface.cover(ink, cover * 0.9);
    }
  }
}
