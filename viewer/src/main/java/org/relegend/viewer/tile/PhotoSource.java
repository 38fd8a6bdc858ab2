package org.relegend.viewer.tile;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PhotoRows;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureFormat;
import org.relegend.store.Digests;
import org.relegend.store.StoreException;

/**
 * A photo, or a scan that is an image. At its first opening a coarse picture is read first, then
 * the levels are made and kept on disk; later ones read from there what is looked at.
 */
final class PhotoSource implements PictureSource {
  /** The first picture is at most so many pixels wide and high. */
  private static final int FIRST_SIDE = 2048;

  /** How much of the progress the first picture counts for. */
  private static final double FIRST_SHARE = 0.25;

  private final Path file;
  private final String sha256;
  private final TileGrid grid;
  private final PictureLibrary.Workshop workshop;
  private final ChangeListeners listeners;
  private final TileDemand demand = new TileDemand();

  /** Tiles of the first picture, held until the levels are complete. */
  private final Map<TileKey, BufferedImage> first = new ConcurrentHashMap<>();

  private final Set<TileKey> damaged = ConcurrentHashMap.newKeySet();
  private volatile PictureStatus status = new PictureStatus.InProgress(0);
  private volatile @Nullable LevelFile levels;
  private volatile boolean stopped;

  PhotoSource(
      Path file, String sha256, double width, double height, PictureLibrary.Workshop workshop) {
    this.file = file;
    this.sha256 = sha256;
    this.grid = new TileGrid(width, height, 0);
    this.workshop = workshop;
    this.listeners = new ChangeListeners(workshop.handOver());
  }

  /** Reads in the background. */
  void start() {
    workshop.first().execute(() -> guarded(this::begin));
  }

  private void begin() throws PictureException, IOException {
    Optional<LevelFile> kept = workshop.folder().open(sha256);
    if (kept.isPresent()) {
      levels = kept.get();
      become(new PictureStatus.Ready());
      pump();
      workshop.builder().execute(() -> guarded(this::verify));
      return;
    }
    PhotoFile photo = PhotoFile.probe(file);
    if (photo.width() != (int) grid.width() || photo.height() != (int) grid.height()) {
      throw changed();
    }
    photo.thumbnail().ifPresent(this::preview);
    readFirst(photo);
    workshop
        .builder()
        .execute(
            () ->
                guarded(
                    () -> {
                      verify();
                      build(photo);
                    }));
  }

  /** Whether the file still is the one that was added; marks would lie wrong on any other. */
  private void verify() throws PictureException {
    try {
      if (!Digests.sha256(file).equals(sha256)) {
        throw changed();
      }
    } catch (StoreException unreadable) {
      throw new PictureException(
          PictureException.Kind.UNREADABLE, file, "the file can't be read any more", unreadable);
    }
  }

  private PictureException changed() {
    return new PictureException(
        PictureException.Kind.DAMAGED,
        file,
        "the file is no longer the one that was added, so marks may lie wrong on it: put that one"
            + " back, or add this one as another picture");
  }

  private void preview(BufferedImage thumbnail) {
    TileKey whole = new TileKey(grid.coarsest(), 0, 0);
    BufferedImage tile =
        new BufferedImage(
            grid.tileWidth(whole), grid.tileHeight(whole), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = tile.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(thumbnail, 0, 0, tile.getWidth(), tile.getHeight(), null);
    g.dispose();
    first.put(whole, tile);
    listeners.tell();
  }

  private void readFirst(PhotoFile photo) throws PictureException {
    int level = 0;
    while (Math.max(photo.width(), photo.height()) >> level > FIRST_SIDE) {
      level++;
    }
    int step = 1 << level;
    LevelBuilder builder =
        new LevelBuilder(
            level,
            PhotoRows.reduced(photo.width(), step),
            PhotoRows.reduced(photo.height(), step),
            PhotoRows.bands(photo),
            (key, width, height, samples) ->
                first.put(key, TileFormat.drawable(TileFormat.image(width, height, samples))));
    PhotoRows.decode(photo, step, builder, done -> progress(FIRST_SHARE * done));
    listeners.tell();
  }

  private void build(PhotoFile photo) throws PictureException, IOException {
    Path part = workshop.folder().part(sha256);
    LevelFile growing = LevelFile.create(part);
    levels = growing;
    boolean complete = false;
    try {
      TileFormat coding = photo.format() == PictureFormat.JPEG ? TileFormat.JPEG : TileFormat.PNG;
      TileEncoder encoding =
          new TileEncoder(
              workshop.tilers(),
              coding,
              (key, coded) -> {
                growing.add(key, coded);
                pump();
              });
      LevelBuilder builder =
          new LevelBuilder(
              0, photo.width(), photo.height(), PhotoRows.bands(photo), encoding::submit);
      PhotoRows.decode(photo, builder, done -> progress(FIRST_SHARE + (1 - FIRST_SHARE) * done));
      encoding.await();
      growing.complete(part, workshop.folder().place(sha256));
      complete = true;
      first.clear();
      become(new PictureStatus.Ready());
    } finally {
      if (!complete) {
        levels = null;
        growing.close();
        Files.deleteIfExists(part);
      }
    }
  }

  /** A piece of background work; however it ends, the status tells. */
  @FunctionalInterface
  private interface Piece {
    void run() throws PictureException, IOException;
  }

  private void guarded(Piece piece) {
    try {
      if (stopped) {
        throw new CancellationException();
      }
      piece.run();
    } catch (CancellationException enough) {
      become(new PictureStatus.Stopped());
    } catch (PictureException problem) {
      first.clear(); // what is no longer the picture, or only a part of it, must not be marked on
      levels = null;
      workshop.cache().forget(this);
      become(new PictureStatus.Failed(String.valueOf(problem.getMessage())));
    } catch (IOException problem) {
      become(
          new PictureStatus.Failed(
              file
                  + ": it is shown coarsely only, since its reduced copies can't be kept ("
                  + problem.getMessage()
                  + "); make room on the disk, or look at the rights of the cache folder"));
    } catch (RuntimeException | OutOfMemoryError problem) {
      become(new PictureStatus.Failed(file + ": it can't be shown (" + problem + ")"));
    }
  }

  /** Stops all work and lets go of the kept levels. */
  void close() {
    stopped = true;
    LevelFile open = levels;
    if (open != null && !(status instanceof PictureStatus.InProgress)) {
      try {
        open.close();
      } catch (IOException lost) {
        return; // it was only read: nothing to save
      }
    }
  }

  private boolean progress(double fraction) {
    become(new PictureStatus.InProgress(fraction));
    return !stopped;
  }

  private void become(PictureStatus changed) {
    status = changed;
    listeners.tell();
  }

  private void pump() {
    LevelFile from = levels;
    if (from == null) {
      return;
    }
    demand
        .take(
            key ->
                from.has(key)
                    && !damaged.contains(key)
                    && workshop.cache().get(this, key).isEmpty())
        .ifPresent(key -> workshop.tilers().execute(() -> load(from, key)));
  }

  private void load(LevelFile from, TileKey key) {
    try {
      workshop.cache().put(this, key, TileFormat.decode(from.read(key)));
    } catch (IOException unreadable) {
      damaged.add(key);
    } finally {
      demand.done(key);
    }
    listeners.tell();
    pump();
  }

  @Override
  public double width() {
    return grid.width();
  }

  @Override
  public double height() {
    return grid.height();
  }

  @Override
  public int finestLevel() {
    return grid.finest();
  }

  @Override
  public int coarsestLevel() {
    return grid.coarsest();
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
    Optional<BufferedImage> image =
        workshop.cache().get(this, key).or(() -> Optional.ofNullable(first.get(key)));
    if (image.isPresent()) {
      return new TileAnswer.Ready(image.get());
    }
    if (damaged.contains(key)) {
      return new TileAnswer.Failed("This piece of the kept copy can't be read.");
    }
    return status instanceof PictureStatus.Failed failed
        ? new TileAnswer.Failed(failed.reason())
        : new TileAnswer.Pending();
  }

  @Override
  public void want(Object viewer, List<TileKey> tiles) {
    demand.want(viewer, tiles);
    for (int i = 0; i < tiles.size(); i++) {
      pump();
    }
  }

  @Override
  public void addListener(Runnable listener) {
    listeners.add(listener);
  }

  @Override
  public void removeListener(Runnable listener) {
    listeners.remove(listener);
  }

  @Override
  public void stop() {
    if (status instanceof PictureStatus.InProgress) {
      stopped = true;
    }
  }
}
