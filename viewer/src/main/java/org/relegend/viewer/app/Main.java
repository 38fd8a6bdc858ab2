package org.relegend.viewer.app;

import java.awt.GraphicsEnvironment;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.relegend.store.CacheFolder;
import org.relegend.viewer.command.Commands;
import org.relegend.viewer.command.ExitCode;
import org.relegend.viewer.command.ViewerOpener;
import org.relegend.viewer.ui.Program;
import org.relegend.viewer.ui.Viewer;
import org.relegend.viewer.ui.ViewerPreferences;

/** The one entry point of the runnable jar: the viewer, or one command. */
public final class Main {
  /** Libraries tell of fonts they substitute and the like; only what stops them is of interest. */
  private static final Logger LIBRARIES = Logger.getLogger("org.apache");

  private Main() {}

  public static void main(String[] arguments) {
    LIBRARIES.setLevel(Level.OFF);
    ViewerOpener opener = Main::open;
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
    System.exit(Commands.run(withOpen(List.of(arguments)), out, err, opener));
  }

  /** No argument, or a folder alone, is short for the command {@code open}. */
  private static List<String> withOpen(List<String> arguments) {
    if (arguments.isEmpty()) {
      return List.of("open");
    }
    boolean folder = arguments.size() == 1 && Files.isDirectory(Path.of(arguments.get(0)));
    return folder ? List.of("open", arguments.get(0)) : arguments;
  }

  private static int open(Optional<Path> folder) {
    if (GraphicsEnvironment.isHeadless()) {
      System.err.println(
          "relegend: there is no display to open a window on; the commands work without one"
              + " (relegend --help)");
      return ExitCode.REFUSED;
    }
    Program program =
        Viewer.of(
            ViewerPreferences.ofUser(), CacheFolder.ofUser(), DemoFolder.find(), Clock.systemUTC());
    program.start(folder);
    try {
      program.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.OK;
  }
}
