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
 * copied. Whatever comes into view is painted together with a margin beyond it, so that most frames
 * paint nothing, and a mark is painted once rather than with each narrow strip that crosses it.
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

  /** What of the image was painted, in screen pixels from the upper left corner of the screen. */
  private Rectangle covered = new Rectangle();

  private final List<Rectangle> stale = new ArrayList<>();
  private BufferedImage image = NOTHING;
  private @Nullable ViewState painted;
  private double deviceScale = 1;
  private int originX;
  private int originY;
  private double margin;

  /** How far beyond the screen to paint ahead of a move, in component pixels. */
  public void setMargin(double pixels) {
    if (!(pixels >= 0)) {
      throw new IllegalArgumentException("a margin of " + pixels);
    }
    margin = pixels;
    painted = null;
  }

  /**
   * Brings the image up to date with a view.
   *
   * @param scale screen pixels per component pixel
   */
  public void update(ViewState view, double scale, Painter painter) {
    Rectangle screen = screen(view, scale);
    int beyond = (int) Math.ceil(margin * scale);
    int width = screen.width + 2 * beyond;
    int height = screen.height + 2 * beyond;
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
      covered = new Rectangle(screen);
      stale.add(screen);
    } else {
      cover(screen, beyond);
    }
    painted = view;
    List<Rectangle> parts = List.copyOf(stale);
    stale.clear();
    parts.forEach(part -> paint(part, view, painter));
  }

  private static Rectangle screen(ViewState view, double scale) {
    return new Rectangle(
        (int) Math.ceil(view.width() * scale), (int) Math.ceil(view.height() * scale));
  }

  /** Sees to it that the screen is painted, with a margin on the sides where something came in. */
  private void cover(Rectangle screen, int beyond) {
    Rectangle most = new Rectangle(screen);
    most.grow(beyond, beyond);
    Rectangle old = covered.intersection(most);
    if (old.contains(screen)) {
      covered = old;
      return;
    }
    if (!old.intersects(screen)) {
      covered = new Rectangle(screen);
      stale.add(screen);
      return;
    }
    int left = old.x > 0 ? -beyond : old.x;
    int top = old.y > 0 ? -beyond : old.y;
    int right = old.x + old.width < screen.width ? screen.width + beyond : old.x + old.width;
    int bottom = old.y + old.height < screen.height ? screen.height + beyond : old.y + old.height;
    covered = new Rectangle(left, top, right - left, bottom - top);
    addStale(new Rectangle(left, top, right - left, old.y - top));
    addStale(new Rectangle(left, old.y + old.height, right - left, bottom - old.y - old.height));
    addStale(new Rectangle(left, old.y, old.x - left, old.height));
    addStale(new Rectangle(old.x + old.width, old.y, right - old.x - old.width, old.height));
  }

  /** Forgets what was painted beyond the screen: it is painted anew when it comes into view. */
  public void dropMargin() {
    ViewState seen = painted;
    if (seen != null) {
      covered = covered.intersection(screen(seen, deviceScale));
    }
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
      ViewState seen = painted;
      if (seen == null) {
        return;
      }
      Rectangle screen = screen(seen, deviceScale);
      int first = Math.min(screen.width, image.getWidth() - originX);
      int upper = Math.min(screen.height, image.getHeight() - originY);
      copy(own, 0, 0, originX, originY, first, upper);
      copy(own, first, 0, 0, originY, screen.width - first, upper);
      copy(own, 0, upper, originX, 0, first, screen.height - upper);
      copy(own, first, upper, 0, 0, screen.width - first, screen.height - upper);
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
    covered.translate(-dx, -dy);
  }

  private void addStale(Rectangle part) {
    Rectangle seen = part.intersection(covered);
    if (!seen.isEmpty() && stale.stream().noneMatch(other -> other.contains(seen))) {
      stale.removeIf(seen::contains);
      stale.add(seen);
    }
  }

  /** Paints a part of what is covered, which may lie on both sides of the joined edges. */
  private void paint(Rectangle part, ViewState view, Painter painter) {
    Rectangle seen = part.intersection(covered);
    for (int shiftX : new int[] {image.getWidth(), 0, -image.getWidth()}) {
      for (int shiftY : new int[] {image.getHeight(), 0, -image.getHeight()}) {
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
