package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFrame;
import org.relegend.store.JobFolder;
import org.relegend.store.MapFolder;
import org.relegend.viewer.control.Actions;

/** A window as those see it who open, fill and close maps in it. */
abstract class MapWindow extends JFrame {
  private final Banner banner = new Banner();
  private final transient WindowMessages messages = new WindowMessages(this, banner);

  MapWindow(String title) {
    super(title);
  }

  final Banner banner() {
    return banner;
  }

  /** What is said in it. */
  final WindowMessages messages() {
    return messages;
  }

  abstract Actions acts();

  /** The map that is open. */
  abstract Optional<OpenMap> sitting();

  /** Opens a map in the place of what the window shows now, which is saved first. */
  final void open(Path folder) {
    openThen(folder, () -> {});
  }

  /** As {@link #open}, and something to do once the map is there. */
  abstract void openThen(Path folder, Runnable then);

  /** Unpacks a pack, or merges it with what is open, as the technician says. */
  abstract void takePack(Path file);

  /** Saves what is open, which stays open; then goes on. */
  final void saved(Runnable then) {
    sitting().ifPresentOrElse(open -> open.keeping().flush(then), then);
  }

  /** Saves what is open and lets go of it, then goes on. */
  abstract void leave(Runnable then);

  /** Lays an opened map into the window, without a job. */
  final void sit(MapFolder folder) {
    sit(new OpenedFolder(folder, Optional.empty(), SavedView.NOWHERE));
  }

  /** Lays an opened map into the window, and its job over it. */
  abstract void sit(OpenedFolder opened);

  /** Lays a job that was just made over the map that is open. */
  abstract void layOver(JobFolder made);

  /** Shows the page that says what to do next. */
  abstract void showStart();

  /** Saves, closes, and ends the program with the last window. */
  abstract void close();
}
