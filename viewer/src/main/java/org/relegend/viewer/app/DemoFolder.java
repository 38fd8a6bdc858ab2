package org.relegend.viewer.app;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the demo map. It isn't packed into the jar, whose pictures would make it many times as
 * large, but lies beside it: in a release next to the jar, in the source two folders above.
 */
final class DemoFolder {
  private static final Path MAP = Path.of("demo-data", "map");

  private DemoFolder() {}

  static Optional<Path> find() {
    return find(program());
  }

  /**
   * Looks in the places where it may be.
   *
   * @param program the jar, or the folder of classes
   */
  static Optional<Path> find(Path program) {
    List<Path> places = new ArrayList<>();
    Path parent = program.getParent();
    for (int i = 0; i < 3 && parent != null; i++) {
      places.add(parent.resolve(MAP));
      parent = parent.getParent();
    }
    places.add(MAP.toAbsolutePath());
    return places.stream().filter(place -> Files.exists(place.resolve("map.json"))).findFirst();
  }

  private static Path program() {
    try {
      return Path.of(DemoFolder.class.getProtectionDomain().getCodeSource().getLocation().toURI())
          .toAbsolutePath();
    } catch (URISyntaxException odd) {
      return MAP.toAbsolutePath();
    }
  }
}
