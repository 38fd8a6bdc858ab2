package org.relegend.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where the system wants what programs can make anew at any time, for the user who runs this one.
 * Linux: the XDG Base Directory Specification (version 0.8), {@code $XDG_CACHE_HOME}, else {@code
 * ~/.cache}, and a path that isn't absolute is ignored. Windows: the known folder LocalAppData.
 * macOS: {@code Library/Caches} in the home folder (Apple, File System Programming Guide).
 */
public final class CacheFolder {
  private CacheFolder() {}

  /** The folder for this program and user, which may not be there yet. */
  public static Path ofUser() {
    return of(
        System.getProperty("os.name", ""),
        Path.of(System.getProperty("user.home", ".")),
        System::getenv);
  }

  static Path of(String system, Path home, Function<String, @Nullable String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return absolute(environment.apply("LOCALAPPDATA"))
          .orElse(home.resolve("AppData").resolve("Local"))
          .resolve("Relegend");
    }
    if (name.startsWith("mac")) {
      return home.resolve("Library").resolve("Caches").resolve("Relegend");
    }
    return absolute(environment.apply("XDG_CACHE_HOME"))
        .orElse(home.resolve(".cache"))
        .resolve("relegend");
  }

  private static Optional<Path> absolute(@Nullable String path) {
    try {
      return Optional.ofNullable(path).map(Path::of).filter(Path::isAbsolute);
    } catch (InvalidPathException unusable) {
      return Optional.empty();
    }
  }
}
