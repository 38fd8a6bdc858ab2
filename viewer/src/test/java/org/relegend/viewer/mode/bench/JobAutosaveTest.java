package org.relegend.viewer.mode.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.JobSamples;
import org.relegend.store.JobFolder;
import org.relegend.viewer.work.TaskRunner;

class JobAutosaveTest {
  @TempDir Path folder;

  /** Something stood in the way of a save, and is gone when the window is closed. */
  @Test
  void whatCouldNotBeSaved_isSavedWhenTheJobIsLetGo() throws Exception {
    JobFolder open = JobFolder.create(folder, JobSamples.blank());
    List<Throwable> failed = new ArrayList<>();
    CountDownLatch tried = new CountDownLatch(1);
    CountDownLatch gone = new CountDownLatch(1);
    try (TaskRunner jobs = new TaskRunner("test", 1, Runnable::run)) {
      JobAutosave keeping =
          new JobAutosave(
              open,
              jobs,
              problem -> {
                failed.add(problem);
                tried.countDown();
              });
      Path inTheWay = Files.createDirectory(folder.resolve("job.json.tmp"));
      Files.createFile(inTheWay.resolve("something"));
      Job changed =
          new JobEdit.ChangeInstrument(Instrument.DIGITAL_METER).applyTo(JobSamples.blank());
      keeping.keep(changed);
      assertThat(tried.await(1, TimeUnit.MINUTES)).isTrue();
      assertThat(JobFolder.openReadOnly(folder).job()).isEqualTo(JobSamples.blank());

      Files.delete(inTheWay.resolve("something"));
      Files.delete(inTheWay);
      keeping.release(gone::countDown);
      assertThat(gone.await(1, TimeUnit.MINUTES)).isTrue();
      assertThat(failed).hasSize(1);
      assertThat(JobFolder.openReadOnly(folder).job()).isEqualTo(changed);
    }
  }
}
