package org.relegend.viewer.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.viewer.paint.HazardOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.ScrollBuffer;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.PictureStatus;
import org.relegend.viewer.tile.TileKey;
import org.relegend.viewer.tile.TilePainter;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * What a canvas paints, and when: the picture with its marks goes into a buffer, of which only what
 * changed is painted anew; what changes with each move of the pointer is painted over it each time.
 * While one zooms, quickly; once the view rests, smoothly, a slice at a time.
 */
final class CanvasPainter {
  private static final int REST_MILLIS = 120;
  private static final int SLICE_MILLIS = 5;
  private static final int SLICES = 8;
  private static final int BAR = 4;

  /** How far to paint ahead of a move, in component pixels. */
  private static final double AHEAD = 96;

  private static final double CROSS = 14;

  private final PictureCanvas canvas;
  private final ScrollBuffer buffer = new ScrollBuffer();
  private final PicturePainter painter = new PicturePainter();
  private final Loupe loupe = new Loupe();
  private final Timer refining = new Timer(SLICE_MILLIS, event -> refine());
  private final Map<TileKey, Optional<BufferedImage>> shown = new HashMap<>();
  private List<Overlay> baked = List.of();
  private List<Overlay> live = List.of();
  private List<TileKey> wanted = List.of();
  private @Nullable PictureSource source;
  private double deviceScale = 1;
  private int slice;
  private boolean middleShown;
  private double margin;
  private @Nullable ScreenPoint loupeAt;

  CanvasPainter(PictureCanvas canvas) {
    this.canvas = canvas;
    refining.setInitialDelay(REST_MILLIS);
    setInteractive(true);
  }

  void show(PictureSource picture) {
    source = picture;
    painter.show(picture);
    repaintAll();
  }

  void clear() {
    source = null;
    painter.show(null);
    painter.setHazards(new HazardOverlay(List.of()));
    painter.setOverlays(List.of());
    baked = List.of();
    live = List.of();
    shown.clear();
    wanted = List.of();
    refining.stop();
    repaintAll();
  }

  /**
   * Those that were there before go into the buffer; new ones behind them, as previews are, don't:
   * they may change with each move of the pointer.
   */
  void setOverlays(List<Overlay> changed) {
    int same = 0;
    while (same < Math.min(baked.size(), changed.size()) && baked.get(same) == changed.get(same)) {
      same++;
    }
    if (same < baked.size() || baked.isEmpty()) {
      baked = same == 0 ? changed : List.copyOf(changed.subList(0, same));
      painter.setOverlays(baked);
      buffer.invalidate();
    }
    live = List.copyOf(changed.subList(baked.size(), changed.size()));
    canvas.repaint();
  }

  void setHazards(HazardOverlay changed) {
    if (!changed.zones().equals(painter.hazards().zones())) {
      painter.setHazards(changed);
      repaintAll();
    }
  }

  void setCleanUp(CleanUp changed) {
    painter.setCleanUp(changed);
    repaintAll();
  }

  CleanUp cleanUp() {
    return painter.cleanUp();
  }

  void setGround(Color changed) {
    painter.setGround(changed);
    repaintAll();
  }

  void setLoupe(boolean changed) {
    loupe.setShown(changed);
    canvas.repaint();
  }

  boolean loupe() {
    return loupe.shown();
  }

  void moveLoupe(Optional<ScreenPoint> pointer) {
    loupe.moveTo(pointer);
    if (loupe.shown()) {
      Optional.ofNullable(loupeAt).map(Loupe::around).ifPresent(canvas::repaint);
      pointer.map(Loupe::around).ifPresent(canvas::repaint);
    }
    loupeAt = pointer.orElse(null);
  }

  /** While one can move about in it, it is painted a little beyond its edges, ahead of the move. */
  void setInteractive(boolean changed) {
    margin = changed ? AHEAD : 0;
    buffer.setMargin(margin);
  }

  void setMiddleShown(boolean changed) {
    if (middleShown != changed) {
      middleShown = changed;
      canvas.repaint();
    }
  }

  boolean middleShown() {
    return middleShown;
  }

  double deviceScale() {
    return deviceScale;
  }

  void viewChanged(ViewState before, ViewState now) {
    boolean zoomed =
        before.scale() != now.scale() || !before.orientation().equals(now.orientation());
    if (zoomed && canvas.interactive()) {
      painter.setSmooth(false);
      slice = 0;
      refining.restart();
    }
    canvas.repaint();
  }

  /** Paints a slice smoothly; the last one ends it. */
  private void refine() {
    painter.setSmooth(true);
    buffer.dropMargin();
    double height = Math.ceil((double) canvas.getHeight() / SLICES);
    buffer.invalidate(0, slice * height, canvas.getWidth(), height);
    canvas.repaint();
    slice++;
    if (slice >= SLICES) {
      refining.stop();
    }
  }

  void appeared() {
    wanted = List.of();
  }

  void disappeared() {
    refining.stop();
    painter.setSmooth(true);
    repaintAll();
  }

  private void repaintAll() {
    buffer.invalidate();
    canvas.repaint();
  }

  void paint(Graphics2D g, @Nullable ViewState view) {
    PictureSource picture = source;
    if (picture == null || view == null) {
      g.setColor(canvas.getBackground());
      g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
      return;
    }
    deviceScale = Math.max(0.25, g.getTransform().getScaleX());
    List<TileKey> needed = TilePainter.needed(picture, view, margin, deviceScale);
    noteArrivals(picture, view, needed);
    buffer.update(view, deviceScale, painter);
    buffer.copyTo(g);
    if (!live.isEmpty()) {
      live.forEach(overlay -> PicturePainter.paint(g, overlay, view));
      PicturePainter.paint(g, painter.hazards(), view);
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    if (middleShown) {
      cross(g);
    }
    loupe.paint(g, view, painter);
    want(picture, view, needed);
    status(g, picture.status());
  }

  /** Has the buffer paint anew where another tile stands now than was painted. */
  private void noteArrivals(PictureSource picture, ViewState view, List<TileKey> needed) {
    shown.keySet().retainAll(Set.copyOf(needed));
    for (TileKey key : needed) {
      Optional<BufferedImage> now = TilePainter.standsFor(picture, key);
      Optional<BufferedImage> before = shown.put(key, now);
      if (before != null && before.orElse(null) != now.orElse(null)) {
        Box place = view.onScreen(key.area());
        buffer.invalidate(place.left(), place.top(), place.width(), place.height());
      }
    }
  }

  private void want(PictureSource picture, ViewState view, List<TileKey> needed) {
    Set<TileKey> all = new LinkedHashSet<>(needed);
    all.addAll(loupe.needed(picture, view, deviceScale));
    List<TileKey> inOrder = List.copyOf(all);
    if (!inOrder.equals(wanted)) {
      wanted = inOrder;
      picture.want(canvas, inOrder);
    }
  }

  private void cross(Graphics2D g) {
    double x = canvas.getWidth() / 2.0;
    double y = canvas.getHeight() / 2.0;
    for (float width : new float[] {5, 2}) {
      g.setColor(width > 3 ? Color.WHITE : Color.BLACK);
      g.setStroke(new BasicStroke(width));
      g.draw(new Line2D.Double(x - CROSS, y, x + CROSS, y));
      g.draw(new Line2D.Double(x, y - CROSS, x, y + CROSS));
    }
  }

  /** A bar along the lower edge while the picture is read. */
  private void status(Graphics2D g, PictureStatus status) {
    if (status instanceof PictureStatus.InProgress loading && loading.fraction() > 0) {
      int y = canvas.getHeight() - BAR;
      g.setColor(Color.BLACK);
      g.fillRect(0, y, canvas.getWidth(), BAR);
      g.setColor(Color.WHITE);
      g.fillRect(0, y + 1, (int) (canvas.getWidth() * loading.fraction()), BAR - 2);
    }
  }
}
