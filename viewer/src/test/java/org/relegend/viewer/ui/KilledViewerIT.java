package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** A viewer that is killed right after an edit loses nothing that was made before it. */
class KilledViewerIT {
  private static final String[] PARTS = {"R101", "R102", "C102"};

  @TempDir private Path folder;

  @Test
  void killedAfterTheLastClick_theEditsAreThereOnRestart() throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), false);
    Process viewer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:disable",
                "-Djava.awt.headless=false",
                "-Dsun.java2d.uiScale=1",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                KilledViewer.class.getName(),
                map.toString(),
                folder.resolve("cache").toString(),
                PARTS[0],
                PARTS[1],
                PARTS[2])
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader result =
        new BufferedReader(
            new InputStreamReader(viewer.getInputStream(), StandardCharsets.UTF_8))) {
      for (String part : PARTS) {
        assertThat(result.readLine()).isEqualTo("placed " + part);
      }
      // the journal's line is being written off the event thread: this is the edit that may be lost
    } finally {
      viewer.destroyForcibly();
      assertThat(viewer.waitFor(30, TimeUnit.SECONDS)).isTrue();
    }
    try (Technician again =
        Technician.start(Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      for (int i = 0; i < PARTS.length - 1; i++) {
        assertThat(
                again
                    .session()
                    .map()
                    .placements()
                    .has(new Placement.Key(DrawnBoard.TOP, Subject.parse(PARTS[i]), 1)))
            .as(PARTS[i] + " is still placed")
            .isTrue();
      }
    }
  }
}
