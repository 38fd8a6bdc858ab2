package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.relegend.map.Subject;

/**
 * Signs and labels drawn once and then copied to each place: thousands of marks are painted in the
 * time that a hundred drawn lines take. Any thread may call it.
 */
final class SpriteCache {
  /** Labels kept; beyond that they are drawn anew. */
  private static final int MOST_LABELS = 4000;

  private static final int PADDING = 3;
  private static final double HAIR = 1e-6;
  private static final Font FONT = new Font(Font.SANS_SERIF, Font.BOLD, 12);

  /** What a sign shows. */
  private enum Kind {
    PAD,
    BODY,
    NET
  }

  private record Sign(
      Kind kind, Mark.Emphasis emphasis, boolean weak, boolean carried, double deviceScale) {}

  private record Label(String text, Mark.Emphasis emphasis, double deviceScale) {}

  private final Map<Sign, BufferedImage> signs = new ConcurrentHashMap<>();
  private final Map<Label, BufferedImage> labels = new ConcurrentHashMap<>();

  /** Draws the sign of a mark about a point of the component. */
  void sign(Graphics2D g, Mark mark, double x, double y) {
    double scale = g.getTransform().getScaleX();
    Sign key = new Sign(kind(mark), mark.emphasis(), mark.isWeak(), mark.carried(), scale);
    BufferedImage image = signs.computeIfAbsent(key, SpriteCache::drawn);
    copy(g, image, x - image.getWidth() / scale / 2, y - image.getHeight() / scale / 2);
  }

  /** Writes a label on a plate whose left edge is at a point and whose middle is as high. */
  void label(Graphics2D g, String text, Mark.Emphasis emphasis, double x, double y) {
    BufferedImage image = plate(g, text, emphasis);
    copy(g, image, x, y - image.getHeight() / g.getTransform().getScaleX() / 2);
  }

  /** Writes a label on a plate whose middle is at a point. */
  void labelAbout(Graphics2D g, String text, Mark.Emphasis emphasis, double x, double y) {
    double width = plate(g, text, emphasis).getWidth() / g.getTransform().getScaleX();
    label(g, text, emphasis, x - width / 2, y);
  }

  /** Width and height of a label's plate, in component pixels. */
  Point2D plateSize(Graphics2D g, String text, Mark.Emphasis emphasis) {
    BufferedImage image = plate(g, text, emphasis);
    double scale = g.getTransform().getScaleX();
    return new Point2D.Double(image.getWidth() / scale, image.getHeight() / scale);
  }

  private BufferedImage plate(Graphics2D g, String text, Mark.Emphasis emphasis) {
    if (labels.size() > MOST_LABELS) {
      labels.clear();
    }
    Label label = new Label(text, emphasis, g.getTransform().getScaleX());
    return labels.computeIfAbsent(label, SpriteCache::drawn);
  }

  /**
   * At whole screen pixels, so that nothing is smoothed and signs stay crisp; a hair beyond a half
   * is a half, so that the same place is rounded alike in each view.
   */
  private static void copy(Graphics2D g, BufferedImage image, double x, double y) {
    AffineTransform to = g.getTransform();
    double deviceX = Math.floor(to.getScaleX() * x + to.getTranslateX() + 0.5 + HAIR);
    double deviceY = Math.floor(to.getScaleY() * y + to.getTranslateY() + 0.5 + HAIR);
    g.setTransform(new AffineTransform());
    g.drawImage(image, (int) deviceX, (int) deviceY, null);
    g.setTransform(to);
  }

  private static Kind kind(Mark mark) {
    if (mark.subject() instanceof Subject.OfPin) {
      return Kind.PAD;
    }
    return mark.subject() instanceof Subject.OfNet ? Kind.NET : Kind.BODY;
  }

  private static BufferedImage drawn(Sign sign) {
    MarkStyle style = MarkStyle.of(sign.emphasis);
    double reach = style.radius() * 1.3 + 2 * HaloStroke.EDGE + 5;
    // an even number of screen pixels, so that the middle lies between two of them
    double side = 2 * Math.ceil(reach * sign.deviceScale) / sign.deviceScale;
    return image(
        side,
        side,
        sign.deviceScale,
        g -> {
          g.translate(side / 2, side / 2);
          draw(g, sign, style);
        });
  }

  private static void draw(Graphics2D g, Sign sign, MarkStyle style) {
    float[] dashes = sign.weak ? new float[] {2, 2} : new float[0];
    if (sign.carried) {
      HaloStroke.line(g, MarkStyle.carriedSign(style.radius()), 1.75f, style.colour(), dashes);
      return;
    }
    if (sign.kind == Kind.BODY && sign.emphasis == Mark.Emphasis.PLAIN) {
      cross(g, style.radius() + 1, style.colour());
      return;
    }
    if (sign.emphasis == Mark.Emphasis.SELECTED) {
      cross(g, style.radius() + 4, style.colour());
    }
    Shape shape = MarkStyle.sign(sign.emphasis, style.radius());
    if (style.filled() && !sign.weak) {
      HaloStroke.fill(g, shape, style.colour());
      g.setColor(HaloStroke.DARK);
      g.fill(new Ellipse2D.Double(-1.5, -1.5, 3, 3));
    } else {
      HaloStroke.line(g, shape, 1.75f, style.colour(), dashes);
    }
  }

  private static void cross(Graphics2D g, double radius, Color colour) {
    HaloStroke.line(g, new Line2D.Double(-radius, 0, radius, 0), 1.5f, colour);
    HaloStroke.line(g, new Line2D.Double(0, -radius, 0, radius), 1.5f, colour);
    g.setColor(colour);
    g.setStroke(new BasicStroke(1.5f));
    g.draw(new Line2D.Double(-radius, 0, radius, 0));
  }

  private static BufferedImage drawn(Label label) {
    FontMetrics metrics =
        new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics().getFontMetrics(FONT);
    int width = metrics.stringWidth(label.text) + 2 * PADDING + 2;
    int height = metrics.getAscent() + metrics.getDescent() + 2;
    return image(
        width,
        height,
        label.deviceScale,
        g -> {
          Shape plate = new RoundRectangle2D.Double(0.75, 0.75, width - 1.5, height - 1.5, 6, 6);
          g.setColor(Palette.PLATE);
          g.fill(plate);
          boolean plain = label.emphasis == Mark.Emphasis.PLAIN;
          g.setStroke(new BasicStroke(plain ? 1 : 2.5f));
          g.setColor(plain ? HaloStroke.DARK : MarkStyle.of(label.emphasis).colour());
          g.draw(plate);
          g.setColor(Palette.PLATE_TEXT);
          g.setFont(FONT);
          g.drawString(label.text, PADDING + 1, 1 + metrics.getAscent());
        });
  }

  private static BufferedImage image(
      double width, double height, double scale, Consumer<Graphics2D> drawing) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(width * scale - HAIR),
            (int) Math.ceil(height * scale - HAIR),
            BufferedImage.TYPE_INT_ARGB_PRE);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.scale(scale, scale);
      drawing.accept(g);
    } finally {
      g.dispose();
    }
    return image;
  }
}
