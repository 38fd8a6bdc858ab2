package org.relegend.viewer.ui;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.paint.HazardOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.ScrollBuffer;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.tile.CleanUpFilter;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.TilePainter;
import org.relegend.viewer.view.ViewState;

/** Paints a picture, its marks over it and the hazard zones over all. */
final class PicturePainter implements ScrollBuffer.Painter {
  private @Nullable PictureSource source;
  private List<Overlay> overlays = List.of();
  private HazardOverlay hazards = new HazardOverlay(List.of());
  private CleanUpFilter cleanUp = new CleanUpFilter(CleanUp.NONE);
  private Color ground = Color.DARK_GRAY;
  private boolean smooth = true;

  void show(@Nullable PictureSource changed) {
    source = changed;
  }

  void setOverlays(List<Overlay> changed) {
    overlays = changed;
  }

  void setHazards(HazardOverlay changed) {
    hazards = changed;
  }

  HazardOverlay hazards() {
    return hazards;
  }

  void setCleanUp(CleanUp changed) {
    cleanUp = new CleanUpFilter(changed);
  }

  CleanUp cleanUp() {
    return cleanUp.cleanUp();
  }

  /** What is seen beside the picture. */
  void setGround(Color changed) {
    ground = changed;
  }

  /** False while quickness counts for more than looks. */
  void setSmooth(boolean changed) {
    smooth = changed;
  }

  boolean smooth() {
    return smooth;
  }

  @Override
  public void paint(Graphics2D g, ViewState view, BufferedImage image, Rectangle area) {
    PictureSource picture = source;
    if (picture == null) {
      return;
    }
    Rectangle clip = g.getClipBounds();
    g.setColor(ground);
    g.fill(clip);
    TilePainter.paint(g, picture, view, smooth);
    cleanUp.apply(image, area);
    coverBeside(g, view, clip);
    overlays.forEach(overlay -> paint(g, overlay, view));
    paint(g, hazards, view);
  }

  /** Pixels at the far edges reach a little beyond the picture. */
  private void coverBeside(Graphics2D g, ViewState view, Rectangle clip) {
    Area beside = new Area(clip);
    beside.subtract(
        new Area(
            view.transform()
                .createTransformedShape(
                    new Rectangle2D.Double(0, 0, view.pictureWidth(), view.pictureHeight()))));
    g.setColor(ground);
    g.fill(beside);
  }

  /** Each gets a graphics of its own, so that it can't disturb the next. */
  static void paint(Graphics2D g, Overlay overlay, ViewState view) {
    Graphics2D own = (Graphics2D) g.create();
    try {
      own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      overlay.paint(own, view);
    } finally {
      own.dispose();
    }
  }
}
