package org.relegend.store;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.store.StoreException.Kind;

/**
 * A bench job's folder on disk: {@code job.json} and {@code photos/}. A job is small, so it is
 * saved whole after every edit and needs no journal: a kill or power cut loses at most the last
 * edit.
 */
public final class JobFolder extends DocumentFolder<Job> {
  public static final String JOB_FILE = "job.json";
  public static final String LOCK_FILE = "job.lock";
  public static final String PHOTOS = "photos";

  private JobFolder(
      Path folder,
      DiskOperations disk,
      LoadedDocument<Job> loaded,
      @Nullable FolderLock lock,
      String reason) {
    super(folder, disk, JobFormat.FORMAT, loaded, loaded.document(), lock, notices(loaded, reason));
  }

  /** Whether there is a job in this folder, readable or not. */
  public static boolean isJob(Path folder) {
    return holds(folder, JOB_FILE);
  }

  /**
   * Opens a job for editing; for reading only where another program has it open or the folder can't
   * be written to, which {@link #notices} tells.
   *
   * @throws StoreException where there is no job that can be read
   */
  public static JobFolder open(Path folder) throws StoreException {
    return open(folder, DiskOperations.REAL);
  }

  static JobFolder open(Path folder, DiskOperations disk) throws StoreException {
    return open(
        folder,
        "job",
        LOCK_FILE,
        lock ->
            new JobFolder(folder, disk, LoadedDocument.from(folder, JobFormat.FORMAT), lock, ""),
        reason -> reading(folder, reason));
  }

  /**
   * Opens a job for reading only, without a lock and without writing anything.
   *
   * @throws StoreException where there is no job that can be read
   */
  public static JobFolder openReadOnly(Path folder) throws StoreException {
    LoadedDocument.requireFolder(folder, "job");
    return reading(folder, "");
  }

  private static JobFolder reading(Path folder, String reason) throws StoreException {
    LoadedDocument<Job> loaded = LoadedDocument.from(folder, JobFormat.FORMAT);
    return new JobFolder(folder, DiskOperations.REAL, loaded, null, reason);
  }

  /**
   * Makes a folder with a job in it and opens it for editing. The folder may be there already, as
   * long as neither a job nor a map is in it: the two are never mixed.
   *
   * @throws StoreException where it can't be; what was made of it is taken away again
   */
  public static JobFolder create(Path folder, Job job) throws StoreException {
    return create(folder, job, DiskOperations.REAL);
  }

  static JobFolder create(Path folder, Job job, DiskOperations disk) throws StoreException {
    if (!isJob(folder)) {
      requireNoMap(folder);
    }
    return create(folder, JobFormat.FORMAT, job, disk, LOCK_FILE, made -> open(made, disk));
  }

  /** Maps are shared and jobs are not, so that no job may lie in a map's folder. */
  private static void requireNoMap(Path folder) throws StoreException {
    if (Files.exists(folder.resolve(MapFolder.MAP_FILE))) {
      throw new StoreException(
          Kind.EXISTS,
          folder,
          "there is a board map in this folder, and a job is never kept in one, since maps are"
              + " shared. Choose another folder.");
    }
    for (Path above = folder.toAbsolutePath().normalize().getParent();
        above != null;
        above = above.getParent()) {
      if (Files.exists(above.resolve(MapFolder.MAP_FILE))) {
        throw new StoreException(
            Kind.EXISTS,
            folder,
            "it lies in the folder of a board map, %s, and a job is never kept in one, since maps"
                    .formatted(above)
                + " are shared. Choose a folder beside it.");
      }
    }
  }

  /** The job as it was opened or last saved. */
  public Job job() {
    return document();
  }

  /** Where the folder of the map was found last, as the job has it; it may be gone since. */
  public Path mapPlace() {
    return path().resolve(job().map().place().replace('/', java.io.File.separatorChar)).normalize();
  }

  /**
   * The map folder's place as a job keeps it: from the job's own folder where one leads to the
   * other, so that both can be moved together.
   */
  public static String place(Path job, Path map) {
    Path from = job.toAbsolutePath().normalize();
    Path to = map.toAbsolutePath().normalize();
    return from.getRoot() != null && from.getRoot().equals(to.getRoot())
        ? from.relativize(to).toString().replace(java.io.File.separatorChar, '/')
        : to.toString();
  }

  /** Where the file of one of the job's photos is. */
  public Path fileOf(JobPhoto photo) {
    return path().resolve(photo.photo().file());
  }

  @Override
  String remedyForChanged() {
    return "Save your job in another folder.";
  }
}
