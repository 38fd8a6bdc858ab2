package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.Box;
import org.relegend.map.Picture;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PdfSamples;
import org.relegend.scan.PictureSamples;

class PageSourceTest {
  @TempDir Path folder;
  @TempDir Path cache;

  private PictureLibrary library;

  @AfterEach
  void close() {
    library.close();
  }

  private PictureSource open(Picture picture) {
    library = new PictureLibrary(cache, 64 << 20, Runnable::run);
    return library.open(picture, folder);
  }

  @Test
  void tiles_areThePageAtTheirScale_smoothInTheEnd() throws Exception {
    Path file = PictureSamples.file(folder, "scan.pdf", PdfSamples.scannedA3(150));
    PictureSource source = open(SourceBench.page(file, 1, 1191, 842));
    TileKey key = new TileKey(1, 0, 0);
    SourceBench.untilThere(source, key);
    BufferedImage expected;
    try (PdfPages pages = PdfPages.open(file)) {
      expected = pages.render(1, new Box(0, 0, 1024, 842), 0.5, PdfPages.Finish.SMOOTH);
    }

    SourceBench.until(source, () -> same(source.tile(key), expected));

    assertThat(source.status()).isInstanceOf(PictureStatus.Ready.class);
    assertThat(source.finestLevel()).isNegative();
  }

  @Test
  void tilesOfOneView_comeTogether() throws Exception {
    Path file = PictureSamples.file(folder, "scan.pdf", PdfSamples.scannedA3(100));
    PictureSource source = open(SourceBench.page(file, 1, 1191, 842));
    List<TileKey> view =
        List.of(new TileKey(-1, 1, 1), new TileKey(-1, 2, 1), new TileKey(-1, 2, 2));

    source.want("test", view);

    SourceBench.until(
        source, () -> view.stream().allMatch(key -> source.tile(key) instanceof TileAnswer.Ready));
  }

  @Test
  void noSuchPage_lockedOrNoPdf_saysSo() throws Exception {
    byte[] scan = PdfSamples.scannedA3(50);
    assertFailed(
        SourceBench.page(PictureSamples.file(folder, "a.pdf", scan), 2, 1191, 842), "no page 2");
    byte[] text = "hello".getBytes(StandardCharsets.US_ASCII);
    assertFailed(
        SourceBench.page(PictureSamples.file(folder, "b.pdf", text), 1, 10, 10), "no picture");
    Picture exchanged = SourceBench.page(PictureSamples.file(folder, "c.pdf", scan), 1, 1191, 842);
    Files.write(folder.resolve("c.pdf"), PdfSamples.scannedA3(60));
    assertFailed(exchanged, "no longer the one");
  }

  private void assertFailed(Picture picture, String part) throws Exception {
    PictureSource source = open(picture);
    TileKey whole = new TileKey(source.coarsestLevel(), 0, 0);
    source.want("test", List.of(whole));
    SourceBench.until(source, () -> source.status() instanceof PictureStatus.Failed);
    assertThat(source.tile(whole))
        .isInstanceOfSatisfying(
            TileAnswer.Failed.class,
            failure -> assertThat(failure.reason()).contains(picture.file(), part));
    library.close();
  }

  private static boolean same(TileAnswer answer, BufferedImage expected) {
    if (!(answer instanceof TileAnswer.Ready ready)) {
      return false;
    }
    for (int y = 0; y < ready.image().getHeight(); y += 3) {
      for (int x = 0; x < ready.image().getWidth(); x += 3) {
        if (ready.image().getRGB(x, y) != expected.getRGB(x, y)) {
          return false;
        }
      }
    }
    return true;
  }
}
