package org.relegend.viewer.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.TileKey;
import org.relegend.viewer.tile.TilePainter;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** A round inset that follows the pointer and shows what is beneath it magnified. */
final class Loupe {
  /** In component pixels. */
  private static final int DIAMETER = 240;

  private static final double MAGNIFICATION = 4;
  private static final int EDGE = 3;

  private boolean shown;
  private @Nullable ScreenPoint at;
  private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

  void setShown(boolean changed) {
    shown = changed;
  }

  boolean shown() {
    return shown;
  }

  /** Follows the pointer; empty where it left. */
  void moveTo(Optional<ScreenPoint> pointer) {
    at = pointer.orElse(null);
  }

  /** How much of the picture it shows about a place. */
  static Box shownAt(ViewState view, ScreenPoint place) {
    double wide = DIAMETER / MAGNIFICATION;
    return view.seenIn(place.x() - wide / 2, place.y() - wide / 2, wide, wide);
  }

  /** What has to be painted anew around a place. */
  static Rectangle around(ScreenPoint place) {
    int radius = DIAMETER / 2 + EDGE + 1;
    return new Rectangle(
        (int) place.x() - radius, (int) place.y() - radius, 2 * radius, 2 * radius);
  }

  /** The tiles it needs besides those of the view. */
  List<TileKey> needed(PictureSource picture, ViewState view, double deviceScale) {
    return place()
        .map(place -> TilePainter.needed(picture, magnified(view, place), 0, deviceScale))
        .orElse(List.of());
  }

  void paint(Graphics2D g, ViewState view, PicturePainter painter) {
    place().ifPresent(place -> paint(g, magnified(view, place), place, painter));
  }

  private Optional<ScreenPoint> place() {
    return shown ? Optional.ofNullable(at) : Optional.empty();
  }

  /** The point under the pointer stays there. */
  private static ViewState magnified(ViewState view, ScreenPoint place) {
    ViewState inset =
        new ViewState(
            view.pictureWidth(),
            view.pictureHeight(),
            DIAMETER,
            DIAMETER,
            view.scale() * MAGNIFICATION,
            view.corner(),
            view.orientation());
    ScreenPoint middle = inset.toScreen(view.toPicture(place));
    return inset.movedBy(DIAMETER / 2.0 - middle.x(), DIAMETER / 2.0 - middle.y());
  }

  private void paint(Graphics2D g, ViewState inset, ScreenPoint place, PicturePainter painter) {
    double scale = g.getTransform().getScaleX();
    int side = (int) Math.ceil(DIAMETER * scale);
    if (image.getWidth() != side) {
      image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    }
    Graphics2D inner = image.createGraphics();
    try {
      inner.setClip(0, 0, side, side);
      inner.scale(scale, scale);
      painter.paint(inner, inset, image, new Rectangle(side, side));
    } finally {
      inner.dispose();
    }
    int x = (int) Math.round(place.x()) - DIAMETER / 2;
    int y = (int) Math.round(place.y()) - DIAMETER / 2;
    Ellipse2D round = new Ellipse2D.Double(x, y, DIAMETER, DIAMETER);
    Graphics2D own = (Graphics2D) g.create();
    try {
      own.clip(round);
      own.drawImage(image, x, y, DIAMETER, DIAMETER, null);
    } finally {
      own.dispose();
    }
    edge(g, round);
  }

  private static void edge(Graphics2D g, Ellipse2D round) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.setStroke(new BasicStroke(EDGE + 2));
    g.draw(round);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(EDGE));
    g.draw(round);
  }
}
