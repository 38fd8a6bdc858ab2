package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Box;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** Pads, bodies and net labels of one picture. */
public final class MarkOverlay implements Overlay {
  private final List<Mark> marks;

  public MarkOverlay(List<Mark> marks) {
    this.marks = List.copyOf(marks);
  }

  public List<Mark> marks() {
    return marks;
  }

  /** The marks that touch a box of the picture. */
  public List<Mark> in(Box box) {
    return marks.stream().filter(mark -> box.contains(mark.at())).toList();
  }

  /**
   * What a person means who points there: the nearest pad, label or bare body within reach, else
   * the smallest body around the point.
   *
   * @param reach in picture units
   */
  public Optional<Mark> pointedAt(Point point, double reach) {
    return marks.stream()
        .filter(mark -> mark.at().distance(point) <= reach)
        .min(Comparator.comparingDouble(mark -> mark.at().distance(point)));
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    for (Mark mark : marks) {
      ScreenPoint at = painted.toScreen(mark.at());
      int x = (int) Math.round(at.x());
      int y = (int) Math.round(at.y());
      g.setStroke(new BasicStroke(4));
      g.setColor(Color.WHITE);
      g.drawOval(x - 5, y - 5, 10, 10);
      g.setStroke(new BasicStroke(2));
      g.setColor(Palette.BLUE);
      g.drawOval(x - 5, y - 5, 10, 10);
    }
  }
}
