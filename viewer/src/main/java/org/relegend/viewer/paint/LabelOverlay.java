package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Words beside places of a picture, on plates: readings, and the condition of parts. They cover
 * neither each other nor what others have written; one that stands further off is tied to its place
 * by a line, and where there is no room left, a dot says that there is more to see nearer by.
 */
public final class LabelOverlay implements Overlay {
  /** How far above or below its place the middle of a label may stand, in component pixels. */
  private static final double[] RISES = {22, 40, 58, 78, 98, 118};

  /** Between a place and a label beside it, in component pixels. */
  private static final double ASIDE = 16;

  /** A label further off than this, in component pixels, is tied to its place by a line. */
  private static final double NEAR = 30;

  /** What is written already, in component pixels. */
  @FunctionalInterface
  public interface Written {
    List<Rectangle2D> plates(Graphics2D g, ViewState painted);
  }

  /**
   * Words at a place.
   *
   * @param at picture units
   */
  public record Label(Point at, String text, Mark.Emphasis emphasis) {}

  private final List<Label> labels;
  private final List<Written> others;
  private final SpriteCache sprites = new SpriteCache();

  /**
   * @param labels the first ones choose first
   * @param others what is to stay free
   */
  public LabelOverlay(List<Label> labels, Written... others) {
    this.labels = List.copyOf(labels);
    this.others = List.of(others);
  }

  /** The same labels, which leave this free too. */
  public LabelOverlay keepingOff(Written... written) {
    return new LabelOverlay(labels, written);
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    if (labels.isEmpty()) {
      return;
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    List<Rectangle2D> taken = new ArrayList<>();
    others.forEach(other -> taken.addAll(other.plates(g, painted)));
    List<Rectangle2D> places = new ArrayList<>();
    for (Label label : labels) {
      ScreenPoint there = painted.toScreen(label.at());
      Point2D size = sprites.plateSize(g, label.text(), label.emphasis());
      Optional<Rectangle2D> place = place(there, size, taken);
      place.ifPresent(taken::add);
      place.ifPresentOrElse(
          plate -> tie(g, there, plate, label.emphasis()),
          () -> HaloStroke.speck(g, there.x(), there.y()));
      places.add(place.orElseGet(Rectangle2D.Double::new));
    }
    for (int i = 0; i < labels.size(); i++) {
      Label label = labels.get(i);
      Rectangle2D place = places.get(i);
      if (!place.isEmpty()) {
        sprites.labelAbout(
            g, label.text(), label.emphasis(), place.getCenterX(), place.getCenterY());
      }
    }
  }

  private static void tie(Graphics2D g, ScreenPoint at, Rectangle2D plate, Mark.Emphasis emphasis) {
    double away = Math.hypot(plate.getCenterX() - at.x(), plate.getCenterY() - at.y());
    if (away > NEAR) {
      HaloStroke.line(
          g,
          new Line2D.Double(at.x(), at.y(), plate.getCenterX(), plate.getCenterY()),
          1.5f,
          MarkStyle.of(emphasis).colour());
    }
  }

  /** The first free place: above or below, then beside, then aslant; ever further off. */
  private static Optional<Rectangle2D> place(
      ScreenPoint at, Point2D size, List<Rectangle2D> taken) {
    double beside = size.getX() / 2 + ASIDE;
    for (double rise : RISES) {
      double[][] choices = {
        {0, -rise},
        {0, rise},
        {beside, rise - RISES[0]},
        {-beside, rise - RISES[0]},
        {beside, RISES[0] - rise},
        {-beside, RISES[0] - rise}
      };
      for (double[] choice : choices) {
        Rectangle2D place =
            new Rectangle2D.Double(
                at.x() + choice[0] - size.getX() / 2,
                at.y() + choice[1] - size.getY() / 2,
                size.getX(),
                size.getY());
        if (taken.stream().noneMatch(place::intersects)) {
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }
}
