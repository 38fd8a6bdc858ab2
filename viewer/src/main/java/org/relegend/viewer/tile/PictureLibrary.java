package org.relegend.viewer.tile;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.relegend.map.Page;
import org.relegend.map.Picture;

/**
 * Opens pictures for viewing. One for the whole program: it holds the threads that read, the memory
 * that tiles may take, and the folder on disk where reduced copies are kept.
 */
public final class PictureLibrary implements AutoCloseable {
  private static final int SECONDS_TO_END = 5;

  /** What kept copies may take on disk, in bytes. */
  private static final long DISK_BYTES = 4L << 30;

  /**
   * What sources work with.
   *
   * @param first reads the first picture of photos, one after the other
   * @param builder makes levels, one photo at a time
   * @param tilers code and read tiles
   */
  record Workshop(
      TileCache cache,
      LevelFolder folder,
      ExecutorService first,
      ExecutorService builder,
      ExecutorService tilers,
      Executor handOver) {}

  private final Workshop workshop;
  private final Map<Path, OpenPdf> documents = new HashMap<>();
  private final Map<Name, PictureSource> sources = new HashMap<>();

  /** One picture is one source, however often it is opened. */
  private record Name(Path file, int page, String sha256) {}

  /**
   * Starts no thread yet.
   *
   * @param cacheFolder where reduced copies are kept between runs; made when first needed
   * @param memoryBytes what all tiles together may take; a full screen takes some 30 MB
   * @param handOver where listeners are called: {@code SwingUtilities::invokeLater}
   */
  public PictureLibrary(Path cacheFolder, long memoryBytes, Executor handOver) {
    int tilers = Math.max(2, Runtime.getRuntime().availableProcessors() - 1);
    this.workshop =
        new Workshop(
            new TileCache(memoryBytes),
            new LevelFolder(cacheFolder.resolve("levels"), DISK_BYTES, Clock.systemUTC()),
            threads("first-picture", 1),
            threads("picture-levels", 1),
            threads("tiles", tilers),
            handOver);
    workshop
        .builder()
        .execute(
            () -> {
              try {
                workshop.folder().tidy();
              } catch (IOException inUse) {
                return; // kept copies that can't be deleted now are deleted another time
              }
            });
  }

  /**
   * A picture of a map; the same source each time, unless it failed or was stopped, when it is
   * tried again. Never waits: what can't be read shows in its {@link PictureSource#status}.
   *
   * @param folder the map's or job's folder
   */
  public synchronized PictureSource open(Picture picture, Path folder) {
    Path file = folder.resolve(picture.file()).toAbsolutePath();
    int number = picture instanceof Page page ? page.number() : 0;
    Name name = new Name(file, number, picture.sha256());
    PictureSource known = sources.get(name);
    if (known == null || known.status().isOver()) {
      known = opened(picture, file, number);
      sources.put(name, known);
    }
    return known;
  }

  private PictureSource opened(Picture picture, Path file, int number) {
    if (number > 0 && picture.file().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      return new PageSource(
          document(file), number, picture.sha256(), picture.width(), picture.height(), workshop);
    }
    PhotoSource source =
        new PhotoSource(file, picture.sha256(), picture.width(), picture.height(), workshop);
    source.start();
    return source;
  }

  private OpenPdf document(Path file) {
    return documents.computeIfAbsent(file, path -> new OpenPdf(path, threads("pages", 1)));
  }

  /** Gives back memory and open files, once a map was closed and none of its pictures is shown. */
  public synchronized void release() {
    for (PictureSource source : sources.values()) {
      if (source instanceof PhotoSource photo) {
        photo.close();
      }
      workshop.cache().forget(source);
    }
    sources.clear();
    documents.values().forEach(OpenPdf::close);
    documents.clear();
  }

  @Override
  public void close() {
    workshop.first().shutdownNow();
    workshop.builder().shutdownNow();
    workshop.tilers().shutdownNow();
    release();
  }

  /** Once closed: waits for what was being written to end, some seconds at most. */
  public void awaitEnd() throws InterruptedException {
    for (ExecutorService threads :
        List.of(workshop.first(), workshop.builder(), workshop.tilers())) {
      if (!threads.awaitTermination(SECONDS_TO_END, TimeUnit.SECONDS)) {
        return;
      }
    }
  }

  private static ExecutorService threads(String name, int count) {
    // work handed over while the program closes is of no use to anyone
    return new ThreadPoolExecutor(
        count,
        count,
        1,
        TimeUnit.MINUTES,
        new LinkedBlockingQueue<>(),
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        },
        new ThreadPoolExecutor.DiscardPolicy());
  }
}
