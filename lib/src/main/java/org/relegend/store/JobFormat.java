package org.relegend.store;

import java.nio.file.Path;
import org.relegend.bench.Job;

/** A bench job as the text of job.json, in the way of {@link MapFormat}. */
public final class JobFormat {
  /** The form that is written. */
  public static final int CURRENT = 1;

  static final DocumentFormat<Job> FORMAT =
      new DocumentFormat<>("bench job", "job", JobFolder.JOB_FILE, CURRENT, JobShapes.JOB);

  private JobFormat() {}

  /** The job as the bytes of its file. */
  public static byte[] write(Job job) {
    return FORMAT.write(job);
  }

  /** The JSON Schema (2020-12) of the current form, as text. */
  public static String schema() {
    return DocumentFormat.schema("job.schema.json");
  }

  /**
   * Reads a job. What refers to something that isn't in the map is read as it is.
   *
   * @param path where the bytes are from, for messages
   * @throws StoreException where this is no job, or one of a newer form
   */
  public static Job read(byte[] bytes, Path path) throws StoreException {
    return FORMAT.read(bytes, path);
  }
}
