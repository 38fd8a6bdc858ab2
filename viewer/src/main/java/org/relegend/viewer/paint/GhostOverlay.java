package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.List;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** Where something probably is, but nobody placed it yet: predictions and previews. */
public final class GhostOverlay implements Overlay {
  /**
   * One such place.
   *
   * @param radius of the circle in which it should lie, in picture units; 0 for none
   * @param outline in picture units; may be empty
   * @param label may be empty
   */
  public record Ghost(Point at, double radius, List<Point> outline, String label) {
    public Ghost {
      outline = List.copyOf(outline);
      if (!(radius >= 0)) {
        throw new IllegalArgumentException("a radius of " + radius);
      }
    }
  }

  private final List<Ghost> ghosts;

  public GhostOverlay(List<Ghost> ghosts) {
    this.ghosts = List.copyOf(ghosts);
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    g.setStroke(
        new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
    g.setColor(Palette.REDDISH_PURPLE);
    for (Ghost ghost : ghosts) {
      ScreenPoint at = painted.toScreen(ghost.at());
      int radius = (int) Math.max(6, ghost.radius() * painted.scale());
      g.drawOval((int) at.x() - radius, (int) at.y() - radius, 2 * radius, 2 * radius);
    }
  }
}
