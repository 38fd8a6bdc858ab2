package org.relegend.viewer.tile;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import org.relegend.map.Box;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PdfPages.Finish;
import org.relegend.scan.PictureException;

/**
 * A page of a PDF: rendered at whatever scale is looked at, a few tiles together, quick first and
 * smooth when nothing is missing any more.
 */
final class PageSource implements PictureSource {
  /** 32 pixels per point: more than any print holds. */
  private static final int FINEST = -5;

  /** A page at 1:1 is as large as on paper, on a screen of 96 pixels per inch. */
  private static final double ACTUAL = 96 / 72.0;

  /** Tiles rendered at once, in each direction: 6 million pixels. */
  private static final int BLOCK = 5;

  private final OpenPdf document;
  private final int page;
  private final String sha256;
  private final TileGrid grid;
  private final PictureLibrary.Workshop workshop;
  private final ChangeListeners listeners;
  private final TileDemand demand = new TileDemand();
  private final Set<TileKey> rough = ConcurrentHashMap.newKeySet();
  private final AtomicBoolean scheduled = new AtomicBoolean();
  private volatile PictureStatus status = new PictureStatus.InProgress(0);

  PageSource(
      OpenPdf document,
      int page,
      String sha256,
      double width,
      double height,
      PictureLibrary.Workshop workshop) {
    this.document = document;
    this.page = page;
    this.sha256 = sha256;
    this.grid = new TileGrid(width, height, FINEST);
    this.workshop = workshop;
    this.listeners = new ChangeListeners(workshop.handOver());
  }

  private void schedule() {
    if (scheduled.compareAndSet(false, true)) {
      document.execute(this::work);
    }
  }

  /** One block a turn, so that pages of one document take turns and the newest view comes first. */
  private void work() {
    scheduled.set(false);
    if (status instanceof PictureStatus.Failed) {
      return;
    }
    List<TileKey> block = block(this::isMissing);
    Finish finish = Finish.QUICK;
    if (block.isEmpty()) {
      block = demand.take(rough::contains).map(List::of).orElse(List.of());
      finish = Finish.SMOOTH;
    }
    if (block.isEmpty()) {
      return;
    }
    try {
      render(block, finish);
      status = new PictureStatus.Ready();
    } catch (PictureException problem) {
      status = new PictureStatus.Failed(String.valueOf(problem.getMessage()));
    } finally {
      block.forEach(demand::done);
    }
    listeners.tell();
    schedule();
  }

  private boolean isMissing(TileKey key) {
    return grid.has(key) && workshop.cache().get(this, key).isEmpty();
  }

  /** The most urgent tile, and those missing around it. */
  private List<TileKey> block(Predicate<TileKey> wanted) {
    Optional<TileKey> urgent = demand.take(wanted);
    if (urgent.isEmpty()) {
      return List.of();
    }
    TileKey middle = urgent.get();
    List<TileKey> block = new ArrayList<>(List.of(middle));
    block.addAll(
        demand.takeAll(
            key ->
                key.level() == middle.level()
                    && Math.abs(key.column() - middle.column()) <= BLOCK / 2
                    && Math.abs(key.row() - middle.row()) <= BLOCK / 2
                    && wanted.test(key)));
    return block;
  }

  private void render(List<TileKey> block, Finish finish) throws PictureException {
    PdfPages pages = document.pages(sha256);
    int level = block.get(0).level();
    double scale = 1 / block.get(0).unit();
    int left = block.stream().mapToInt(TileKey::column).min().orElseThrow();
    int top = block.stream().mapToInt(TileKey::row).min().orElseThrow();
    int right = block.stream().mapToInt(TileKey::column).max().orElseThrow();
    int bottom = block.stream().mapToInt(TileKey::row).max().orElseThrow();
    TileKey last = new TileKey(level, right, bottom);
    double side = TileKey.SIZE / scale;
    Box region =
        new Box(
            left * side,
            top * side,
            right * side + grid.tileWidth(last) / scale,
            bottom * side + grid.tileHeight(last) / scale);
    BufferedImage image = pages.render(page, region, scale, finish);
    boolean finer = finish == Finish.QUICK && pages.hasFinerFinish(page, scale);
    for (TileKey key : block) {
      int x = (key.column() - left) * TileKey.SIZE;
      int y = (key.row() - top) * TileKey.SIZE;
      workshop.cache().put(this, key, cut(image, x, y, key));
      if (finer) {
        rough.add(key);
      } else {
        rough.remove(key);
      }
    }
  }

  private BufferedImage cut(BufferedImage image, int x, int y, TileKey key) {
    int width = grid.tileWidth(key);
    int height = grid.tileHeight(key);
    if (x == 0 && y == 0 && width == image.getWidth() && height == image.getHeight()) {
      return image;
    }
    BufferedImage tile = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = tile.createGraphics();
    g.drawImage(image, -x, -y, null);
    g.dispose();
    return tile;
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
    return ACTUAL;
  }

  @Override
  public PictureStatus status() {
    return status;
  }

  @Override
  public TileAnswer tile(TileKey key) {
    Optional<BufferedImage> image = workshop.cache().get(this, key);
    if (image.isPresent()) {
      return new TileAnswer.Ready(image.get());
    }
    return status instanceof PictureStatus.Failed failed
        ? new TileAnswer.Failed(failed.reason())
        : new TileAnswer.Pending();
  }

  @Override
  public void want(Object viewer, List<TileKey> tiles) {
    demand.want(viewer, tiles);
    if (!tiles.isEmpty()) {
      schedule();
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
    demand.clear();
  }
}
