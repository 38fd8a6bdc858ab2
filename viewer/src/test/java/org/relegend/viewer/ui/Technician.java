package org.relegend.viewer.ui;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.ScreenPoint;

/** Works at the real window with a real pointer and keyboard, and counts clicks and keys. */
final class Technician implements AutoCloseable {
  private static final int PATIENCE_MILLIS = 120_000;

  private final Program program;
  private final Robot robot;
  private final EventThreadGuard guard = EventThreadGuard.install();
  private int clicks;
  private int keys;

  private Technician(Program program, Robot robot) {
    this.program = program;
    this.robot = robot;
  }

  /** Starts the program as a person does. */
  static Technician start(Optional<Path> folder, ViewerPreferences settings, Path cache)
      throws AWTException {
    return start(folder, settings, cache, Optional.empty());
  }

  static Technician start(
      Optional<Path> folder, ViewerPreferences settings, Path cache, Optional<Path> demo)
      throws AWTException {
    if (GraphicsEnvironment.isHeadless()) {
      throw new IllegalStateException(
          "The window tests need a display, and this machine offers none. Run them with"
              + " `bash .ci/test`, which brings one; or leave them out with -DskipITs.");
    }
    Robot robot = new Robot();
    robot.setAutoDelay(4);
    Program program = Viewer.of(settings, cache, demo, Clock.systemUTC());
    Technician technician = new Technician(program, robot);
    program.start(folder);
    technician.await("a window", () -> !program.windows().isEmpty());
    technician.await("the window to show", () -> technician.window().isShowing());
    if (folder.isPresent()) {
      technician.await("the map to open", () -> technician.window().sitting().isPresent());
    }
    technician.readCautions();
    technician.awaitRest(technician.window());
    return technician;
  }

  /**
   * The cautions that may stand before the window: the first of all, and that of a resumed view.
   */
  private void readCautions() {
    for (String caution : List.of("first-caution", "caution")) {
      await("the window in front", () -> window().isActive() || isCautioned());
      waitUntilIdle();
      if (find(caution).isPresent()) {
        dialog(caution);
        key("ctrl ENTER");
        await("the caution read", () -> find(caution).isEmpty());
      }
    }
    await("the window in front", () -> window().isActive());
  }

  private boolean isCautioned() {
    return find("first-caution").isPresent() || find("caution").isPresent();
  }

  /** Waits until the window manager has put a window where it stays. */
  private void awaitRest(Window window) {
    Rectangle last = new Rectangle();
    for (int still = 0; still < 10; ) {
      robot.delay(30);
      Rectangle now = new Rectangle(onEdt(window::getLocationOnScreen), onEdt(window::getSize));
      still = now.equals(last) ? still + 1 : 0;
      last = now;
    }
  }

  Program program() {
    return program;
  }

  ViewerWindow window() {
    return (ViewerWindow) program.windows().get(program.windows().size() - 1);
  }

  MapPanel panel() {
    return window().sitting().orElseThrow().panel();
  }

  Session session() {
    return window().sitting().orElseThrow().session();
  }

  int clicks() {
    return clicks;
  }

  int keys() {
    return keys;
  }

  void countAnew() {
    clicks = 0;
    keys = 0;
  }

  /** Waits until something is so, as told on the event thread. */
  void await(String what, BooleanSupplier condition) {
    long end = System.nanoTime() + PATIENCE_MILLIS * 1_000_000L;
    while (!onEdt(condition::getAsBoolean)) {
      if (System.nanoTime() > end) {
        save("failed", robot.createScreenCapture(onEdt(() -> window().getBounds())));
        throw new AssertionError(
            "waited in vain for %s; target/screens/failed.png shows the window".formatted(what));
      }
      robot.delay(20);
    }
  }

  /** Asks on the event thread. */
  static <T> T onEdt(Supplier<T> question) {
    AtomicReference<T> answer = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(() -> answer.set(question.get()));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    } catch (InvocationTargetException problem) {
      throw new IllegalStateException(problem.getCause());
    }
    return answer.get();
  }

  /** Waits until all that was done has been worked off. */
  void waitUntilIdle() {
    robot.waitForIdle();
    onEdt(() -> true);
  }

  private java.awt.Point screenPlace(PicturePane pane, Point at) {
    return onEdt(
        () -> {
          ScreenPoint there = pane.canvas().view().orElseThrow().toScreen(at);
          java.awt.Point place = new java.awt.Point((int) there.x(), (int) there.y());
          SwingUtilities.convertPointToScreen(place, pane.canvas());
          return place;
        });
  }

  void click(PicturePane pane, Point at) {
    clicks++;
    clickAt(screenPlace(pane, at));
  }

  void click(Component component) {
    clicks++;
    clickAt(
        onEdt(
            () -> {
              java.awt.Point place = component.getLocationOnScreen();
              place.translate(component.getWidth() / 2, component.getHeight() / 2);
              return place;
            }));
  }

  private void clickAt(java.awt.Point place) {
    robot.mouseMove(place.x, place.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    waitUntilIdle();
  }

  void moveTo(PicturePane pane, Point at) {
    java.awt.Point place = screenPlace(pane, at);
    robot.mouseMove(place.x, place.y);
    waitUntilIdle();
  }

  void drag(PicturePane pane, Point from, Point to) {
    java.awt.Point start = screenPlace(pane, from);
    java.awt.Point end = screenPlace(pane, to);
    robot.mouseMove(start.x, start.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    for (int step = 1; step <= 8; step++) {
      robot.mouseMove(
          start.x + (end.x - start.x) * step / 8, start.y + (end.y - start.y) * step / 8);
    }
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    waitUntilIdle();
  }

  /** A drag with Shift held down. */
  void dragShifted(PicturePane pane, Point from, Point to) {
    robot.keyPress(KeyEvent.VK_SHIFT);
    drag(pane, from, to);
    robot.keyRelease(KeyEvent.VK_SHIFT);
  }

  /** Turns the wheel where the pointer is; away from oneself, to zoom in, below zero. */
  void wheel(int notches) {
    robot.mouseWheel(notches);
    waitUntilIdle();
  }

  /** Presses a key with its modifiers: "T", "ctrl Z", "shift P". */
  void key(String stroke) {
    keys++;
    KeyStroke key = KeyStroke.getKeyStroke(stroke);
    int modifiers = key.getModifiers();
    press(modifiers, InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_CONTROL, true);
    press(modifiers, InputEvent.ALT_DOWN_MASK, KeyEvent.VK_ALT, true);
    press(modifiers, InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SHIFT, true);
    robot.keyPress(key.getKeyCode());
    robot.keyRelease(key.getKeyCode());
    press(modifiers, InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SHIFT, false);
    press(modifiers, InputEvent.ALT_DOWN_MASK, KeyEvent.VK_ALT, false);
    press(modifiers, InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_CONTROL, false);
    waitUntilIdle();
  }

  private void press(int modifiers, int mask, int code, boolean down) {
    if ((modifiers & mask) != 0) {
      if (down) {
        robot.keyPress(code);
      } else {
        robot.keyRelease(code);
      }
    }
  }

  /** Types text letter by letter. */
  void type(String text) {
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      boolean shift = Character.isUpperCase(letter) || "_+?".indexOf(letter) >= 0;
      int code =
          switch (letter) {
            case '_' -> KeyEvent.VK_MINUS;
            case '+' -> KeyEvent.VK_EQUALS;
            case '?' -> KeyEvent.VK_SLASH;
            default -> KeyEvent.getExtendedKeyCodeForChar(letter);
          };
      if (shift) {
        robot.keyPress(KeyEvent.VK_SHIFT);
      }
      robot.keyPress(code);
      robot.keyRelease(code);
      if (shift) {
        robot.keyRelease(KeyEvent.VK_SHIFT);
      }
    }
    waitUntilIdle();
  }

  /** The dialog of that name, once it shows. */
  JDialog dialog(String name) {
    await("the dialog " + name, () -> find(name).isPresent());
    JDialog dialog = onEdt(() -> find(name)).orElseThrow();
    await("the dialog in front", dialog::isActive);
    return dialog;
  }

  /** Whatever dialog is in front. */
  Optional<JDialog> front() {
    for (Window window : Window.getWindows()) {
      if (window instanceof JDialog dialog && dialog.isShowing() && dialog.isActive()) {
        return Optional.of(dialog);
      }
    }
    return Optional.empty();
  }

  Optional<JDialog> find(String name) {
    for (Window window : Window.getWindows()) {
      if (window instanceof JDialog dialog && window.isShowing() && name.equals(window.getName())) {
        return Optional.of(dialog);
      }
    }
    return Optional.empty();
  }

  /** Waits for a message box. */
  void awaitMessage() {
    await("a message", () -> !message().isEmpty());
    waitUntilIdle();
  }

  /** What the message box says that is open now; empty where there is none. */
  String message() {
    for (Window window : Window.getWindows()) {
      if (window instanceof JDialog dialog && window.isShowing()) {
        Optional<JOptionPane> pane = first(dialog.getContentPane(), JOptionPane.class);
        if (pane.isPresent() && pane.get().getMessage() instanceof JLabel text) {
          return text.getText();
        }
      }
    }
    return "";
  }

  private static <T extends Component> Optional<T> first(Container in, Class<T> type) {
    for (Component child : in.getComponents()) {
      if (type.isInstance(child)) {
        return Optional.of(type.cast(child));
      }
      if (child instanceof Container container) {
        Optional<T> found = first(container, type);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** Waits for a component to be there and to show. */
  <T extends Component> void awaitShown(Class<T> type, String name) {
    await(
        name,
        () -> search(window().getRootPane(), type, name).filter(Component::isShowing).isPresent());
  }

  /** A component by its name, somewhere in the window. */
  <T extends Component> T named(Class<T> type, String name) {
    return onEdt(() -> search(window().getRootPane(), type, name))
        .orElseThrow(() -> new AssertionError("no " + type.getSimpleName() + " named " + name));
  }

  static <T extends Component> Optional<T> search(Container in, Class<T> type, String name) {
    for (Component child : in.getComponents()) {
      if (type.isInstance(child) && name.equals(child.getName())) {
        return Optional.of(type.cast(child));
      }
      if (child instanceof Container container) {
        Optional<T> found = search(container, type, name);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** The window as it shows on the screen, kept as target/screens/NAME.png. */
  void shoot(String name) {
    robot.mouseMove(2, 2);
    shootAsIs(name);
  }

  /** As {@link #shoot}, with the pointer where it is. */
  void shootAsIs(String name) {
    waitUntilIdle();
    robot.delay(250); // the last tiles of the pictures
    waitUntilIdle();
    Rectangle bounds = onEdt(() -> window().getBounds());
    save(name, robot.createScreenCapture(bounds));
  }

  /** The window without colour, as a person without colour vision or a copier sees it. */
  BufferedImage shootGrey(String name) {
    waitUntilIdle();
    BufferedImage grey = grey(robot.createScreenCapture(onEdt(() -> window().getBounds())));
    save(name, grey);
    return grey;
  }

  static BufferedImage grey(BufferedImage image) {
    BufferedImage grey =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    grey.createGraphics().drawImage(image, 0, 0, null);
    return grey;
  }

  /** What the screen shows of a component, the pointer out of the way. */
  BufferedImage look(Component component) {
    robot.mouseMove(2, 2);
    waitUntilIdle();
    robot.delay(250); // the last tiles
    waitUntilIdle();
    return robot.createScreenCapture(
        onEdt(() -> new Rectangle(component.getLocationOnScreen(), component.getSize())));
  }

  private static void save(String name, BufferedImage image) {
    File file = new File("target/screens/" + name + ".png");
    file.getParentFile().mkdirs();
    try {
      ImageIO.write(image, "png", file);
    } catch (IOException problem) {
      throw new IllegalStateException(problem);
    }
  }

  /** Closes all windows as a person does; what was edited is saved. */
  @Override
  public void close() {
    SwingUtilities.invokeLater(() -> program.windows().forEach(MapWindow::close));
    await(
        "the windows to close",
        () -> {
          leaveUnsaved();
          return program.windows().isEmpty();
        });
    try {
      program.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    if (!guard.violations().isEmpty()) {
      throw new AssertionError(
          "changed off the event thread:\n" + String.join("\n", guard.violations()));
    }
  }

  /** Where it is asked whether to leave without the last edits, they are left. */
  private static void leaveUnsaved() {
    for (Window window : Window.getWindows()) {
      if (window instanceof JDialog dialog
          && dialog.isShowing()
          && Messages.of("leave.title").equals(dialog.getTitle())) {
        first(dialog.getContentPane(), JOptionPane.class)
            .ifPresent(pane -> pane.setValue(Messages.of("leave.lose")));
      }
    }
  }
}
