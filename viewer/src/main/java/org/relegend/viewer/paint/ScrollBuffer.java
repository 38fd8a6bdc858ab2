package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Keeps what was painted, so that while a picture moves only the strips that come into view are
 * painted anew, and a frame is one copy to the screen.
 *
 * <p>The image is used like a ball of paper: its right edge is joined to its left one, its bottom
 * to its top. Moving the picture moves the point where the screen begins on it, and nothing is
 * copied.
 */
public final class ScrollBuffer {
  /** Paints a part of a view, and all of it: what was there before may be anything. */
  @FunctionalInterface
  public interface Painter {
    /**
     * Paints all that the clip shows.
     *
     * @param g in component pixels, with a clip
     * @param image the pixels behind it, for those who change them afterwards
     * @param area of the image that the clip covers, in its pixels
     */
    void paint(Graphics2D g, ViewState view, BufferedImage image, Rectangle area);
  }

  private static final BufferedImage NOTHING = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

  /** How far a move may be from whole pixels, in pixels, and still count as one of whole pixels. */
  private static final double WHOLE = 1e-3;

  private final List<Rectangle> stale = new ArrayList<>();
  private BufferedImage image = NOTHING;
  private @Nullable ViewState painted;
  private double deviceScale = 1;
  private int originX;
  private int originY;

  /**
   * Brings the image up to date with a view.
   *
   * @param scale screen pixels per component pixel
   */
  public void update(ViewState view, double scale, Painter painter) {
    int width = (int) Math.ceil(view.width() * scale);
    int height = (int) Math.ceil(view.height() * scale);
    if (image.getWidth() != width || image.getHeight() != height || deviceScale != scale) {
      image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
      deviceScale = scale;
      painted = null;
    }
    ViewState before = painted;
    if (before == null || !movesOverFrom(before, view)) {
      originX = 0;
      originY = 0;
      stale.clear();
      stale.add(new Rectangle(width, height));
    }
    painted = view;
    List<Rectangle> parts = List.copyOf(stale);
    stale.clear();
    parts.forEach(part -> paint(part, view, painter));
  }

  /** Has all of it painted anew at the next update. */
  public void invalidate() {
    painted = null;
  }

  /** Has a part painted anew at the next update, given in component pixels. */
  public void invalidate(double x, double y, double width, double height) {
    int left = (int) Math.floor(x * deviceScale) - 1;
    int top = (int) Math.floor(y * deviceScale) - 1;
    int right = (int) Math.ceil((x + width) * deviceScale) + 1;
    int bottom = (int) Math.ceil((y + height) * deviceScale) + 1;
    addStale(new Rectangle(left, top, right - left, bottom - top));
  }

  /** Copies it to the screen, whose component pixels {@code g} has. */
  public void copyTo(Graphics2D g) {
    Graphics2D own = (Graphics2D) g.create();
    try {
      own.scale(1 / deviceScale, 1 / deviceScale);
      int right = image.getWidth() - originX;
      int bottom = image.getHeight() - originY;
      copy(own, 0, 0, originX, originY, right, bottom);
      copy(own, right, 0, 0, originY, originX, bottom);
      copy(own, 0, bottom, originX, 0, right, originY);
      copy(own, right, bottom, 0, 0, originX, originY);
    } finally {
      own.dispose();
    }
  }

  private void copy(Graphics2D g, int x, int y, int fromX, int fromY, int width, int height) {
    if (width > 0 && height > 0) {
      g.drawImage(
          image, x, y, x + width, y + height, fromX, fromY, fromX + width, fromY + height, null);
    }
  }

  /** Whether the view is the one before, moved by whole pixels; then only moves the origin. */
  private boolean movesOverFrom(ViewState before, ViewState view) {
    Orientation orientation = view.orientation();
    if (view.scale() != before.scale()
        || !orientation.equals(before.orientation())
        || view.pictureWidth() != before.pictureWidth()
        || view.pictureHeight() != before.pictureHeight()) {
      return false;
    }
    ScreenPoint moved = before.toScreen(view.corner());
    double dx = moved.x() * deviceScale;
    double dy = moved.y() * deviceScale;
    long wholeX = Math.round(dx);
    long wholeY = Math.round(dy);
    if (Math.abs(dx - wholeX) > WHOLE
        || Math.abs(dy - wholeY) > WHOLE
        || Math.abs(wholeX) >= image.getWidth()
        || Math.abs(wholeY) >= image.getHeight()) {
      return false;
    }
    move((int) wholeX, (int) wholeY);
    return true;
  }

  private void move(int dx, int dy) {
    int width = image.getWidth();
    int height = image.getHeight();
    originX = Math.floorMod(originX + dx, width);
    originY = Math.floorMod(originY + dy, height);
    stale.replaceAll(part -> new Rectangle(part.x - dx, part.y - dy, part.width, part.height));
    if (dx != 0) {
      addStale(new Rectangle(dx > 0 ? width - dx : 0, 0, Math.abs(dx), height));
    }
    if (dy != 0) {
      addStale(new Rectangle(0, dy > 0 ? height - dy : 0, width, Math.abs(dy)));
    }
  }

  private void addStale(Rectangle part) {
    Rectangle seen = part.intersection(new Rectangle(image.getWidth(), image.getHeight()));
    if (!seen.isEmpty() && stale.stream().noneMatch(other -> other.contains(seen))) {
      stale.removeIf(seen::contains);
      stale.add(seen);
    }
  }

  /** Paints a part of the screen, which may lie on both sides of the joined edges. */
  private void paint(Rectangle part, ViewState view, Painter painter) {
    Rectangle seen = part.intersection(new Rectangle(image.getWidth(), image.getHeight()));
    for (int shiftX : new int[] {0, -image.getWidth()}) {
      for (int shiftY : new int[] {0, -image.getHeight()}) {
        int dx = originX + shiftX;
        int dy = originY + shiftY;
        Rectangle there = new Rectangle(seen.x + dx, seen.y + dy, seen.width, seen.height);
        Rectangle area = there.intersection(new Rectangle(image.getWidth(), image.getHeight()));
        if (!area.isEmpty()) {
          paint(area, dx, dy, view, painter);
        }
      }
    }
  }

  private void paint(Rectangle area, int dx, int dy, ViewState view, Painter painter) {
    Graphics2D g = image.createGraphics();
    try {
      g.setClip(area);
      g.transform(AffineTransform.getTranslateInstance(dx, dy));
      g.scale(deviceScale, deviceScale);
      painter.paint(g, view, image, area);
    } finally {
      g.dispose();
    }
  }
}
