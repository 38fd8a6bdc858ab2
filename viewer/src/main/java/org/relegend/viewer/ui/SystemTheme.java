package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Asks the system whether windows are to be dark. Not on the event thread: it starts a program. */
final class SystemTheme {
  private static final int PATIENCE = 2;

  private SystemTheme() {}

  /** Light, where the system can't be asked. */
  static boolean isDark() {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    if (system.contains("mac")) {
      return answer("defaults", "read", "-g", "AppleInterfaceStyle").contains("dark");
    }
    if (system.contains("windows")) {
      String key = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";
      return answer("reg", "query", key, "/v", "AppsUseLightTheme").contains("0x0");
    }
    return answer("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")
        .contains("prefer-dark");
  }

  /** What the program says, in small letters; nothing, where it can't be run or takes too long. */
  private static String answer(String... command) {
    try {
      Process process = new ProcessBuilder(List.of(command)).redirectErrorStream(true).start();
      process.getOutputStream().close();
      if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
        process.destroy();
        return "";
      }
      byte[] stated = process.getInputStream().readAllBytes();
      return new String(stated, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT);
    } catch (IOException absent) {
      return "";
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return "";
    }
  }
}
