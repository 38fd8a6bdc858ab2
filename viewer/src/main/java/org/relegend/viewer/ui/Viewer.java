package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** The program with its windows, as it is started. */
public final class Viewer {
  private Viewer() {}

  /**
   * Shows nothing yet.
   *
   * @param cacheFolder where reduced copies of pictures are kept between runs
   * @param demo the folder of the demo map, if there is one beside the program
   */
  public static Program of(
      ViewerPreferences settings, Path cacheFolder, Optional<Path> demo, Clock clock) {
    return new Program(settings, cacheFolder, demo, clock, ViewerWindow::new);
  }
}
