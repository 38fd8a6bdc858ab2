package org.relegend.viewer.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * The points of pairs that line two photos up. A ring is a good one, a triangle one to look at
 * again, a crossed square a wrong one; hair lines leave the spot itself free.
 */
public final class PairOverlay implements Overlay {
  private static final double RADIUS = 9;
  private static final double FREE = 2.5;
  private static final float[] DASHES = {4, 4};

  /** What is told of a point. */
  public enum Look {
    /** One of too few to tell. */
    OPEN,
    GOOD,
    DOUBTFUL,
    WRONG,
    /** Waits for its other half. */
    HALF,
    /** Where the next one would serve best, or the other half should be. */
    WANTED
  }

  /**
   * One point.
   *
   * @param label beside it; may be empty
   * @param chosen whether the next action is about it
   * @param radius of a circle around it, in picture units; 0 for none
   */
  public record Spot(Point at, String label, Look look, boolean chosen, double radius) {}

  private final List<Spot> spots;
  private final SpriteCache sprites = new SpriteCache();

  public PairOverlay(List<Spot> spots) {
    this.spots = List.copyOf(spots);
  }

  public List<Spot> spots() {
    return spots;
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    spots.forEach(spot -> paint(g, painted, spot));
  }

  private void paint(Graphics2D g, ViewState painted, Spot spot) {
    ScreenPoint at = painted.toScreen(spot.at());
    Color colour = colour(spot.look());
    float width = spot.chosen() ? 3.5f : 1.75f;
    boolean broken = spot.look() == Look.HALF || spot.look() == Look.WANTED;
    HaloStroke.line(g, shape(spot.look(), at), width, colour, broken ? DASHES : new float[0]);
    if (spot.look() != Look.WANTED) {
      HaloStroke.line(g, hairs(at), 1, colour);
    }
    double radius = spot.radius() * painted.scale();
    if (radius > RADIUS) {
      HaloStroke.line(g, circle(at, radius), 1.25f, colour, DASHES);
    }
    if (!spot.label().isEmpty()) {
      sprites.label(g, spot.label(), emphasis(spot.look()), at.x() + RADIUS + 5, at.y() - RADIUS);
    }
  }

  private static Color colour(Look look) {
    return switch (look) {
      case OPEN, GOOD -> Palette.SKY_BLUE;
      case DOUBTFUL -> Palette.ORANGE;
      case WRONG -> Palette.VERMILLION;
      case HALF -> Palette.YELLOW;
      case WANTED -> Palette.REDDISH_PURPLE;
    };
  }

  private static Mark.Emphasis emphasis(Look look) {
    return look == Look.WRONG || look == Look.DOUBTFUL ? Mark.Emphasis.JOINED : Mark.Emphasis.PLAIN;
  }

  private static Shape shape(Look look, ScreenPoint at) {
    return switch (look) {
      case DOUBTFUL -> triangle(at);
      case WRONG -> crossedSquare(at);
      case WANTED -> circle(at, 2 * RADIUS);
      default -> circle(at, RADIUS);
    };
  }

  private static Shape circle(ScreenPoint at, double radius) {
    return new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
  }

  private static Shape triangle(ScreenPoint at) {
    double reach = 1.5 * RADIUS;
    Path2D path = new Path2D.Double();
    path.moveTo(at.x(), at.y() - reach);
    path.lineTo(at.x() + 0.87 * reach, at.y() + reach / 2);
    path.lineTo(at.x() - 0.87 * reach, at.y() + reach / 2);
    path.closePath();
    return path;
  }

  private static Shape crossedSquare(ScreenPoint at) {
    Path2D path =
        new Path2D.Double(
            new Rectangle2D.Double(at.x() - RADIUS, at.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
    path.moveTo(at.x() - RADIUS, at.y() - RADIUS);
    path.lineTo(at.x() + RADIUS, at.y() + RADIUS);
    path.moveTo(at.x() + RADIUS, at.y() - RADIUS);
    path.lineTo(at.x() - RADIUS, at.y() + RADIUS);
    return path;
  }

  private static Shape hairs(ScreenPoint at) {
    Path2D path = new Path2D.Double();
    for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      path.moveTo(at.x() + FREE * way[0], at.y() + FREE * way[1]);
      path.lineTo(at.x() + 1.6 * RADIUS * way[0], at.y() + 1.6 * RADIUS * way[1]);
    }
    return path;
  }
}
