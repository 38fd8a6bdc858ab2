package org.relegend.viewer.tile;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.imageio.ImageIO;
import org.relegend.map.Picture;

/**
 * Opens pictures for viewing. One for the whole program: it holds the threads that read, the memory
 * that tiles may take, and the folder on disk where reduced copies are kept.
 */
public final class PictureLibrary implements AutoCloseable {
  private final Executor handOver;
  private final ExecutorService readers;

  /**
   * Starts the reading threads.
   *
   * @param cacheFolder where reduced copies are kept between runs; made when first needed
   * @param memoryBytes what all tiles together may take
   * @param handOver where listeners are called: {@code SwingUtilities::invokeLater}
   */
  public PictureLibrary(Path cacheFolder, long memoryBytes, Executor handOver) {
    this.handOver = handOver;
    this.readers =
        Executors.newFixedThreadPool(
            2,
            work -> {
              Thread thread = new Thread(work, "tiles");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * A picture of a map. Never waits: what can't be read shows in its {@link PictureSource#status}.
   *
   * @param folder the map's or job's folder
   */
  public PictureSource open(Picture picture, Path folder) {
    Whole source = new Whole(picture.width(), picture.height());
    Path file = folder.resolve(picture.file());
    readers.execute(() -> source.read(file));
    return source;
  }

  @Override
  public void close() {
    readers.shutdownNow();
  }

  /** A picture that is read whole. */
  private final class Whole implements PictureSource {
    private final double width;
    private final double height;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile PictureStatus status = new PictureStatus.Loading(0);
    private volatile PictureSource inner;

    Whole(double width, double height) {
      this.width = width;
      this.height = height;
      this.inner = new MemorySource(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
    }

    void read(Path file) {
      try {
        BufferedImage image = ImageIO.read(file.toFile());
        if (image == null) {
          status = new PictureStatus.Failed(file + " holds no picture.");
        } else {
          inner = new MemorySource(image);
          status = new PictureStatus.Ready();
        }
      } catch (IOException problem) {
        status = new PictureStatus.Failed(file + " can't be read: " + problem.getMessage());
      }
      handOver.execute(() -> listeners.forEach(Runnable::run));
    }

    @Override
    public double width() {
      return width;
    }

    @Override
    public double height() {
      return height;
    }

    @Override
    public int finestLevel() {
      return 0;
    }

    @Override
    public int coarsestLevel() {
      return 0;
    }

    @Override
    public double actualScale() {
      return 1;
    }

    @Override
    public PictureStatus status() {
      return status;
    }

    @Override
    public TileAnswer tile(TileKey key) {
      return status instanceof PictureStatus.Ready ? inner.tile(key) : new TileAnswer.Pending();
    }

    @Override
    public void want(Object viewer, List<TileKey> tiles) {}

    @Override
    public void addListener(Runnable listener) {
      listeners.add(listener);
    }

    @Override
    public void removeListener(Runnable listener) {
      listeners.remove(listener);
    }

    @Override
    public void stop() {}
  }
}
