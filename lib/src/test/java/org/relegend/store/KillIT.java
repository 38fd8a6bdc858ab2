package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;

/**
 * Kills a program that is saving, 200 times at random moments. The moments come from a seed; where
 * in its work the other program is then, no seed tells, which is the point.
 */
class KillIT {
  private static final int KILLS = 200;

  /** As many programs run side by side, each on a folder of its own, to save time. */
  private static final int AT_ONCE = 4;

  /** A save takes some milliseconds, so this spreads over several of them. */
  private static final long LONGEST_WAIT_NANOS = 20_000_000;

  /** Folders of classes, or the jar made of them. */
  private static final Pattern OURS = Pattern.compile("classes/?$|relegend-lib[^/\\\\]*\\.jar$");

  @TempDir Path temp;

  /** Of very different length, so that a mixture of the two can't be whole. */
  private final List<BoardMap> versions =
      List.of(BoardMapSamples.generated(1, 10, 2), BoardMapSamples.generated(2, 120, 2));

  private final List<Path> folders = new ArrayList<>();

  @BeforeEach
  void makeMaps() throws StoreException, IOException {
    for (int i = 0; i < AT_ONCE; i++) {
      folders.add(temp.resolve("map-" + i));
      MapFolder.create(folders.get(i), versions.get(0)).close();
    }
    for (int i = 0; i < versions.size(); i++) {
      Files.write(version(i), MapFormat.write(versions.get(i)));
    }
  }

  @Test
  void killedWhileSaving_theMapIsTheOldOrTheNewOne() throws Exception {
    Random random = new Random(20260304);
    int[] found = new int[versions.size()];
    for (int kills = 0; kills < KILLS; kills += AT_ONCE) {
      killAll(random);
      for (Path folder : folders) {
        try (MapFolder opened = MapFolder.open(folder)) {
          assertThat(opened.readOnly()).as("the lock went with its owner").isFalse();
          assertThat(opened.notices()).isEmpty();
          int version = versions.indexOf(opened.map());
          assertThat(version).as("which version was found").isNotNegative();
          found[version]++;
        }
      }
    }
    assertThat(Arrays.stream(found).sum()).isEqualTo(KILLS);
    assertThat(found).as("each was found, so saving went on till the kills").doesNotContain(0);
  }

  /** Starts a saver on each folder and, once it has saved, kills it after a random time. */
  private void killAll(Random random) throws IOException, InterruptedException {
    List<Process> savers = new ArrayList<>();
    try {
      for (Path folder : folders) {
        savers.add(start(folder));
      }
      for (Process saver : savers) {
        assertThat(saver.getInputStream().read()).as("the saver's first save").isEqualTo('s');
        LockSupport.parkNanos((long) (random.nextDouble() * LONGEST_WAIT_NANOS));
        assertThat(saver.isAlive()).isTrue();
        saver.destroyForcibly();
      }
    } finally {
      for (Process saver : savers) {
        assertThat(saver.destroyForcibly().waitFor(30, TimeUnit.SECONDS)).isTrue();
      }
    }
  }

  private Path version(int number) {
    return temp.resolve("version-" + number + ".json");
  }

  private Process start(Path folder) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xmx64m",
            // warnings of the virtual machine would stand between us and the saver's sign
            "-Xlog:disable",
            "-Xlog:all=error:stderr",
            "-cp",
            classPath(),
            KilledSaver.class.getName(),
            folder.toString(),
            version(0).toString(),
            version(1).toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** What the saver needs of this program's own class path: a short one starts sooner. */
  private static String classPath() {
    String all =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return Arrays.stream(all.split(File.pathSeparator))
        .filter(entry -> entry.contains("jackson-core") || OURS.matcher(entry).find())
        .collect(Collectors.joining(File.pathSeparator));
  }
}
