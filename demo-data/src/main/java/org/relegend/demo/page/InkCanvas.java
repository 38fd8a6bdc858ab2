package org.relegend.demo.page;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.StrokeFont;

/** Draws with ink on a sheet of coverage; text is stencilled, so nothing of it stays text. */
final class InkCanvas implements Canvas {
  private final Mask ink;

  /** The mask is scaled in pixels a point. */
  InkCanvas(Mask ink) {
    this.ink = ink;
  }

  @Override
  public void line(List<Dot> run, double width) {
    ink.stroke(run.stream().map(InkCanvas::pair).toList(), width * 1.15);
  }

  @Override
  public void fill(List<Dot> outline) {
    ink.polygon(outline.stream().map(InkCanvas::pair).toList());
  }

  @Override
  public void circle(Dot middle, double radius, double width) {
    ink.ring(middle.x(), middle.y(), radius - width / 2, radius + width / 2);
  }

  @Override
  public void text(String text, Dot at, double size, Align align) {
    double cap = size * 0.72;
    double width = StrokeFont.width(text) * cap;
    double left =
        switch (align) {
          case LEFT -> at.x();
          case MIDDLE -> at.x() - width / 2;
          case RIGHT -> at.x() - width;
        };
    for (List<double[]> run : StrokeFont.strokes(text)) {
      List<double[]> placed = new ArrayList<>();
      for (double[] p : run) {
        placed.add(new double[] {left + p[0] * cap, at.y() - cap + p[1] * cap});
      }
      ink.stroke(placed, Math.max(0.75, size * 0.1));
    }
  }

  private static double[] pair(Dot dot) {
    return new double[] {dot.x(), dot.y()};
  }
}
