package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Job;
import org.relegend.bench.Reading;
import org.relegend.map.Subject;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.view.ViewState;

/**
 * Practice, story 12: the viewer is killed in the middle of an entry, and opened again its last
 * saved reading, the zoom and the open hypothesis are there.
 */
class ResumeIT {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));

  @TempDir private Path folder;

  private Process killed(Path job) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xlog:disable",
            "-Djava.awt.headless=false",
            "-Dsun.java2d.uiScale=1",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            KilledBench.class.getName(),
            job.toString(),
            folder.resolve("cache").toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Test
  void killedInTheMiddleOfAnEntry_oneIsWhereOneWas() throws Exception {
    Path map = DemoCopy.into(folder);
    Path job = Files.createDirectories(folder.resolve("job"));
    Files.copy(ROOT.resolve("demo-data/job/job.json"), job.resolve("job.json"));
    Process viewer = killed(job);
    String[] at;
    try (BufferedReader result =
        new BufferedReader(
            new InputStreamReader(viewer.getInputStream(), StandardCharsets.UTF_8))) {
      at = String.valueOf(result.readLine()).split(" ");
      assertThat(at).hasSize(4);
    } finally {
      viewer.destroyForcibly();
      assertThat(viewer.waitFor(30, TimeUnit.SECONDS)).isTrue();
    }
    try (Technician again =
        Technician.start(Optional.of(job), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      awaitChosen(again);
      Job found = again.session().room(OpenJob.class).job().orElseThrow();
      Reading last = found.readings().at(found.readings().size() - 1);
      assertThat(last.at()).isEqualTo(Subject.parse("net:A_ATT"));
      assertThat(last.value()).isEqualTo(5.37);
      assertThat(found.hypotheses().stream())
          .anyMatch(one -> one.result() == Hypothesis.Result.OPEN && one.what().equals("leaks"));
      ViewState view = Technician.onEdt(() -> again.panel().photo().canvas().view()).orElseThrow();
      assertThat(view.scale()).isCloseTo(Double.parseDouble(at[3]), within(1e-9));
      assertThat(view.centre().x()).isCloseTo(Double.parseDouble(at[1]), within(1.0));
      assertThat(view.centre().y()).isCloseTo(Double.parseDouble(at[2]), within(1.0));
      assertThat(again.session().selection().cursor()).isEqualTo(1);
      assertThat(again.named(RowListPanel.class, "hypotheses-area").isShowing()).isTrue();
      JComponent banner = again.named(Banner.class, "banner");
      assertThat(banner.isShowing()).isTrue();
      assertThat(banner.getAccessibleContext().getAccessibleName()).contains("C102 leaks");
      again.shoot("resumed");
    }
    assertThat(files(map)).as("nothing of it in the map").noneMatch(name -> name.contains("desk"));
    try (Technician alone =
        Technician.start(Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      awaitChosen(alone);
      assertThat(alone.named(Banner.class, "banner").getAccessibleContext().getAccessibleName())
          .contains(job.toString());
    }
  }

  private static void awaitChosen(Technician tech) {
    tech.await(
        "what was chosen",
        () -> tech.session().selection().subject().equals(Optional.of(Subject.parse("net:A_ATT"))));
  }

  private static List<String> files(Path map) throws IOException {
    try (Stream<Path> all = Files.walk(map)) {
      return all.map(file -> String.valueOf(file.getFileName())).toList();
    }
  }
}
