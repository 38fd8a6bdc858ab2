package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ViewState;

/**
 * Where the labels of marks go so that they cover neither each other nor another such mark: beside
 * the mark, above or below it, whichever is free first. That depends on scale and orientation only,
 * never on what part of the picture is in view.
 */
final class LabelPlaces {
  /** Beyond so many, no room is looked for: they are more than one can read. */
  private static final int MOST = 400;

  private static final double GAP = 2;

  private record View(double scale, Orientation orientation, double deviceScale) {}

  private record Found(View view, IdentityHashMap<Mark, Point2D> offsets) {}

  private final List<Mark> marks;
  private final Sprites sprites;
  private volatile @Nullable Found last;

  /**
   * @param marks those that bear labels; the last ones choose first
   */
  LabelPlaces(List<Mark> marks, Sprites sprites) {
    this.marks = marks;
    this.sprites = sprites;
  }

  /** How far from the mark's own place the middle of its label goes, in component pixels. */
  Point2D offset(Graphics2D g, ViewState painted, Mark mark) {
    View view = new View(painted.scale(), painted.orientation(), g.getTransform().getScaleX());
    Found found = last;
    if (found == null || !found.view().equals(view)) {
      found = new Found(view, find(g, painted));
      last = found;
    }
    Point2D offset = found.offsets().get(mark);
    return offset == null ? choices(g, painted, mark).get(0) : offset;
  }

  private IdentityHashMap<Mark, Point2D> find(Graphics2D g, ViewState painted) {
    IdentityHashMap<Mark, Point2D> offsets = new IdentityHashMap<>();
    if (marks.size() > MOST) {
      return offsets;
    }
    List<Point2D> signs = marks.stream().map(mark -> seen(painted, mark)).toList();
    List<Rectangle2D> taken = new ArrayList<>();
    for (int i = marks.size() - 1; i >= 0; i--) {
      Mark mark = marks.get(i);
      if (mark.label().isEmpty()) {
        continue;
      }
      Rectangle2D best = new Rectangle2D.Double();
      double least = Double.POSITIVE_INFINITY;
      for (Point2D choice : choices(g, painted, mark)) {
        Rectangle2D plate = plate(g, mark, signs.get(i), choice);
        double cost = cost(plate, taken, signs, i);
        if (cost < least) {
          least = cost;
          best = plate;
          offsets.put(mark, choice);
        }
      }
      taken.add(best);
    }
    return offsets;
  }

  /** Labels covered weigh more than signs covered. */
  private static double cost(
      Rectangle2D plate, List<Rectangle2D> taken, List<Point2D> signs, int own) {
    double cost = 0;
    for (Rectangle2D other : taken) {
      Rectangle2D shared = plate.createIntersection(other);
      if (shared.getWidth() > 0 && shared.getHeight() > 0) {
        cost += 1 + shared.getWidth() * shared.getHeight() / 100;
      }
    }
    for (int i = 0; i < signs.size(); i++) {
      if (i != own && plate.contains(signs.get(i))) {
        cost += 0.5;
      }
    }
    return cost;
  }

  private Rectangle2D plate(Graphics2D g, Mark mark, Point2D at, Point2D offset) {
    Point2D size = sprites.plateSize(g, MarkOverlay.text(mark), mark.emphasis());
    return new Rectangle2D.Double(
        at.getX() + offset.getX() - size.getX() / 2 - GAP / 2,
        at.getY() + offset.getY() - size.getY() / 2 - GAP / 2,
        size.getX() + GAP,
        size.getY() + GAP);
  }

  /** Offsets in order of liking; a body that is drawn as an outline is labelled in its middle. */
  private List<Point2D> choices(Graphics2D g, ViewState painted, Mark mark) {
    Point2D size = sprites.plateSize(g, MarkOverlay.text(mark), mark.emphasis());
    boolean outlined = MarkOverlay.isDrawnAsOutline(painted, mark);
    double x;
    double y;
    List<Point2D> choices = new ArrayList<>();
    if (outlined) {
      choices.add(new Point2D.Double());
      x = mark.bounds().width() * painted.scale() / 2 + size.getX() / 2 + GAP;
      y = mark.bounds().height() * painted.scale() / 2 + size.getY() / 2 + GAP;
    } else {
      double aside = MarkStyle.of(mark.emphasis()).radius() + 5;
      x = aside + size.getX() / 2;
      y = aside + size.getY() / 2;
    }
    for (double further = 0; further < 3; further++) {
      double dx = x + further * size.getX();
      double dy = y + further * size.getY();
      choices.add(new Point2D.Double(dx, 0));
      choices.add(new Point2D.Double(-dx, 0));
      choices.add(new Point2D.Double(0, -dy));
      choices.add(new Point2D.Double(0, dy));
      choices.add(new Point2D.Double(x, -dy));
      choices.add(new Point2D.Double(x, dy));
      choices.add(new Point2D.Double(-x, -dy));
      choices.add(new Point2D.Double(-x, dy));
    }
    return choices;
  }

  /** As on the screen, but for the view's corner. */
  private static Point2D seen(ViewState painted, Mark mark) {
    AffineTransform linear = painted.transform();
    return linear.deltaTransform(new Point2D.Double(mark.at().x(), mark.at().y()), null);
  }
}
