package org.relegend.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demo folder as it lies in the repository. */
final class Committed {
  static final Path FOLDER =
      Path.of(System.getProperty("relegend.root", "..")).resolve("demo-data");

  private Committed() {}

  static byte[] file(String name) throws IOException {
    return Files.readAllBytes(FOLDER.resolve(name));
  }
}
