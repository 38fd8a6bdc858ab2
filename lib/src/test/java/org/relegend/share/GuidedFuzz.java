package org.relegend.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Packs and maps made up by a fuzzer that watches which code they reach: Jazzer (Apache-2.0, from
 * Maven Central), which is no part of the build. {@code main} writes what it begins with, into a
 * folder. Then, from the root, with the classes and test classes of {@code lib} and its libraries
 * (as {@code mvn dependency:build-classpath} tells them) in CP:
 *
 * <pre>
 * mvn dependency:get -Dartifact=com.code-intelligence:jazzer:0.22.1
 * java -cp CP org.relegend.share.GuidedFuzz seeds
 * java -cp JAZZER:JAZZER-API:CP com.code_intelligence.jazzer.Jazzer \
 *   --target_class=org.relegend.share.GuidedFuzz \
 *   --instrumentation_includes=org.relegend.share.**:org.relegend.store.**:org.relegend.scan.** \
 *   -max_total_time=600 -max_len=65536 seeds
 * </pre>
 */
public final class GuidedFuzz {
  private GuidedFuzz() {}

  /** Writes a map and a pack to begin with. */
  public static void main(String[] arguments) throws IOException {
    Path seeds = Files.createDirectories(Path.of(arguments.length == 0 ? "seeds" : arguments[0]));
    BoardMap map = BoardMapSamples.generated(1, 2, 2);
    Files.write(seeds.resolve("map"), MapFormat.write(map));
    Files.write(seeds.resolve("pack"), Zips.of(Zips.pack(map, java.util.Map.of())));
  }

  /**
   * One try; the name is the fuzzer's.
   *
   * @throws AssertionError where anything but a declared error comes of it, or something is left
   */
  public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
    Path folder = Files.createTempDirectory("relegend-guided");
    try {
      Path file = folder.resolve("fuzz.relegend-pack");
      boolean isMap = bytes.length > 0 && bytes[0] == '{';
      boolean taken = isMap ? isRead(bytes, file) : isTaken(bytes, file, folder.resolve("out"));
      try (Stream<Path> left = Files.list(folder)) {
        long most = isMap ? 0 : taken ? 2 : 1;
        if (left.count() > most) {
          throw new AssertionError("something was left, or written elsewhere");
        }
      }
    } finally {
      StagedFolder.delete(folder);
    }
  }

  private static boolean isRead(byte[] bytes, Path file) {
    try {
      MapFormat.read(bytes, file);
      return true;
    } catch (StoreException declared) {
      return false;
    }
  }

  private static boolean isTaken(byte[] bytes, Path file, Path out) throws IOException {
    Files.write(file, bytes);
    try (PackReader pack = PackReader.open(file)) {
      pack.into(out);
      return true;
    } catch (ShareException | StoreException declared) {
      return false;
    }
  }
}
