package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of the demo map that a test may work on. */
final class DemoCopy {
  private static final Path DEMO =
      Path.of(System.getProperty("relegend.root", ".."), "demo-data", "map");

  private DemoCopy() {}

  static Path into(Path folder) throws IOException {
    Path map = folder.resolve("map");
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.toList()) {
        Path target = map.resolve(DEMO.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
    return map;
  }
}
