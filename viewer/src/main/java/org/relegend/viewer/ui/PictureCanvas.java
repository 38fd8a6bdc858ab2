package org.relegend.viewer.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.viewer.paint.HazardOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.TileAnswer;
import org.relegend.viewer.tile.TileKey;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Shows one picture with marks over it; zooms with the wheel at the pointer, pans by dragging. All
 * on the event thread.
 */
public final class PictureCanvas extends JComponent {
  private static final double REACH = 8;
  private static final double CLICK_SLOP = 4;

  private final List<Consumer<ViewState>> viewListeners = new ArrayList<>();
  private final Runnable repaint = this::repaint;
  private @Nullable PictureSource source;
  private Orientation orientation = Orientation.UPRIGHT;
  private @Nullable ViewState view;
  private List<Overlay> overlays = List.of();
  private HazardOverlay hazards = new HazardOverlay(List.of());
  private PictureTool tool = PictureTool.LOOK;
  private boolean interactive = true;
  private CleanUp cleanUp = CleanUp.NONE;
  private boolean loupe;

  public PictureCanvas() {
    setOpaque(true);
    setBackground(new Color(0x303030));
    setPreferredSize(new Dimension(640, 480));
    setFocusable(true);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            resized();
          }
        });
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addMouseWheelListener(hand);
  }

  /** Shows another picture, whole. Its marks and zones are to be set anew by the caller. */
  public void show(PictureSource picture, Orientation as) {
    clear();
    source = picture;
    orientation = as;
    picture.addListener(repaint);
    resized();
    repaint();
  }

  /** Shows no picture, no marks and no zones. */
  public void clear() {
    if (source != null) {
      source.removeListener(repaint);
    }
    source = null;
    view = null;
    overlays = List.of();
    hazards = new HazardOverlay(List.of());
    repaint();
  }

  public Optional<PictureSource> source() {
    return Optional.ofNullable(source);
  }

  /** How the picture is seen; empty while there is none or the canvas has no size. */
  public Optional<ViewState> view() {
    return Optional.ofNullable(view);
  }

  /** Shows the picture so; the state's component size is replaced by this component's. */
  public void setView(ViewState changed) {
    if (source == null || getWidth() < 1 || getHeight() < 1) {
      return;
    }
    ViewState sized = changed.resizedTo(getWidth(), getHeight());
    if (!sized.equals(view)) {
      view = sized;
      orientation = sized.orientation();
      repaint();
      List.copyOf(viewListeners).forEach(listener -> listener.accept(sized));
    }
  }

  /** Brings a region of the picture into view, with as little change as possible. */
  public void reveal(Box region) {
    view().ifPresent(now -> setView(now.revealing(region, 40)));
  }

  /** Shows a region as large as fits. */
  public void zoomTo(Box region) {
    view().ifPresent(now -> setView(now.showing(region, 8)));
  }

  public void setOrientation(Orientation changed) {
    orientation = changed;
    view().ifPresent(now -> setView(now.withOrientation(changed)));
  }

  /** Painted in this order, all beneath the hazard zones. */
  public void setOverlays(List<? extends Overlay> inOrder) {
    overlays = List.copyOf(inOrder);
    repaint();
  }

  /** The zones of the picture shown; always painted, over everything else. */
  public void setHazards(List<HazardZone> zones) {
    hazards = new HazardOverlay(zones);
    repaint();
  }

  public void setTool(PictureTool changed) {
    tool = changed;
  }

  public void setCleanUp(CleanUp changed) {
    cleanUp = changed;
    repaint();
  }

  public CleanUp cleanUp() {
    return cleanUp;
  }

  /** A magnified inset that follows the pointer. */
  public void setLoupe(boolean shown) {
    loupe = shown;
    repaint();
  }

  public boolean loupe() {
    return loupe;
  }

  /** False for thumbnails and cards: neither pans nor zooms, takes no focus and asks no tool. */
  public void setInteractive(boolean changed) {
    interactive = changed;
    setFocusable(changed);
  }

  /** Hears of every change of view. */
  public void onView(Consumer<ViewState> listener) {
    viewListeners.add(listener);
  }

  private void resized() {
    if (source == null || getWidth() < 1 || getHeight() < 1) {
      return;
    }
    setView(
        view == null
            ? ViewState.fit(source.width(), source.height(), getWidth(), getHeight(), orientation)
            : view);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      g.setColor(getBackground());
      g.fillRect(0, 0, getWidth(), getHeight());
      if (source != null && view != null) {
        paintPicture(g, source, view);
        paintOverlays(g, view);
      }
    } finally {
      g.dispose();
    }
  }

  private void paintPicture(Graphics2D g, PictureSource picture, ViewState now) {
    Box seen = now.visible();
    double side = TileKey.SIZE;
    for (int row = 0; row * side < picture.height(); row++) {
      for (int column = 0; column * side < picture.width(); column++) {
        TileKey key = new TileKey(0, column, row);
        if (key.area().touches(seen) && picture.tile(key) instanceof TileAnswer.Ready ready) {
          AffineTransform there = now.transform();
          there.translate(column * side, row * side);
          g.drawImage(ready.image(), there, null);
        }
      }
    }
  }

  private void paintOverlays(Graphics2D g, ViewState now) {
    List<Overlay> all = new ArrayList<>(overlays);
    all.add(hazards);
    for (Overlay overlay : all) {
      Graphics2D own = (Graphics2D) g.create();
      try {
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        overlay.paint(own, now);
      } finally {
        own.dispose();
      }
    }
  }

  private Optional<Pointer> pointer(MouseEvent event) {
    ScreenPoint screen = new ScreenPoint(event.getX(), event.getY());
    return view()
        .map(
            now ->
                new Pointer(
                    now.toPicture(screen),
                    screen,
                    REACH / now.scale(),
                    event.getClickCount(),
                    event.getModifiersEx()));
  }

  /** The mouse. */
  private final class Hand extends MouseAdapter {
    private @Nullable MouseEvent pressed;
    private boolean dragging;
    private boolean taken;
    private int lastX;
    private int lastY;

    @Override
    public void mousePressed(MouseEvent event) {
      if (!interactive) {
        return;
      }
      requestFocusInWindow();
      if (event.isPopupTrigger()) {
        pointer(event).ifPresent(tool::menu);
      } else if (SwingUtilities.isLeftMouseButton(event)
          || SwingUtilities.isMiddleMouseButton(event)) {
        pressed = event;
        dragging = false;
        lastX = event.getX();
        lastY = event.getY();
      }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
      if (pressed == null) {
        return;
      }
      if (!dragging) {
        if (Math.hypot(event.getX() - lastX, event.getY() - lastY) < CLICK_SLOP) {
          return;
        }
        dragging = true;
        taken =
            SwingUtilities.isLeftMouseButton(pressed)
                && pointer(pressed).map(tool::dragBegins).orElse(false);
      }
      if (taken) {
        pointer(event).ifPresent(tool::dragged);
      } else {
        double dx = event.getX() - lastX;
        double dy = event.getY() - lastY;
        view().ifPresent(now -> setView(now.pannedBy(dx, dy)));
      }
      lastX = event.getX();
      lastY = event.getY();
    }

    @Override
    public void mouseReleased(MouseEvent event) {
      if (interactive && event.isPopupTrigger()) {
        pointer(event).ifPresent(tool::menu);
      }
      if (pressed == null) {
        return;
      }
      if (dragging && taken) {
        pointer(event).ifPresent(tool::dropped);
      } else if (!dragging && SwingUtilities.isLeftMouseButton(pressed)) {
        pointer(event).ifPresent(tool::click);
      }
      pressed = null;
      dragging = false;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
      if (interactive) {
        pointer(event).ifPresent(tool::moved);
      }
    }

    @Override
    public void mouseExited(MouseEvent event) {
      tool.left();
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
      if (interactive) {
        ScreenPoint at = new ScreenPoint(event.getX(), event.getY());
        double factor = Math.pow(1.2, -event.getPreciseWheelRotation());
        view().ifPresent(now -> setView(now.zoomedBy(factor, at)));
      } else if (getParent() != null) {
        getParent()
            .dispatchEvent(
                SwingUtilities.convertMouseEvent(event.getComponent(), event, getParent()));
      }
    }
  }
}
