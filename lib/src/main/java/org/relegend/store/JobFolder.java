package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.store.StoreException.Kind;

/**
 * A bench job's folder on disk: {@code job.json} and {@code photos/}. Opened for editing it is
 * locked, so that a second program gets it for reading only. A job is small, so it is saved whole
 * after every edit and needs no journal: a kill or power cut loses at most the last edit. May be
 * used from several threads.
 */
public final class JobFolder implements AutoCloseable {
  public static final String JOB_FILE = "job.json";
  public static final String LOCK_FILE = "job.lock";
  public static final String PHOTOS = "photos";

  private final Path folder;
  private final Disk disk;
  private final List<String> notices;
  private final @Nullable FolderLock lock;

  /** Digest of job.json as it was last read or written; empty where there was none. */
  private String onDisk;

  /** Digest of what the last save was to write, whether that came to its end or not. */
  private String attempted = "";

  /** Whether job.json is one that can't be read. */
  private boolean damaged;

  private Job job;

  private JobFolder(
      Path folder, Disk disk, Loaded<Job> loaded, @Nullable FolderLock lock, String notice) {
    this.folder = folder;
    this.disk = disk;
    this.lock = lock;
    this.job = loaded.document();
    this.onDisk = loaded.onDisk();
    this.damaged = loaded.damaged();
    this.notices = new ArrayList<>(loaded.notices());
    if (!notice.isEmpty()) {
      notices.add(0, notice);
    }
  }

  /** Whether there is a job in this folder, readable or not. */
  public static boolean isJob(Path folder) {
    Path file = folder.resolve(JOB_FILE);
    return Files.exists(file) || Files.exists(AtomicFile.backup(file));
  }

  /**
   * Opens a job for editing; for reading only where another program has it open or the folder can't
   * be written to, which {@link #notices} tells.
   *
   * @throws StoreException where there is no job that can be read
   */
  public static JobFolder open(Path folder) throws StoreException {
    return open(folder, Disk.REAL);
  }

  static JobFolder open(Path folder, Disk disk) throws StoreException {
    Loaded.requireFolder(folder, "job");
    Optional<FolderLock> lock;
    try {
      lock = FolderLock.take(folder, LOCK_FILE);
    } catch (IOException e) {
      return reading(
          folder, "This folder can't be written to: the job is opened for reading only.");
    }
    if (lock.isEmpty()) {
      return reading(
          folder, "Another window or program has this job open: it is opened for reading only.");
    }
    try {
      Loaded<Job> loaded = Loaded.from(folder, JobFormat.FORMAT);
      return new JobFolder(folder, disk, loaded, lock.get(), "");
    } catch (StoreException e) {
      try {
        lock.get().close();
      } catch (StoreException suppressed) {
        e.addSuppressed(suppressed);
      }
      throw e;
    }
  }

  /**
   * Opens a job for reading only, without a lock and without writing anything.
   *
   * @throws StoreException where there is no job that can be read
   */
  public static JobFolder openReadOnly(Path folder) throws StoreException {
    Loaded.requireFolder(folder, "job");
    return reading(folder, "");
  }

  private static JobFolder reading(Path folder, String notice) throws StoreException {
    Loaded<Job> loaded = Loaded.from(folder, JobFormat.FORMAT);
    return new JobFolder(folder, Disk.REAL, loaded, null, notice);
  }

  /**
   * Makes a folder with a job in it and opens it for editing. The folder may be there already, as
   * long as neither a job nor a map is in it: the two are never mixed.
   *
   * @throws StoreException where it can't be; what was made of it is taken away again
   */
  public static JobFolder create(Path folder, Job job) throws StoreException {
    return create(folder, job, Disk.REAL);
  }

  static JobFolder create(Path folder, Job job, Disk disk) throws StoreException {
    if (isJob(folder)) {
      throw new StoreException(
          Kind.EXISTS, folder, "there is a job in this folder already. Choose another folder.");
    }
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
    Path file = folder.resolve(JOB_FILE);
    NewFolder made = NewFolder.make(folder);
    try {
      new AtomicFile(disk, file).replace(JobFormat.write(job), null);
      return open(folder, disk);
    } catch (StoreException e) {
      made.takeBack(e, file, folder.resolve(LOCK_FILE));
      throw e;
    }
  }

  public Path path() {
    return folder;
  }

  /** The job as it was opened or last saved. */
  public synchronized Job job() {
    return job;
  }

  /** What the user should know of how the job was opened, one sentence each. */
  public synchronized List<String> notices() {
    return List.copyOf(notices);
  }

  /** Whether {@link #save} is refused here. */
  public boolean readOnly() {
    return lock == null;
  }

  /** Where the folder of the map was found last, as the job has it; it may be gone since. */
  public Path mapPlace() {
    return folder.resolve(job().map().place().replace('/', java.io.File.separatorChar)).normalize();
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
    return folder.resolve(photo.photo().file());
  }

  /**
   * Writes the job over the old one, which is kept as {@code job.json.bak}. Returns when all of it
   * is on the disk; a kill at any instant before leaves the old job or the new one.
   *
   * @throws StoreException where it can't be written, was changed by others since, or is open for
   *     reading only; the file is as before then
   */
  public synchronized void save(Job changed) throws StoreException {
    Path target = folder.resolve(JOB_FILE);
    if (readOnly()) {
      throw new StoreException(
          Kind.READ_ONLY,
          target,
          "the job is open for reading only, and nothing was saved. Close it elsewhere and open it"
              + " again.");
    }
    Optional<byte[]> old = Loaded.bytes(target);
    String found = old.map(Digests::sha256).orElse(onDisk);
    if (!found.equals(onDisk) && !found.equals(attempted)) {
      throw new StoreException(
          Kind.CHANGED_ON_DISK,
          target,
          "the file was changed by another program since it was opened, and was not overwritten."
              + " Save your job in another folder.");
    }
    byte[] bytes = JobFormat.write(changed);
    if (damaged && old.isPresent()) {
      AtomicFile.setAside(disk, target, ".damaged-");
      old = Optional.empty();
    }
    damaged = false;
    attempted = Digests.sha256(bytes);
    new AtomicFile(disk, target).replace(bytes, old.orElse(null));
    onDisk = attempted;
    job = changed;
  }

  /** Frees the lock. */
  @Override
  public void close() throws StoreException {
    if (lock != null) {
      lock.close();
    }
  }
}
