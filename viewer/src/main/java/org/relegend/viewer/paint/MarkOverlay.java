package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Box;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Pads, bodies and net labels of one picture. Emphasised ones lie over the others and always have
 * their names beside them; the others only where there is room at that scale.
 */
public final class MarkOverlay implements Overlay {
  /** Component pixels that marks must be apart for any plain one to be labelled. */
  private static final double ROOM_FOR_LABELS = 24;

  /** Closer together than that, plain marks are specks and hairlines: the picture comes first. */
  private static final double ROOM_FOR_SIGNS = 28;

  /** Bodies smaller than that on the screen are drawn as a sign, in component pixels. */
  private static final double SMALLEST_OUTLINE = 10;

  /** How far a sign and its label reach beyond the mark's bounds, in component pixels. */
  private static final double REACH = 320;

  private static final double SIGN_REACH = 24;

  /** Circles of carried places smaller than that lie under the sign, in component pixels. */
  private static final double SMALLEST_CIRCLE = 4;

  private static final float[] CIRCLE = {4, 4};

  private static final List<Mark.Emphasis> UPWARDS =
      List.of(
          Mark.Emphasis.PLAIN,
          Mark.Emphasis.TWIN,
          Mark.Emphasis.SUSPECT,
          Mark.Emphasis.JOINED,
          Mark.Emphasis.SELECTED);

  private final List<Mark> marks;
  private final MarkIndex index;
  private final MarkIndex labelled;
  private final SpriteCache sprites = new SpriteCache();
  private final LabelPlaces places;

  public MarkOverlay(List<Mark> marks) {
    this.marks = marks.stream().sorted(Comparator.comparing(MarkOverlay::layer)).toList();
    this.index = new MarkIndex(this.marks);
    List<Mark> emphasised =
        this.marks.stream().filter(mark -> mark.emphasis() != Mark.Emphasis.PLAIN).toList();
    this.labelled = new MarkIndex(emphasised);
    this.places =
        new LabelPlaces(
            emphasised,
            this.marks.stream().filter(mark -> mark.emphasis() == Mark.Emphasis.PLAIN).toList(),
            sprites);
  }

  /** Those that are painted last come last. */
  public List<Mark> marks() {
    return marks;
  }

  /** The marks that touch a box of the picture. */
  public List<Mark> in(Box box) {
    return index.in(box);
  }

  /**
   * What a person means who points there: the nearest pad, label or bare body within reach, else
   * the smallest body around the point.
   *
   * @param reach in picture units
   */
  public Optional<Mark> pointedAt(Point point, double reach) {
    Box near = new Box(point.x(), point.y(), point.x(), point.y()).grown(reach);
    List<Mark> candidates = index.in(near);
    return candidates.stream()
        .filter(mark -> mark.outline().isEmpty() && mark.at().distance(point) <= reach)
        .min(Comparator.comparingDouble(mark -> mark.at().distance(point)))
        .or(
            () ->
                candidates.stream()
                    .filter(
                        mark ->
                            !mark.outline().isEmpty() && path(mark).contains(point.x(), point.y()))
                    .min(Comparator.comparingDouble(MarkOverlay::size)));
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    Rectangle clip = g.getClipBounds();
    if (clip == null) {
      clip = new Rectangle(painted.width(), painted.height());
    }
    Box seen = painted.seenIn(clip.x, clip.y, clip.width, clip.height);
    int[] shown = index.touching(seen.grown(SIGN_REACH / painted.scale()));
    boolean crowded = !hasRoom(painted, ROOM_FOR_SIGNS);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int place : shown) {
      outline(g, painted, marks.get(place), crowded);
    }
    for (int place : shown) {
      circle(g, painted, marks.get(place), crowded);
      sign(g, painted, marks.get(place), crowded);
    }
    Box reached = seen.grown(REACH / painted.scale());
    if (hasRoom(painted, ROOM_FOR_LABELS)) {
      Arrays.stream(index.touching(reached))
          .mapToObj(marks::get)
          .filter(mark -> mark.emphasis() == Mark.Emphasis.PLAIN)
          .forEach(
              mark ->
                  places
                      .offsetOfPlain(g, painted, mark)
                      .ifPresent(offset -> label(g, painted, mark, offset)));
    }
    labelled.in(reached).stream()
        .filter(mark -> !mark.label().isEmpty())
        .forEach(mark -> label(g, painted, mark, places.offset(g, painted, mark)));
  }

  /** Where the labels of emphasised marks stand, in component pixels. */
  public List<Rectangle2D> plates(Graphics2D g, ViewState painted) {
    return places.plates(g, painted);
  }

  private boolean hasRoom(ViewState painted, double pixels) {
    return index.spacing() * painted.scale() >= pixels;
  }

  /** The circle of what was carried over, where it can be made out and isn't one of a crowd. */
  private static void circle(Graphics2D g, ViewState painted, Mark mark, boolean crowded) {
    double radius = mark.radius() * painted.scale();
    boolean seen = !crowded || mark.emphasis() != Mark.Emphasis.PLAIN;
    if (mark.carried() && seen && radius > SMALLEST_CIRCLE) {
      ScreenPoint at = painted.toScreen(mark.at());
      Shape round = new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
      HaloStroke.line(g, round, 1.25f, MarkStyle.of(mark.emphasis()).colour(), CIRCLE);
    }
  }

  private static void outline(Graphics2D g, ViewState painted, Mark mark, boolean crowded) {
    if (isDrawnAsOutline(painted, mark)) {
      MarkStyle style = MarkStyle.of(mark.emphasis());
      MarkStyle.Pattern known = mark.carried() ? MarkStyle.Pattern.CARRIED : style.pattern();
      MarkStyle.Pattern pattern = mark.isWeak() ? MarkStyle.Pattern.WEAK : known;
      Path2D there = new Path2D.Double(path(mark), painted.transform());
      if (crowded && mark.emphasis() == Mark.Emphasis.PLAIN) {
        HaloStroke.hairline(g, there);
      } else {
        HaloStroke.line(g, there, style.line(), style.colour(), pattern.dashes());
      }
    }
  }

  private void sign(Graphics2D g, ViewState painted, Mark mark, boolean crowded) {
    if (isDrawnAsOutline(painted, mark)) {
      return;
    }
    ScreenPoint at = painted.toScreen(mark.at());
    if (crowded && mark.emphasis() == Mark.Emphasis.PLAIN) {
      HaloStroke.speck(g, at.x(), at.y());
    } else {
      sprites.sign(g, mark, at.x(), at.y());
    }
  }

  private void label(Graphics2D g, ViewState painted, Mark mark, Point2D offset) {
    ScreenPoint at = painted.toScreen(mark.at());
    sprites.labelAbout(
        g, text(mark), mark.emphasis(), at.x() + offset.getX(), at.y() + offset.getY());
  }

  /** What is weakly known says so, and what was carried over. */
  static String text(Mark mark) {
    String label = mark.carried() ? "\u2248 " + mark.label() : mark.label();
    return mark.isWeak() ? label + " ?" : label;
  }

  static boolean isDrawnAsOutline(ViewState painted, Mark mark) {
    return !mark.outline().isEmpty()
        && Math.max(mark.bounds().width(), mark.bounds().height()) * painted.scale()
            >= SMALLEST_OUTLINE;
  }

  static boolean isPad(Mark mark) {
    return mark.subject() instanceof Subject.OfPin;
  }

  /** Bodies beneath pads; emphasis over all. */
  private static int layer(Mark mark) {
    return 2 * UPWARDS.indexOf(mark.emphasis()) + (isPad(mark) ? 1 : 0);
  }

  private static double size(Mark mark) {
    Box bounds = mark.bounds();
    return bounds.width() * bounds.height();
  }

  private static Path2D path(Mark mark) {
    return OutlineShapes.closed(mark.outline());
  }
}
