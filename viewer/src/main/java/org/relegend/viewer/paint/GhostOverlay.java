package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.relegend.map.Box;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Where something probably is, but nobody placed it yet: predictions with the circle in which they
 * should lie, previews. Broken lines and a question mark tell them from marks.
 */
public final class GhostOverlay implements Overlay {
  private static final float[] DASHES = {5, 4};
  private static final double CENTRE = 2.5;

  /** How far a label reaches, in component pixels. */
  private static final double REACH = 320;

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
      if (!(radius >= 0 && radius < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a radius of " + radius);
      }
    }

    private Box bounds() {
      Box circle = new Box(at.x(), at.y(), at.x(), at.y()).grown(radius);
      if (outline.isEmpty()) {
        return circle;
      }
      Box shape = Box.around(outline);
      return Box.around(
          List.of(
              new Point(circle.left(), circle.top()),
              new Point(circle.right(), circle.bottom()),
              new Point(shape.left(), shape.top()),
              new Point(shape.right(), shape.bottom())));
    }
  }

  private final List<Ghost> ghosts;
  private final Sprites sprites = new Sprites();

  public GhostOverlay(List<Ghost> ghosts) {
    this.ghosts = List.copyOf(ghosts);
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    Rectangle clip = g.getClipBounds();
    if (clip == null) {
      clip = new Rectangle(painted.width(), painted.height());
    }
    Box seen =
        painted.seenIn(clip.x, clip.y, clip.width, clip.height).grown(REACH / painted.scale());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    ghosts.stream()
        .filter(ghost -> ghost.bounds().touches(seen))
        .forEach(ghost -> paint(g, painted, ghost));
  }

  private void paint(Graphics2D g, ViewState painted, Ghost ghost) {
    ScreenPoint at = painted.toScreen(ghost.at());
    if (!ghost.outline().isEmpty()) {
      Path2D there = new Path2D.Double(Outlines.closed(ghost.outline()), painted.transform());
      Halo.line(g, there, 1.5f, Palette.REDDISH_PURPLE, DASHES);
    }
    double radius = ghost.radius() * painted.scale();
    if (radius > CENTRE) {
      Halo.line(g, circle(at, radius), 1.5f, Palette.REDDISH_PURPLE, DASHES);
    }
    Halo.line(g, circle(at, CENTRE), 1, Palette.REDDISH_PURPLE);
    if (!ghost.label().isEmpty()) {
      sprites.label(g, ghost.label() + " ?", Mark.Emphasis.SUSPECT, at.x() + 8, at.y());
    }
  }

  private static Ellipse2D circle(ScreenPoint middle, double radius) {
    return new Ellipse2D.Double(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
  }
}
