package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;

/**
 * Kills a program that is saving, 200 times at random moments. The moments come from a seed; where
 * in its work the other program is then, no seed tells, which is the point.
 */
class KillTest {
  private static final int KILLS = 200;
  private static final int AT_ONCE = 2;

  /** Saves take a few milliseconds each, so this spreads over several of them. */
  private static final long LONGEST_WAIT_NANOS = 20_000_000;

  @TempDir Path temp;

  @Test
  void killedWhileSaving_theMapIsTheOldOrTheNewOne() throws Exception {
    Random random = new Random(20260304);
    List<BoardMap> versions = List.of(KilledSaver.version(0), KilledSaver.version(1));
    int[] found = new int[2];
    List<Path> folders = new ArrayList<>();
    for (int i = 0; i < AT_ONCE; i++) {
      Path folder = temp.resolve("map-" + i);
      MapFolder.create(folder, versions.get(0)).close();
      folders.add(folder);
    }
    for (int kills = 0; kills < KILLS; kills += AT_ONCE) {
      killAll(folders, random);
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
    assertThat(found[0] + found[1]).isEqualTo(KILLS);
    assertThat(found[0]).as("both were found, so kills fell while saving").isPositive();
    assertThat(found[1]).isPositive();
  }

  /** Starts one saver a folder and, once each has begun to save, kills it after a random time. */
  private static void killAll(List<Path> folders, Random random)
      throws IOException, InterruptedException {
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

  private static Process start(Path folder) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-Xmx128m",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            KilledSaver.class.getName(),
            folder.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
