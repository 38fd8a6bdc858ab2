package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import org.relegend.viewer.tile.PictureLibrary;
import org.relegend.viewer.work.OwnerThread;
import org.relegend.viewer.work.TaskRunner;

/** What all windows share: pictures, background jobs, settings, colours; ends with the last one. */
public final class Program {
  /** Share of the memory that Java may take which pictures may fill. */
  private static final double FOR_PICTURES = 0.4;

  private final Function<Program, MapWindow> maker;
  private final ViewerPreferences settings;
  private final Clock clock;
  private final Optional<Path> demo;
  private final Path notes;
  private final PictureLibrary library;
  private final TaskRunner jobs = new TaskRunner("work", 2, SwingUtilities::invokeLater);
  private final OwnerThread owner =
      OwnerThread.of("the event thread", SwingUtilities::isEventDispatchThread);
  private final List<MapWindow> windows = new ArrayList<>();
  private final CountDownLatch ended = new CountDownLatch(1);
  private boolean systemIsDark;

  /**
   * Shows nothing yet.
   *
   * @param cacheFolder where reduced copies of pictures are kept between runs
   * @param demo the folder of the demo map, if there is one beside the program
   * @param maker makes a window of the program
   */
  Program(
      ViewerPreferences settings,
      Path cacheFolder,
      Optional<Path> demo,
      Clock clock,
      Function<Program, MapWindow> maker) {
    this.maker = maker;
    this.settings = settings;
    this.clock = clock;
    this.demo = demo;
    this.notes = cacheFolder;
    long bytes = (long) (Runtime.getRuntime().maxMemory() * FOR_PICTURES);
    library = new PictureLibrary(cacheFolder, bytes, SwingUtilities::invokeLater);
  }

  /** Opens a first window, on any thread; returns at once. */
  public void start(Optional<Path> folder) {
    boolean dark = SystemTheme.isDark();
    SwingUtilities.invokeLater(
        () -> {
          systemIsDark = dark;
          settings.theme().apply(dark);
          openWindow(folder);
        });
  }

  /** Waits until the last window is closed and nothing is being written any more. */
  public void join() throws InterruptedException {
    ended.await();
    library.awaitEnd();
  }

  /** One more window, on the event thread. */
  void openWindow(Optional<Path> folder) {
    MapWindow window = maker.apply(this);
    windows.add(window);
    window.setVisible(true);
    folder.ifPresent(window::open);
  }

  void closed(MapWindow window) {
    windows.remove(window);
    if (windows.isEmpty()) {
      library.close();
      jobs.close();
      ended.countDown();
    }
  }

  /** All windows that are open. */
  List<MapWindow> windows() {
    return List.copyOf(windows);
  }

  ViewerPreferences settings() {
    return settings;
  }

  /** Where what one may lose without harm is kept between runs. */
  Path notes() {
    return notes;
  }

  Clock clock() {
    return clock;
  }

  Optional<Path> demo() {
    return demo;
  }

  PictureLibrary library() {
    return library;
  }

  TaskRunner jobs() {
    return jobs;
  }

  OwnerThread owner() {
    return owner;
  }

  void setTheme(Theme theme) {
    settings.setTheme(theme);
    theme.apply(systemIsDark);
  }

  /** Asks the system again whether it is dark, as windows do when they come to the front. */
  void followSystem() {
    if (settings.theme() == Theme.SYSTEM) {
      jobs.run(
          "theme",
          watch -> SystemTheme.isDark(),
          dark -> {
            systemIsDark = dark;
            settings.theme().apply(dark);
          },
          problem -> {});
    }
  }
}
