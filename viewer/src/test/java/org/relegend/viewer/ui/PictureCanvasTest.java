package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.scan.PictureSamples;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.paint.Mark;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.paint.MarkSamples;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.tile.MemorySource;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** The component without a window, driven by the events that Swing would send. */
class PictureCanvasTest {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 300;

  private final List<String> calls = new ArrayList<>();
  private final PictureCanvas canvas = onEvents(this::made);

  private PictureCanvas made() {
    PictureCanvas fresh = new PictureCanvas();
    fresh.show(new MemorySource(PictureSamples.discs(800, 600, 1)), Orientation.UPRIGHT);
    resize(fresh, WIDTH, HEIGHT);
    return fresh;
  }

  private final PictureTool teller =
      new PictureTool() {
        @Override
        public void click(PointerPosition pointer) {
          calls.add("click " + (int) pointer.at().x() + " " + (int) pointer.at().y());
        }

        @Override
        public boolean dragBegins(PointerPosition pointer) {
          calls.add("begins");
          return !pointer.shift();
        }

        @Override
        public void dragged(PointerPosition pointer) {
          calls.add("dragged");
        }

        @Override
        public void dropped(PointerPosition pointer) {
          calls.add("dropped");
        }

        @Override
        public void dragCancelled() {
          calls.add("cancelled");
        }

        @Override
        public void moved(PointerPosition pointer) {
          calls.add("moved");
        }

        @Override
        public void left() {
          calls.add("left");
        }

        @Override
        public void menu(PointerPosition pointer) {
          calls.add("menu");
        }
      };

  @Test
  void shown_isSeenWhole() {
    ViewState view = canvas.view().orElseThrow();

    assertThat(view.scale()).isEqualTo(0.5);
    assertThat(view.isFitted()).isTrue();
    assertThat(painted().getRGB(200, 150)).isNotEqualTo(canvas.getBackground().getRGB());
  }

  @Test
  void wheel_zoomsAtThePointer() {
    ScreenPoint at = new ScreenPoint(100, 80);
    Point before = view().toPicture(at);

    onEvents(() -> wheel(canvas, 100, 80, -3));

    assertThat(view().scale()).isCloseTo(0.5 * Math.pow(1.2, 3), within(1e-9));
    assertThat(view().toPicture(at).distance(before)).isLessThan(1e-6);
  }

  @Test
  void drag_pansByWholePixels_andItIsTheSamePictureThere() {
    onEvents(() -> canvas.zoomTo(new Box(300, 200, 500, 350)));
    Point before = view().toPicture(new ScreenPoint(200, 150));

    onEvents(
        () -> {
          press(200, 150, InputEvent.BUTTON1_DOWN_MASK);
          drag(203, 151);
          drag(230, 120);
          release(230, 120);
        });

    assertThat(view().toPicture(new ScreenPoint(230, 120)).distance(before)).isLessThan(1e-6);
  }

  @Test
  void tool_getsClicksAndTheDragsItTakes() {
    onEvents(
        () -> {
          canvas.setTool(teller);
          press(100, 50, InputEvent.BUTTON1_DOWN_MASK);
          drag(101, 51);
          release(101, 51);
          press(100, 50, InputEvent.BUTTON1_DOWN_MASK);
          drag(120, 50);
          drag(140, 50);
          release(140, 50);
        });

    assertThat(calls).containsExactly("click 200 100", "begins", "dragged", "dragged", "dropped");
  }

  @Test
  void dragThatTheToolDeclines_pans_andEscapeTakesEitherBack() {
    onEvents(
        () -> {
          canvas.setTool(teller);
          canvas.zoomTo(new Box(300, 200, 500, 350));
        });
    ViewState before = view();
    onEvents(
        () -> {
          press(100, 50, InputEvent.BUTTON1_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
          drag(140, 50);
        });
    assertThat(view()).isNotEqualTo(before);
    onEvents(() -> act("cancel-drag"));
    assertThat(view()).isEqualTo(before);
    onEvents(
        () -> {
          drag(160, 50);
          release(160, 50);
          press(100, 50, InputEvent.BUTTON1_DOWN_MASK);
          drag(140, 50);
          act("cancel-drag");
          release(140, 50);
        });

    assertThat(calls).containsExactly("begins", "begins", "dragged", "cancelled");
    assertThat(view()).isEqualTo(before);
  }

  @Test
  void keys_zoomFitPanAndClick() {
    onEvents(
        () -> {
          canvas.setTool(teller);
          act("actual-size");
        });
    assertThat(view().scale()).isEqualTo(1);
    onEvents(() -> act("zoom-in"));
    assertThat(view().scale()).isEqualTo(1.25);
    Point before = view().centre();
    onEvents(
        () -> {
          act("pan-left");
          act("pan-up");
        });
    assertThat(view().centre().x()).isLessThan(before.x());
    assertThat(view().centre().y()).isLessThan(before.y());
    onEvents(() -> act("click-middle"));
    assertThat(calls).hasSize(1);
    onEvents(() -> act("fit"));
    assertThat(view().isFitted()).isTrue();
    for (String key : List.of("typed +", "typed -", "typed 0", "typed 1", "LEFT", "SPACE", "L")) {
      assertThat(canvas.getInputMap().get(KeyStroke.getKeyStroke(key))).as(key).isNotNull();
    }
  }

  @Test
  void viewAskedForBeforeTheCanvasHasASize_isShownOnceItHas() {
    PictureCanvas late =
        onEvents(
            () -> {
              PictureCanvas fresh = new PictureCanvas();
              fresh.show(new MemorySource(PictureSamples.discs(800, 600, 1)), Orientation.UPRIGHT);
              fresh.zoomTo(new Box(100, 100, 200, 150));
              assertThat(fresh.view()).isEmpty();
              resize(fresh, WIDTH, HEIGHT);
              return fresh;
            });

    ViewState view = late.view().orElseThrow();
    assertThat(view.centre().distance(new Point(150, 125))).isLessThan(1e-9);
    assertThat(view.scale()).isGreaterThan(3);
  }

  @Test
  void listeners_hearOfEveryChangeOnce() {
    List<ViewState> heard = new ArrayList<>();
    onEvents(
        () -> {
          canvas.onView(heard::add);
          act("zoom-in");
          canvas.setView(view());
          canvas.reveal(new Box(399, 299, 401, 301));
          canvas.setOrientation(Orientation.UPRIGHT.turned(1));
        });

    assertThat(heard).hasSize(2);
    assertThat(heard.get(1)).isEqualTo(view());
  }

  /** What was painted last lies uppermost, whatever else is shown and however. */
  @Test
  void hazards_lieOverEverythingAndStay() {
    HazardZone zone =
        MarkSamples.zone(
            "z",
            HazardZone.Kind.MAINS,
            new Point(200, 150),
            new Point(600, 150),
            new Point(600, 450),
            new Point(200, 450));
    Overlay cover =
        (g, view) -> {
          g.setColor(Color.MAGENTA);
          g.fillRect(0, 0, view.width(), view.height());
        };
    onEvents(
        () -> {
          canvas.setHazards(List.of(zone));
          canvas.setOverlays(List.of(cover));
        });
    int alone = count(painted(), Palette.WARNING_YELLOW);
    onEvents(() -> canvas.setOverlays(List.of(cover, cover)));
    int withPreview = count(painted(), Palette.WARNING_YELLOW);
    onEvents(() -> canvas.setCleanUp(new CleanUp(0, 1, 128)));
    int cleanedUp = count(painted(), Palette.WARNING_YELLOW);

    assertThat(alone).isGreaterThan(2000);
    assertThat(withPreview).isEqualTo(alone);
    assertThat(cleanedUp).isEqualTo(alone);
    assertThat(count(painted(), Color.MAGENTA)).isGreaterThan(50_000);
  }

  @Test
  void loupe_showsWhatIsBeneathThePointerLarger() {
    BufferedImage plain = painted();
    onEvents(
        () -> {
          canvas.setLoupe(true);
          canvas.moveLoupe(Optional.of(new ScreenPoint(200, 150)));
        });
    BufferedImage magnified = painted();
    ViewState inset = view().zoomedTo(view().scale() * 4, new ScreenPoint(200, 150));
    Point seen = inset.toPicture(new ScreenPoint(240, 170));
    ScreenPoint small = view().toScreen(seen);

    assertThat(closeness(magnified, 240, 170, plain, (int) small.x(), (int) small.y()))
        .isLessThan(60);
    assertThat(magnified.getRGB(10, 10)).isEqualTo(plain.getRGB(10, 10));
    onEvents(() -> canvas.moveLoupe(Optional.empty()));
    assertThat(painted().getRGB(240, 170)).isEqualTo(plain.getRGB(240, 170));
  }

  @Test
  void cleanUp_changesThePictureOnly_notWhatLiesBeside() {
    onEvents(
        () -> {
          resize(canvas, WIDTH, WIDTH);
          canvas.setCleanUp(new CleanUp(0, 1, 100));
        });
    BufferedImage screen = painted();

    assertThat(screen.getRGB(5, 5)).isEqualTo(canvas.getBackground().getRGB());
    int other = 0;
    for (int y = 60; y < 340; y++) {
      for (int x = 10; x < 390; x++) {
        int rgb = screen.getRGB(x, y) & 0xFFFFFF;
        other += rgb == 0 || rgb == 0xFFFFFF ? 0 : 1;
      }
    }
    assertThat(other).isZero();
  }

  @Test
  void card_leavesTheMouseToWhatItLiesOn() {
    List<String> parent = new ArrayList<>();
    onEvents(
        () -> {
          canvas.setTool(teller);
          canvas.setInteractive(false);
          JPanel card = new JPanel(null);
          card.add(canvas);
          card.addMouseListener(
              new java.awt.event.MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent event) {
                  parent.add("pressed");
                }
              });
          card.addMouseWheelListener(event -> parent.add("wheel"));
          press(100, 50, InputEvent.BUTTON1_DOWN_MASK);
          drag(150, 50);
          release(150, 50);
          wheel(canvas, 10, 10, 1);
        });

    assertThat(calls).isEmpty();
    assertThat(parent).containsExactly("pressed", "wheel");
    assertThat(view().isFitted()).isTrue();
    assertThat(canvas.isFocusable()).isFalse();
  }

  @Test
  void marksInView_areToldToThoseWhoHaveTheScreenRead() {
    Mark near = MarkSamples.spread(1, 10, 10, 1).get(0);
    List<Mark> marks = new ArrayList<>(MarkSamples.spread(60, 800, 600, 5));
    marks.add(near);
    onEvents(() -> canvas.setOverlays(List.of(new MarkOverlay(marks))));
    AccessibleContext context = canvas.getAccessibleContext();
    assertThat(context.getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
    assertThat(context.getAccessibleChildrenCount()).isEqualTo(61);
    assertThat(context.getAccessibleChild(61)).isNull();
    onEvents(() -> canvas.zoomTo(new Box(0, 0, 8, 8)));
    assertThat(context.getAccessibleChildrenCount()).isLessThan(10).isPositive();
    AccessibleContext mark = context.getAccessibleChild(0).getAccessibleContext();
    assertThat(mark.getAccessibleName()).isNotBlank();
    assertThat(mark.getAccessibleDescription()).isNotBlank();
    assertThat(mark.getAccessibleRole()).isEqualTo(AccessibleRole.LABEL);
  }

  @Test
  void cleared_showsNothing() {
    onEvents(canvas::clear);

    assertThat(canvas.view()).isEmpty();
    assertThat(canvas.source()).isEmpty();
    BufferedImage screen = painted();
    assertThat(count(screen, canvas.getBackground())).isEqualTo(WIDTH * HEIGHT);
    assertThat(canvas.getAccessibleContext().getAccessibleChildrenCount()).isZero();
  }

  private ViewState view() {
    return canvas.view().orElseThrow();
  }

  private void act(String action) {
    canvas
        .getActionMap()
        .get(action)
        .actionPerformed(new ActionEvent(canvas, ActionEvent.ACTION_PERFORMED, action));
  }

  private BufferedImage painted() {
    return onEvents(
        () -> {
          BufferedImage screen =
              new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
          Graphics2D g = screen.createGraphics();
          canvas.paint(g);
          g.dispose();
          return screen;
        });
  }

  private void press(int x, int y, int modifiers) {
    mouse(MouseEvent.MOUSE_PRESSED, x, y, modifiers);
  }

  private void drag(int x, int y) {
    mouse(MouseEvent.MOUSE_DRAGGED, x, y, InputEvent.BUTTON1_DOWN_MASK);
  }

  private void release(int x, int y) {
    mouse(MouseEvent.MOUSE_RELEASED, x, y, 0);
  }

  private void mouse(int id, int x, int y, int modifiers) {
    int button = id == MouseEvent.MOUSE_DRAGGED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
    canvas.dispatchEvent(new MouseEvent(canvas, id, 0, modifiers, x, y, 1, false, button));
  }

  private static void wheel(PictureCanvas canvas, int x, int y, int notches) {
    canvas.dispatchEvent(
        new MouseWheelEvent(
            canvas,
            MouseEvent.MOUSE_WHEEL,
            0,
            0,
            x,
            y,
            0,
            false,
            MouseWheelEvent.WHEEL_UNIT_SCROLL,
            3,
            notches));
  }

  private static void resize(PictureCanvas canvas, int width, int height) {
    canvas.setSize(width, height);
    canvas.dispatchEvent(new ComponentEvent(canvas, ComponentEvent.COMPONENT_RESIZED));
  }

  private static int count(BufferedImage screen, Color colour) {
    int count = 0;
    for (int y = 0; y < screen.getHeight(); y++) {
      for (int x = 0; x < screen.getWidth(); x++) {
        count += screen.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
    }
    return count;
  }

  private static int closeness(
      BufferedImage one, int x1, int y1, BufferedImage other, int x2, int y2) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      int a = one.getRGB(x1, y1) >> shift & 0xFF;
      most = Math.max(most, Math.abs(a - (other.getRGB(x2, y2) >> shift & 0xFF)));
    }
    return most;
  }

  private static void onEvents(Runnable work) {
    onEvents(
        () -> {
          work.run();
          return 0;
        });
  }

  private static <T> T onEvents(Callable<T> work) {
    AtomicReference<T> result = new AtomicReference<>();
    AtomicReference<Throwable> problem = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(
          () -> {
            try {
              result.set(work.call());
            } catch (Exception | AssertionError trouble) {
              problem.set(trouble);
            }
          });
    } catch (InterruptedException | java.lang.reflect.InvocationTargetException trouble) {
      throw new AssertionError(trouble);
    }
    if (problem.get() != null) {
      throw new AssertionError(problem.get());
    }
    return result.get();
  }
}
