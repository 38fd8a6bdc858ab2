package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** Words beside places of a picture, on plates: readings, and the condition of parts. */
public final class LabelOverlay implements Overlay {
  /** How far above or below its place a label may stand, in component pixels; the first free. */
  private static final double[] OFFSETS = {-22, 22, -40, 40, -58, 58};

  /**
   * Words at a place.
   *
   * @param at picture units
   */
  public record Label(Point at, String text, Mark.Emphasis emphasis) {}

  private final List<Label> labels;
  private final Sprites sprites = new Sprites();

  public LabelOverlay(List<Label> labels) {
    this.labels = List.copyOf(labels);
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    List<Rectangle2D> taken = new ArrayList<>();
    for (Label label : labels) {
      ScreenPoint there = painted.toScreen(label.at());
      Point2D size = sprites.plateSize(g, label.text(), label.emphasis());
      Rectangle2D place = place(there, size, taken);
      taken.add(place);
      sprites.labelAbout(g, label.text(), label.emphasis(), place.getCenterX(), place.getCenterY());
    }
  }

  private static Rectangle2D place(ScreenPoint at, Point2D size, List<Rectangle2D> taken) {
    Rectangle2D first = about(at, size, OFFSETS[0]);
    for (double offset : OFFSETS) {
      Rectangle2D place = about(at, size, offset);
      if (taken.stream().noneMatch(place::intersects)) {
        return place;
      }
    }
    return first;
  }

  private static Rectangle2D about(ScreenPoint at, Point2D size, double offset) {
    return new Rectangle2D.Double(
        at.x() - size.getX() / 2, at.y() + offset - size.getY() / 2, size.getX(), size.getY());
  }
}
