package org.relegend.viewer.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.paint.HazardOverlay;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Shows one picture with marks over it; zooms with the wheel at the pointer, pans by dragging. All
 * on the event thread.
 */
public final class PictureCanvas extends JComponent implements Accessible {
  /** How far something may lie from the pointer and still be meant, in component pixels. */
  private static final double REACH = 8;

  private static final double REVEAL_MARGIN = 40;
  private static final double ZOOM_MARGIN = 8;
  private static final Color GROUND = new Color(0x303030);

  private final List<Consumer<ViewState>> viewListeners = new ArrayList<>();
  private final CanvasPainter canvassing = new CanvasPainter(this);
  private final CanvasMouse mouse = new CanvasMouse(this);
  private final Runnable heard = this::repaint;
  private @Nullable PictureSource source;
  private Orientation orientation = Orientation.UPRIGHT;
  private @Nullable ViewState view;

  /** What to do to the view as soon as there is one. */
  private UnaryOperator<ViewState> wish = UnaryOperator.identity();

  private List<Overlay> overlays = List.of();
  private PictureTool tool = PictureTool.LOOK;
  private boolean interactive = true;

  public PictureCanvas() {
    setOpaque(true);
    setBackground(GROUND);
    setPreferredSize(new Dimension(640, 480));
    setFocusable(true);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            resized();
          }
        });
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
    addFocusListener(new FocusWatch());
    CanvasKeys.install(this);
  }

  /** Shows another picture, whole. Its marks and zones are to be set anew by the caller. */
  public void show(PictureSource picture, Orientation as) {
    clear();
    source = picture;
    orientation = as;
    canvassing.show(picture);
    picture.addListener(heard);
    resized();
  }

  /** Shows no picture, no marks and no zones. */
  public void clear() {
    mouse.cancel();
    if (source != null) {
      source.removeListener(heard);
      source.want(this, List.of());
    }
    source = null;
    view = null;
    wish = UnaryOperator.identity();
    overlays = List.of();
    canvassing.clear();
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
    change(now -> changed.resizedTo(now.width(), now.height()));
  }

  /**
   * As {@link #setView}, by hand: the tool may want something read before, and the move comes later
   * or never. Tells whether it is done.
   */
  boolean moveTo(ViewState changed) {
    boolean[] done = {false};
    tool.approach(
        changed,
        () -> {
          done[0] = true;
          setView(changed);
        });
    return done[0];
  }

  /** Shows this point in the middle, at this scale. */
  void look(Point centre, double scale) {
    change(now -> now.centredOn(centre, scale));
  }

  /** Brings a region of the picture into view, with as little change as possible. */
  public void reveal(Box region) {
    change(now -> now.revealing(region, REVEAL_MARGIN));
  }

  /** As {@link #reveal}, and zooms in where it would be too small to make out. */
  public void nearTo(Box region) {
    change(now -> now.nearing(region, REVEAL_MARGIN));
  }

  /** Shows a region as large as fits. */
  public void zoomTo(Box region) {
    change(now -> now.showing(region, ZOOM_MARGIN));
  }

  public void setOrientation(Orientation changed) {
    orientation = changed;
    change(now -> now.withOrientation(changed));
  }

  /** Changes the view at once, or, where the canvas has no size yet, as soon as it has. */
  private void change(UnaryOperator<ViewState> how) {
    if (source == null) {
      return;
    }
    ViewState now = view;
    if (now == null) {
      UnaryOperator<ViewState> earlier = wish;
      wish = state -> how.apply(earlier.apply(state));
      return;
    }
    ViewState changed = how.apply(now);
    if (!changed.equals(now)) {
      view = changed;
      orientation = changed.orientation();
      canvassing.viewChanged(now, changed);
      List.copyOf(viewListeners).forEach(listener -> listener.accept(changed));
    }
  }

  private void resized() {
    if (source == null || getWidth() < 1 || getHeight() < 1) {
      return;
    }
    if (view == null) {
      UnaryOperator<ViewState> wished = wish;
      wish = UnaryOperator.identity();
      view = ViewState.fit(source.width(), source.height(), getWidth(), getHeight(), orientation);
      change(wished);
      repaint();
    } else {
      change(now -> now.resizedTo(getWidth(), getHeight()));
    }
  }

  /** Painted in this order, all beneath the hazard zones. */
  public void setOverlays(List<? extends Overlay> inOrder) {
    overlays = List.copyOf(inOrder);
    canvassing.setOverlays(overlays);
  }

  /** The zones of the picture shown; always painted, over everything else. */
  public void setHazards(List<HazardZone> zones) {
    canvassing.setHazards(new HazardOverlay(zones));
  }

  /** As {@link #setHazards(List)}, with words for the kinds of hazards in the user's language. */
  public void setHazards(HazardOverlay zones) {
    canvassing.setHazards(zones);
  }

  public void setTool(PictureTool changed) {
    mouse.cancel();
    tool = changed;
  }

  PictureTool tool() {
    return tool;
  }

  public void setCleanUp(CleanUp changed) {
    canvassing.setCleanUp(changed);
  }

  public CleanUp cleanUp() {
    return canvassing.cleanUp();
  }

  /** A magnified inset that follows the pointer. */
  public void setLoupe(boolean shown) {
    canvassing.setLoupe(shown);
  }

  public boolean loupe() {
    return canvassing.loupe();
  }

  void moveLoupe(Optional<ScreenPoint> pointer) {
    canvassing.moveLoupe(pointer.filter(this::mayMagnify));
  }

  private boolean mayMagnify(ScreenPoint at) {
    return view == null || tool.mayMagnify(Loupe.shownAt(view, at));
  }

  /** False for thumbnails and cards: neither pans nor zooms, takes no focus and asks no tool. */
  public void setInteractive(boolean changed) {
    interactive = changed;
    canvassing.setInteractive(changed);
    setFocusable(changed);
  }

  boolean interactive() {
    return interactive;
  }

  /** Hears of every change of view. */
  public void onView(Consumer<ViewState> listener) {
    viewListeners.add(listener);
  }

  @Override
  public void setBackground(Color changed) {
    super.setBackground(changed);
    if (canvassing != null) { // the superclass sets it before this class is ready
      canvassing.setGround(changed);
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      canvassing.paint(g, view);
    } finally {
      g.dispose();
    }
  }

  @Override
  public void addNotify() {
    super.addNotify();
    canvassing.appeared();
  }

  @Override
  public void removeNotify() {
    if (source != null) {
      source.want(this, List.of());
    }
    canvassing.disappeared();
    super.removeNotify();
  }

  /** A view moved along with the pointer, by whole pixels of the screen. */
  ViewState moved(ViewState from, double dx, double dy) {
    double fine = canvassing.deviceScale();
    return from.pannedBy(Math.round(dx * fine) / fine, Math.round(dy * fine) / fine);
  }

  /** Component pixels per picture unit at 1:1, on this screen. */
  double actualScale() {
    return source == null ? 1 : source.actualScale() / canvassing.deviceScale();
  }

  Optional<PointerPosition> pointer(MouseEvent event) {
    return pointer(
        new ScreenPoint(event.getX(), event.getY()),
        Math.max(1, event.getClickCount()),
        event.getModifiersEx());
  }

  private Optional<PointerPosition> pointer(ScreenPoint screen, int clicks, int modifiers) {
    return view()
        .map(
            now ->
                new PointerPosition(
                    now.toPicture(screen), screen, REACH / now.scale(), clicks, modifiers));
  }

  /** For those who can't use a mouse: the picture moves beneath a cross in the middle. */
  void clickMiddle() {
    ScreenPoint middle = new ScreenPoint(getWidth() / 2.0, getHeight() / 2.0);
    if (canvassing.middleShown()) {
      pointer(middle, 1, InputEvent.BUTTON1_DOWN_MASK).ifPresent(tool::click);
    } else {
      showMiddle();
    }
  }

  void showMiddle() {
    canvassing.setMiddleShown(true);
  }

  void cancelDrag() {
    if (!mouse.cancel()) {
      canvassing.setMiddleShown(false);
    }
  }

  /** Lost focus ends what was begun with it. */
  private final class FocusWatch implements FocusListener {
    @Override
    public void focusGained(FocusEvent event) {
      repaint();
    }

    @Override
    public void focusLost(FocusEvent event) {
      mouse.cancel();
      canvassing.setMiddleShown(false);
      repaint();
    }
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new CanvasContext();
    }
    return accessibleContext;
  }

  /** A canvas whose parts are the marks in view. */
  private final class CanvasContext extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }

    @Override
    public int getAccessibleChildrenCount() {
      return children().size();
    }

    @Override
    public @Nullable Accessible getAccessibleChild(int index) {
      List<Accessible> children = children();
      return index < 0 || index >= children.size() ? null : children.get(index);
    }

    private List<Accessible> children() {
      List<MarkOverlay> marks =
          overlays.stream()
              .filter(MarkOverlay.class::isInstance)
              .map(MarkOverlay.class::cast)
              .toList();
      return view()
          .map(now -> CanvasAccessibility.children(PictureCanvas.this, now, marks))
          .orElse(List.of());
    }
  }
}
