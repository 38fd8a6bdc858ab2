package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
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
public final class PredictedPlaceOverlay implements Overlay {
  private static final float[] DASHES = {5, 4};
  private static final double CENTRE = 2.5;

  /** Component pixels that ghosts must be apart for all to be labelled. */
  private static final double ROOM_FOR_LABELS = 40;

  /** How far a label reaches, in component pixels. */
  private static final double REACH = 320;

  /**
   * One such place.
   *
   * @param radius of the circle in which it should lie, in picture units; 0 for none
   * @param outline in picture units; may be empty
   * @param label may be empty
   * @param chosen whether the next action is about it
   */
  public record Predicted(
      Point at, double radius, List<Point> outline, String label, boolean chosen) {
    /** One that isn't chosen. */
    public Predicted(Point at, double radius, List<Point> outline, String label) {
      this(at, radius, outline, label, false);
    }

    public Predicted {
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

  private final List<Predicted> ghosts;
  private final double spacing;
  private final SpriteCache sprites = new SpriteCache();

  public PredictedPlaceOverlay(List<Predicted> ghosts) {
    this.ghosts = List.copyOf(ghosts);
    this.spacing = spacing(this.ghosts);
  }

  /** How near the nearest other is, for a half of them, in picture units. */
  private static double spacing(List<Predicted> ghosts) {
    double[] nearest =
        ghosts.stream()
            .mapToDouble(
                one ->
                    ghosts.stream()
                        .filter(other -> !other.equals(one))
                        .mapToDouble(other -> other.at().distance(one.at()))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY))
            .sorted()
            .toArray();
    return nearest.length == 0 ? 0 : nearest[nearest.length / 2];
  }

  public List<Predicted> ghosts() {
    return ghosts;
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

  private void paint(Graphics2D g, ViewState painted, Predicted ghost) {
    ScreenPoint at = painted.toScreen(ghost.at());
    if (!ghost.outline().isEmpty()) {
      Path2D there = new Path2D.Double(OutlineShapes.closed(ghost.outline()), painted.transform());
      HaloStroke.line(g, there, 1.5f, Palette.REDDISH_PURPLE, DASHES);
    }
    double radius = ghost.radius() * painted.scale();
    if (radius > CENTRE) {
      float width = ghost.chosen() ? 3.5f : 1.5f;
      HaloStroke.fill(g, pieces(circle(at, radius), width), Palette.REDDISH_PURPLE);
    }
    HaloStroke.line(g, circle(at, CENTRE), 1, Palette.REDDISH_PURPLE);
    if (ghost.chosen()) {
      HaloStroke.line(g, hairs(at), 1.25f, Palette.REDDISH_PURPLE);
    }
    boolean room = spacing * painted.scale() >= ROOM_FOR_LABELS;
    if (!ghost.label().isEmpty() && (room || ghost.chosen())) {
      sprites.label(g, ghost.label() + " ?", Mark.Emphasis.SUSPECT, at.x() + 12, at.y());
    }
  }

  /** A line in pieces with gaps between their edges, so that what lies beneath shows. */
  private static Shape pieces(Shape shape, float width) {
    return new BasicStroke(
            width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 10}, 0)
        .createStrokedShape(shape);
  }

  /** Four short lines that leave the spot itself free. */
  private static Shape hairs(ScreenPoint at) {
    Path2D path = new Path2D.Double();
    for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      path.moveTo(at.x() + 5 * way[0], at.y() + 5 * way[1]);
      path.lineTo(at.x() + 12 * way[0], at.y() + 12 * way[1]);
    }
    return path;
  }

  private static Ellipse2D circle(ScreenPoint middle, double radius) {
    return new Ellipse2D.Double(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
  }
}
