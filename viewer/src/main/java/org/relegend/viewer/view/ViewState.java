package org.relegend.viewer.view;

import java.awt.geom.AffineTransform;
import java.util.List;
import org.relegend.map.Box;
import org.relegend.map.Point;

/**
 * Everything about how one picture is seen in one component: an immutable value; zoom and pan give
 * a new one. A picture point p is seen at scale · turn · mirror · (p − corner).
 *
 * @param pictureWidth in picture units (pixels of a photo, points of a page)
 * @param pictureHeight in picture units
 * @param width of the component in its own pixels
 * @param height of the component in its own pixels
 * @param scale component pixels per picture unit
 * @param corner the picture point at the component's upper left corner
 */
public record ViewState(
    double pictureWidth,
    double pictureHeight,
    int width,
    int height,
    double scale,
    Point corner,
    Orientation orientation) {
  /** Largest scale: one picture unit over this many pixels. */
  public static final double MAX_SCALE = 64;

  /** Share of the component's shorter side that something looked for shall take up. */
  private static final double NEAR = 0.2;

  /** Times the fitting scale at most when something is looked for. */
  private static final double CLOSEST = 6;

  /** How far below the fitting scale one may zoom out. */
  private static final double SMALLER_THAN_FIT = 4;

  public ViewState {
    if (!(pictureWidth > 0 && pictureHeight > 0)) {
      throw new IllegalArgumentException(
          "a picture of %s x %s".formatted(pictureWidth, pictureHeight));
    }
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a view of %d x %d pixels".formatted(width, height));
    }
    if (!(scale > 0 && Double.isFinite(scale))) {
      throw new IllegalArgumentException("a scale of " + scale);
    }
  }

  /** The whole picture, as large as the component allows. */
  public static ViewState fit(
      double pictureWidth, double pictureHeight, int width, int height, Orientation orientation) {
    ViewState any =
        new ViewState(pictureWidth, pictureHeight, width, height, 1, new Point(0, 0), orientation);
    return any.scaledAndCentred(any.fitScale(), any.middle());
  }

  /** Where a point of the picture is seen. */
  public ScreenPoint toScreen(Point point) {
    double x = (point.x() - corner.x()) * (orientation.mirrored() ? -scale : scale);
    double y = (point.y() - corner.y()) * scale;
    return new ScreenPoint(cos() * x - sin() * y, sin() * x + cos() * y);
  }

  /** Which point of the picture is seen there; it may lie outside the picture. */
  public Point toPicture(ScreenPoint point) {
    double x = (cos() * point.x() + sin() * point.y()) / scale;
    double y = (cos() * point.y() - sin() * point.x()) / scale;
    return new Point(corner.x() + (orientation.mirrored() ? -x : x), corner.y() + y);
  }

  /** From picture to component, as a new transform for painting. */
  public AffineTransform transform() {
    double mirror = orientation.mirrored() ? -scale : scale;
    AffineTransform turn =
        new AffineTransform(cos() * mirror, sin() * mirror, -sin() * scale, cos() * scale, 0, 0);
    turn.translate(-corner.x(), -corner.y());
    return turn;
  }

  /** What the whole component shows, as a box around it in the picture, also beyond its edges. */
  public Box visible() {
    return seenIn(0, 0, width, height);
  }

  /** What a rectangle of the component shows, as a box around it in the picture. */
  public Box seenIn(double x, double y, double w, double h) {
    return Box.around(
        List.of(
            toPicture(new ScreenPoint(x, y)),
            toPicture(new ScreenPoint(x + w, y)),
            toPicture(new ScreenPoint(x, y + h)),
            toPicture(new ScreenPoint(x + w, y + h))));
  }

  /** The picture point in the middle of the component. */
  public Point centre() {
    return toPicture(new ScreenPoint(width / 2.0, height / 2.0));
  }

  /** The scale at which the whole picture just fits. */
  public double fitScale() {
    double c = Math.abs(cos());
    double s = Math.abs(sin());
    double w = pictureWidth * c + pictureHeight * s;
    double h = pictureWidth * s + pictureHeight * c;
    return Math.min(MAX_SCALE, Math.min(width / w, height / h));
  }

  public ViewState fitted() {
    return scaledAndCentred(fitScale(), middle());
  }

  /** Whether it is the view that {@link #fitted} gives. */
  public boolean isFitted() {
    return equals(fitted());
  }

  /** Zoomed so that the picture point under {@code anchor} stays there. */
  public ViewState zoomedBy(double factor, ScreenPoint anchor) {
    return zoomedTo(scale * factor, anchor);
  }

  /** As {@link #zoomedBy}, to a scale, which is brought within its limits first. */
  public ViewState zoomedTo(double newScale, ScreenPoint anchor) {
    Point kept = toPicture(anchor);
    ViewState zoomed = withScale(limited(newScale));
    Point there = zoomed.toPicture(anchor);
    return zoomed
        .withCorner(zoomed.corner.plus(kept.x() - there.x(), kept.y() - there.y()))
        .heldInside();
  }

  /** The picture moves along with the pointer by so many component pixels. */
  public ViewState pannedBy(double dx, double dy) {
    return movedBy(dx, dy).heldInside();
  }

  /** As {@link #pannedBy}, but wherever that leads, also away from the picture. */
  public ViewState movedBy(double dx, double dy) {
    return withCorner(toPicture(new ScreenPoint(-dx, -dy)));
  }

  /** At the same scale, with that point in the middle. */
  public ViewState centredOn(Point point) {
    return scaledAndCentred(scale, point).heldInside();
  }

  /** At that scale, within its limits, and with that point in the middle. */
  public ViewState centredOn(Point point, double newScale) {
    return scaledAndCentred(limited(newScale), point).heldInside();
  }

  /** Shows a region of the picture as large as fits, with a margin in component pixels around. */
  public ViewState showing(Box region, double margin) {
    double c = Math.abs(cos());
    double s = Math.abs(sin());
    double w = Math.max(region.width() * c + region.height() * s, 1e-9);
    double h = Math.max(region.width() * s + region.height() * c, 1e-9);
    double room = Math.max(1, Math.min(width, height) - 2 * margin);
    double wanted =
        Math.min(Math.max(room, width - 2 * margin) / w, Math.max(room, height - 2 * margin) / h);
    return centredOn(region.centre(), wanted);
  }

  /**
   * Brings all of a region into view with as little change as possible: nothing if it is seen with
   * that margin already, else moved there, and zoomed out only if it doesn't fit at this scale.
   */
  public ViewState revealing(Box region, double margin) {
    Box here = onScreen(region);
    if (here.left() >= margin
        && here.top() >= margin
        && here.right() <= width - margin
        && here.bottom() <= height - margin) {
      return this;
    }
    boolean fits = here.width() <= width - 2 * margin && here.height() <= height - 2 * margin;
    return fits ? centredOn(region.centre()) : showing(region, margin);
  }

  /**
   * As {@link #revealing}, but where the region would be smaller than a fifth of the component it
   * is zoomed in to that, though to no more than six times the fitting scale.
   */
  public ViewState nearing(Box region, double margin) {
    Box here = onScreen(region);
    double side = Math.max(Math.max(here.width(), here.height()), 1e-9);
    double wanted = Math.min(scale * NEAR * Math.min(width, height) / side, CLOSEST * fitScale());
    return wanted > scale * (1 + 1e-9)
        ? centredOn(region.centre(), wanted)
        : revealing(region, margin);
  }

  /** The component grew or shrank: the middle stays; a fitted picture stays fitted. */
  public ViewState resizedTo(int newWidth, int newHeight) {
    ViewState resized =
        new ViewState(pictureWidth, pictureHeight, newWidth, newHeight, scale, corner, orientation);
    return isFitted() ? resized.fitted() : resized.scaledAndCentred(scale, centre()).heldInside();
  }

  /** Turned otherwise about the middle; a fitted picture stays fitted. */
  public ViewState withOrientation(Orientation changed) {
    ViewState turned =
        new ViewState(pictureWidth, pictureHeight, width, height, scale, corner, changed);
    return isFitted() ? turned.fitted() : turned.scaledAndCentred(scale, centre());
  }

  /** A region's bounds in component pixels; the frame is the component, not the picture. */
  public Box onScreen(Box region) {
    AffineTransform there = transform();
    double[] corners = {
      region.left(), region.top(), region.right(), region.top(),
      region.left(), region.bottom(), region.right(), region.bottom()
    };
    there.transform(corners, 0, corners, 0, 4);
    return Box.around(
        List.of(
            new Point(corners[0], corners[1]),
            new Point(corners[2], corners[3]),
            new Point(corners[4], corners[5]),
            new Point(corners[6], corners[7])));
  }

  private ViewState scaledAndCentred(double newScale, Point middle) {
    ViewState scaled = withScale(newScale);
    Point now = scaled.centre();
    return scaled.withCorner(scaled.corner.plus(middle.x() - now.x(), middle.y() - now.y()));
  }

  /** The middle of the component never leaves the picture, so that it can't get lost. */
  private ViewState heldInside() {
    Point now = centre();
    double x = Math.max(0, Math.min(pictureWidth, now.x()));
    double y = Math.max(0, Math.min(pictureHeight, now.y()));
    return withCorner(corner.plus(x - now.x(), y - now.y()));
  }

  private Point middle() {
    return new Point(pictureWidth / 2, pictureHeight / 2);
  }

  private double limited(double wanted) {
    return Math.max(fitScale() / SMALLER_THAN_FIT, Math.min(MAX_SCALE, wanted));
  }

  private ViewState withScale(double changed) {
    return new ViewState(pictureWidth, pictureHeight, width, height, changed, corner, orientation);
  }

  private ViewState withCorner(Point changed) {
    return new ViewState(pictureWidth, pictureHeight, width, height, scale, changed, orientation);
  }

  /** Exact for whole quarter turns, so that pixels stay on the grid. */
  private double cos() {
    return orientation.squareOn()
        ? (orientation.quarterTurns() % 2 == 1 ? 0 : 1 - orientation.quarterTurns())
        : Math.cos(Math.toRadians(orientation.degrees()));
  }

  private double sin() {
    return orientation.squareOn()
        ? (orientation.quarterTurns() % 2 == 0 ? 0 : 2 - orientation.quarterTurns())
        : Math.sin(Math.toRadians(orientation.degrees()));
  }
}
