package org.relegend.viewer.control;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;
import org.relegend.viewer.paint.Palette;

/**
 * Which channel something is in, as a letter in a shape and a colour of its own: the first channel
 * a disc, the second a square, the third a diamond; what several share has no badge.
 */
public final class ChannelBadge extends JPanel {
  private record Coat(Color ground, Color letter) {}

  /** Contrast of letter to ground is at least 4.5 to 1 for each (WCAG 2.2, 1.4.3). */
  private static final List<Coat> COATS =
      List.of(
          new Coat(Palette.BLUE, Color.WHITE),
          new Coat(Palette.ORANGE, Color.BLACK),
          new Coat(Palette.BLUISH_GREEN, Color.BLACK),
          new Coat(Palette.REDDISH_PURPLE, Color.BLACK));

  private String channel = "";
  private int place;

  public ChannelBadge(int size) {
    setOpaque(false);
    setPreferredSize(new Dimension(size, size));
    setMinimumSize(new Dimension(size, size));
  }

  /**
   * Shows a channel; nothing where the name is empty.
   *
   * @param place which of the map's channels it is, from 0
   */
  public void show(String channel, int place) {
    this.channel = channel;
    this.place = Math.max(0, place);
    String text =
        channel.isEmpty() ? Messages.of("channel.shared") : Messages.of("channel.name", channel);
    setToolTipText(text);
    getAccessibleContext().setAccessibleName(text);
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    if (channel.isEmpty()) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      paint(g, Math.min(getWidth(), getHeight()));
    } finally {
      g.dispose();
    }
  }

  private void paint(Graphics2D g, double size) {
    Coat coat = COATS.get(place % COATS.size());
    g.translate((getWidth() - size) / 2, (getHeight() - size) / 2);
    g.setColor(coat.ground());
    g.fill(shape(size));
    g.setColor(coat.letter());
    String text = channel.length() > 2 ? channel.substring(0, 2) : channel;
    g.setFont(getFont().deriveFont(Font.BOLD, (float) (size * (text.length() > 1 ? 0.45 : 0.62))));
    FontMetrics metrics = g.getFontMetrics();
    float x = (float) (size - metrics.stringWidth(text)) / 2;
    float y = (float) (size + metrics.getAscent() - metrics.getDescent()) / 2;
    g.drawString(text, x, y);
  }

  private Shape shape(double size) {
    return switch (place % 3) {
      case 0 -> new Ellipse2D.Double(0, 0, size, size);
      case 1 -> new Rectangle2D.Double(1, 1, size - 2, size - 2);
      default -> diamond(size);
    };
  }

  private static Shape diamond(double size) {
    Path2D path = new Path2D.Double();
    path.moveTo(size / 2, -1);
    path.lineTo(size + 1, size / 2);
    path.lineTo(size / 2, size + 1);
    path.lineTo(-1, size / 2);
    path.closePath();
    return path;
  }
}
