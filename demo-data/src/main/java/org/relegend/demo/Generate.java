package org.relegend.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * Writes the demo folder: pages, photos, the map over them, a job, and where everything truly lies.
 */
public final class Generate {
  private Generate() {}

  /** Takes the folder to write into; files that stand there are written over. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments.length > 0 ? arguments[0] : "demo-data");
    for (Map.Entry<String, byte[]> file : DemoFolder.files().entrySet()) {
      Path target = folder.resolve(file.getKey());
      Files.createDirectories(target.resolveSibling(""));
      Files.write(target, file.getValue());
    }
  }
}
