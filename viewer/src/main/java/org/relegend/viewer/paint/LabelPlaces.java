package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Where the labels of marks go so that they cover neither each other nor another such mark. Those
 * of emphasised marks go beside the mark, above or below it, whichever is free first; a plain mark
 * is labelled where there is room left, bodies before pads. All this depends on scale and
 * orientation only, never on what part of the picture is in view.
 */
final class LabelPlaces {
  /** Beyond so many, no room is looked for: they are more than one can read. */
  private static final int MOST = 400;

  private static final double GAP = 2;

  private record View(double scale, Orientation orientation, double deviceScale) {}

  /** The offsets of labels from their marks; a plain mark without one isn't labelled. */
  private record Found(View view, IdentityHashMap<Mark, Point2D> offsets) {}

  private final List<Mark> marks;
  private final List<Mark> plain;
  private final SpriteCache sprites;
  private volatile @Nullable Found last;

  /**
   * @param marks those that bear labels in any case; the last ones choose first
   * @param plain those that bear labels where there is room
   */
  LabelPlaces(List<Mark> marks, List<Mark> plain, SpriteCache sprites) {
    this.marks = marks;
    this.plain =
        plain.stream().sorted(Comparator.comparing(mark -> MarkOverlay.isPad(mark))).toList();
    this.sprites = sprites;
  }

  /** How far from an emphasised mark's place the middle of its label goes, in component pixels. */
  Point2D offset(Graphics2D g, ViewState painted, Mark mark) {
    Point2D offset = found(g, painted).offsets().get(mark);
    return offset == null ? choices(g, painted, mark).get(0) : offset;
  }

  /** As {@link #offset} for a plain mark; nothing where there is no room. */
  Optional<Point2D> offsetOfPlain(Graphics2D g, ViewState painted, Mark mark) {
    return Optional.ofNullable(found(g, painted).offsets().get(mark));
  }

  /** Where the labels of emphasised marks stand; none where they are too many to find room for. */
  List<Rectangle2D> plates(Graphics2D g, ViewState painted) {
    if (marks.size() > MOST) {
      return List.of();
    }
    return marks.stream()
        .filter(mark -> !mark.label().isEmpty())
        .map(
            mark -> {
              ScreenPoint at = painted.toScreen(mark.at());
              return plate(g, mark, new Point2D.Double(at.x(), at.y()), offset(g, painted, mark));
            })
        .toList();
  }

  private Found found(Graphics2D g, ViewState painted) {
    View view = new View(painted.scale(), painted.orientation(), g.getTransform().getScaleX());
    Found found = last;
    if (found == null || !found.view().equals(view)) {
      found = new Found(view, new IdentityHashMap<>());
      Taken taken = new Taken();
      placeEmphasised(g, painted, found.offsets(), taken);
      placePlain(g, painted, found.offsets(), taken);
      last = found;
    }
    return found;
  }

  private void placeEmphasised(
      Graphics2D g, ViewState painted, IdentityHashMap<Mark, Point2D> offsets, Taken taken) {
    if (marks.size() > MOST) {
      return;
    }
    List<Point2D> signs = marks.stream().map(mark -> seen(painted, mark)).toList();
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
  }

  private void placePlain(
      Graphics2D g, ViewState painted, IdentityHashMap<Mark, Point2D> offsets, Taken taken) {
    for (Mark mark : plain) {
      if (!mark.label().isEmpty()) {
        Point2D liked = choices(g, painted, mark).get(0);
        Rectangle2D plate = plate(g, mark, seen(painted, mark), liked);
        if (taken.touching(plate).isEmpty()) {
          taken.add(plate);
          offsets.put(mark, liked);
        }
      }
    }
  }

  /** Plates set so far, in the cells of a grid. */
  private static final class Taken {
    private static final double SIDE = 64;

    private record Cell(long column, long row) {}

    private final Map<Cell, List<Rectangle2D>> cells = new HashMap<>();

    void add(Rectangle2D plate) {
      cells(plate).forEach(cell -> cells.computeIfAbsent(cell, c -> new ArrayList<>()).add(plate));
    }

    /** Each of them once. */
    Set<Rectangle2D> touching(Rectangle2D plate) {
      Set<Rectangle2D> found = new LinkedHashSet<>();
      for (Cell cell : cells(plate)) {
        cells.getOrDefault(cell, List.of()).stream().filter(plate::intersects).forEach(found::add);
      }
      return found;
    }

    private static List<Cell> cells(Rectangle2D plate) {
      List<Cell> cells = new ArrayList<>();
      for (long row = cell(plate.getMinY()); row <= cell(plate.getMaxY()); row++) {
        for (long column = cell(plate.getMinX()); column <= cell(plate.getMaxX()); column++) {
          cells.add(new Cell(column, row));
        }
      }
      return cells;
    }

    private static long cell(double value) {
      return (long) Math.floor(value / SIDE);
    }
  }

  /** Labels covered weigh more than signs covered. */
  private static double cost(Rectangle2D plate, Taken taken, List<Point2D> signs, int own) {
    double cost = 0;
    for (Rectangle2D other : taken.touching(plate)) {
      Rectangle2D shared = plate.createIntersection(other);
      cost += 1 + shared.getWidth() * shared.getHeight() / 100;
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
