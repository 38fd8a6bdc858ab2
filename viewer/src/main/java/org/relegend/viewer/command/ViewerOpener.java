package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the viewer; the commands themselves know no window. */
@FunctionalInterface
public interface ViewerOpener {
  /**
   * Opens the viewer and returns when its last window is closed.
   *
   * @param folder of a map or a job; without one the viewer shows what was open last, or offers the
   *     demo
   * @return the exit code
   */
  int open(Optional<Path> folder);
}
