package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Hazard zones: always the last thing painted over a picture. A band of slanting black and yellow
 * stripes follows the outline, as ISO 3864 has it for places of danger; warning triangles with the
 * kind in words stand in the middle and, however far one zooms in, somewhere on the screen.
 */
public final class HazardOverlay implements Overlay {
  /** Width of the band in component pixels. */
  private static final float BAND = 9;

  /** Length of one pair of stripes across the screen, in component pixels. */
  private static final int STRIPES = 16;

  /** Side of the triangle in component pixels. */
  private static final double SIGN = 34;

  /** Distance of the triangles inside a zone, in component pixels; less than any window. */
  private static final double LATTICE = 180;

  /** How far a sign and its words reach from their place, in component pixels. */
  private static final double REACH = 320;

  private final List<HazardZone> zones;
  private final Function<HazardZone.Kind, String> words;
  private final SpriteCache sprites = new SpriteCache();

  public HazardOverlay(List<HazardZone> zones) {
    this(zones, kind -> kind.word().replace('-', ' ').toUpperCase(Locale.ROOT));
  }

  /** With words for the kinds in the user's language. */
  public HazardOverlay(List<HazardZone> zones, Function<HazardZone.Kind, String> words) {
    this.zones = List.copyOf(zones);
    this.words = words;
  }

  public List<HazardZone> zones() {
    return zones;
  }

  /** The zones a point lies in. */
  public List<HazardZone> at(Point point) {
    return zones.stream()
        .filter(zone -> OutlineShapes.closed(zone.outline()).contains(point.x(), point.y()))
        .toList();
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    Rectangle bounds = g.getClipBounds();
    Rectangle clip = bounds == null ? new Rectangle(painted.width(), painted.height()) : bounds;
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    for (HazardZone zone : zones) {
      Path2D there = new Path2D.Double(OutlineShapes.closed(zone.outline()), painted.transform());
      Rectangle2D around = there.getBounds2D();
      Rectangle2D reached =
          new Rectangle2D.Double(
              around.getX() - REACH,
              around.getY() - REACH,
              around.getWidth() + 2 * REACH,
              around.getHeight() + 2 * REACH);
      if (reached.intersects(clip)) {
        band(g, painted, there);
        signs(g, painted, zone, there, clip);
      }
    }
  }

  private static void band(Graphics2D g, ViewState painted, Shape outline) {
    g.setStroke(stroke(BAND + 6));
    g.setColor(HaloStroke.LIGHT);
    g.draw(outline);
    g.setStroke(stroke(BAND + 3));
    g.setColor(Palette.WARNING_BLACK);
    g.draw(outline);
    g.setStroke(stroke(BAND));
    g.setPaint(stripes(painted));
    g.draw(outline);
  }

  private static BasicStroke stroke(float width) {
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** Stripes that move along with the picture. */
  private static TexturePaint stripes(ViewState painted) {
    BufferedImage tile = new BufferedImage(STRIPES, STRIPES, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < STRIPES; y++) {
      for (int x = 0; x < STRIPES; x++) {
        boolean yellow = (x + y) % STRIPES < STRIPES / 2;
        tile.setRGB(x, y, (yellow ? Palette.WARNING_YELLOW : Palette.WARNING_BLACK).getRGB());
      }
    }
    ScreenPoint origin = painted.toScreen(new Point(0, 0));
    return new TexturePaint(
        tile,
        new Rectangle2D.Double(
            wrapped(origin.x(), STRIPES), wrapped(origin.y(), STRIPES), STRIPES, STRIPES));
  }

  /** Near zero, as texture far away is placed with little precision. */
  private static double wrapped(double value, double length) {
    return value - length * Math.floor(value / length);
  }

  /** One in the middle; more, where there is room, on a lattice that is fixed to the picture. */
  private void signs(
      Graphics2D g, ViewState painted, HazardZone zone, Path2D there, Rectangle clip) {
    ScreenPoint origin = painted.toScreen(new Point(0, 0));
    Rectangle2D around = there.getBounds2D();
    Rectangle2D inClip =
        around.createIntersection(
            new Rectangle2D.Double(
                clip.x - REACH, clip.y - REACH, clip.width + 2 * REACH, clip.height + 2 * REACH));
    Area room = new Area(there);
    double firstX = origin.x() + LATTICE * Math.ceil((inClip.getMinX() - origin.x()) / LATTICE);
    double firstY = origin.y() + LATTICE * Math.ceil((inClip.getMinY() - origin.y()) / LATTICE);
    ScreenPoint middle = painted.toScreen(middle(zone));
    sign(g, zone, middle.x(), middle.y());
    for (double y = firstY; y <= inClip.getMaxY(); y += LATTICE) {
      for (double x = firstX; x <= inClip.getMaxX(); x += LATTICE) {
        if (middle.distance(new ScreenPoint(x, y)) > LATTICE * 0.75 && room.contains(x, y)) {
          sign(g, zone, x, y);
        }
      }
    }
  }

  private void sign(Graphics2D g, HazardZone zone, double x, double y) {
    HazardSign.draw(g, zone.kind(), x, y, SIGN);
    String text = words.apply(zone.kind());
    sprites.label(g, text, Mark.Emphasis.PLAIN, x + SIGN / 2 + 4, y);
  }

  /** Where the sign and the words in the middle of each zone stand, in component pixels. */
  public List<Rectangle2D> plates(Graphics2D g, ViewState painted) {
    return zones.stream().map(zone -> plate(g, painted, zone)).toList();
  }

  private Rectangle2D plate(Graphics2D g, ViewState painted, HazardZone zone) {
    ScreenPoint at = painted.toScreen(middle(zone));
    double words = sprites.plateSize(g, this.words.apply(zone.kind()), Mark.Emphasis.PLAIN).getX();
    return new Rectangle2D.Double(at.x() - SIGN / 2, at.y() - SIGN / 2, SIGN + 4 + words, SIGN);
  }

  /** The mean of the corners where that lies inside; else the first corner. */
  private static Point middle(HazardZone zone) {
    double x = zone.outline().stream().mapToDouble(Point::x).average().orElseThrow();
    double y = zone.outline().stream().mapToDouble(Point::y).average().orElseThrow();
    return OutlineShapes.closed(zone.outline()).contains(x, y)
        ? new Point(x, y)
        : zone.outline().get(0);
  }
}
