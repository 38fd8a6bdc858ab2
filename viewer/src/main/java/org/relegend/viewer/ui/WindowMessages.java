package org.relegend.viewer.ui;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import org.relegend.map.EditRefusedException;
import org.relegend.scan.PictureException;
import org.relegend.share.ShareException;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Messages;

/** What is said in a window: one clear message, or a line of the banner. */
final class WindowMessages {
  private final JFrame window;
  private final Banner banner;

  WindowMessages(JFrame window, Banner banner) {
    this.window = window;
    this.banner = banner;
  }

  /** Says what one should know of how a map was opened. */
  void tell(List<String> notices) {
    tell(notices, List.of());
  }

  void tell(List<String> notices, List<Banner.Choice> choices) {
    if (!notices.isEmpty()) {
      List<Banner.Choice> all = new ArrayList<>(choices);
      all.add(new Banner.Choice(Messages.of("banner.dismiss"), () -> {}));
      banner.say(String.join("  ", notices), all);
    }
  }

  /** What was typed as a path; where it can be none, that is said. */
  Optional<Path> path(String typed) {
    try {
      return Optional.of(Path.of(typed));
    } catch (InvalidPathException odd) {
      say(Messages.of("file.nopath", typed, String.valueOf(odd.getReason())));
      return Optional.empty();
    }
  }

  /** One clear message; nothing else has happened. */
  void fail(Throwable problem) {
    boolean stated =
        problem instanceof StoreException
            || problem instanceof PictureException
            || problem instanceof ShareException
            || problem instanceof EditRefusedException;
    say(
        stated
            ? String.valueOf(problem.getMessage())
            : Messages.of("error.unexpected", problem.toString()));
  }

  void say(String message) {
    JOptionPane.showMessageDialog(
        window, words(message), Messages.of("error.title"), JOptionPane.ERROR_MESSAGE);
  }

  /** In lines of a width that can be read. */
  static JLabel words(String message) {
    return new JLabel("<html><body style='width:420px'>" + escape(message));
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }
}
