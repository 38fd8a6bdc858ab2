package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Box;
import org.relegend.map.Picture;
import org.relegend.scan.PictureSamples;

class PhotoSourceTest {
  private static final int WIDTH = 1700;
  private static final int HEIGHT = 1300;

  @TempDir Path folder;
  @TempDir Path cache;

  private PictureLibrary library;

  @BeforeEach
  void open() {
    library = library(64 << 20);
  }

  private PictureLibrary library(long bytes) {
    return new PictureLibrary(cache, bytes, Runnable::run);
  }

  @AfterEach
  void close() {
    library.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void open_givesEveryTileOfEveryLevel(String format) throws Exception {
    Picture picture = picture(PictureSamples.discs(WIDTH, HEIGHT, 1), format);
    BufferedImage image = ImageIO.read(folder.resolve(picture.file()).toFile());
    PictureSource source = library.open(picture, folder);
    SourceBench.until(source, () -> source.status() instanceof PictureStatus.Ready);

    double worst = 0;
    for (int level = 0; level <= source.coarsestLevel(); level++) {
      for (TileKey key :
          new TileGrid(WIDTH, HEIGHT, 0).covering(new Box(0, 0, WIDTH, HEIGHT), level)) {
        SourceBench.untilThere(source, key);
        worst = Math.max(worst, difference(image, tile(source, key), key));
      }
    }
    assertThat(worst)
        .as("mean difference in the worst tile")
        .isLessThan(format.equals("png") ? 0.51 : 2);
  }

  @Test
  void firstPicture_isThereWhileLevelsAreMade_andKeptCopiesAreUsedLater() throws Exception {
    Picture picture = picture(PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg");
    PictureSource first = library.open(picture, folder);
    TileKey whole = new TileKey(first.coarsestLevel(), 0, 0);
    SourceBench.until(first, () -> first.tile(whole) instanceof TileAnswer.Ready);
    SourceBench.until(first, () -> first.status() instanceof PictureStatus.Ready);
    assertThat(library.open(picture, folder)).isSameAs(first);
    library.close();

    library = library(64 << 20);
    PictureSource again = library.open(picture, folder);
    SourceBench.untilThere(again, new TileKey(0, 1, 1));

    assertThat(again.status()).isInstanceOf(PictureStatus.Ready.class);
  }

  @Test
  void memory_staysWithinTheBound() throws Exception {
    library.close();
    library = library(2L * 4 * TileKey.SIZE * TileKey.SIZE);
    PictureSource source =
        library.open(picture(PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg"), folder);
    SourceBench.until(source, () -> source.status() instanceof PictureStatus.Ready);
    for (int row = 0; row < 2; row++) {
      for (int column = 0; column < 3; column++) {
        SourceBench.untilThere(source, new TileKey(0, column, row));
      }
    }
    long there =
        Stream.of(0, 1, 2)
            .flatMap(column -> Stream.of(new TileKey(0, column, 0), new TileKey(0, column, 1)))
            .filter(key -> source.tile(key) instanceof TileAnswer.Ready)
            .count();

    assertThat(there).isBetween(1L, 2L);
  }

  @Test
  void noPhoto_cutOffPhoto_missingFile_saySo() throws Exception {
    byte[] good = PictureSamples.jpeg(PictureSamples.discs(900, 700, 2), false);
    failed("text.jpg", "hello".getBytes(StandardCharsets.US_ASCII), "no picture");
    failed("cut.jpg", Arrays.copyOf(good, good.length / 2), "cut off");
    failed("empty.jpg", new byte[0], "0 bytes");
    Picture gone = SourceBench.photo(PictureSamples.file(folder, "gone.jpg", good), 900, 700);
    Files.delete(folder.resolve("gone.jpg"));
    assertFailed(gone, "no such file");
  }

  /**
   * Marks made on one picture would lie wrong on another: that is never shown as if nothing were.
   */
  @Test
  void fileThatWasExchanged_isNotShownAsTheOldOne() throws Exception {
    Picture picture = picture(PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg");
    byte[] other = PictureSamples.jpeg(PictureSamples.discs(WIDTH, HEIGHT, 2), false);
    Files.write(folder.resolve(picture.file()), other);
    assertFailed(picture, "no longer the one");
  }

  @Test
  void fileThatWasExchanged_isNoticedThoughCopiesAreKept() throws Exception {
    Picture picture = picture(PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg");
    PictureSource source = library.open(picture, folder);
    SourceBench.until(source, () -> source.status() instanceof PictureStatus.Ready);
    library.close();
    library = library(64 << 20);
    byte[] other = PictureSamples.jpeg(PictureSamples.discs(WIDTH, HEIGHT, 2), false);
    Files.write(folder.resolve(picture.file()), other);
    assertFailed(picture, "no longer the one");
  }

  @Test
  void stopped_leavesNothingHalfWritten() throws Exception {
    Picture picture = picture(PictureSamples.discs(5000, 4000, 1), "jpg");
    PictureSource source = library.open(picture, folder);
    TileKey whole = new TileKey(source.coarsestLevel(), 0, 0);
    SourceBench.until(source, () -> source.tile(whole) instanceof TileAnswer.Ready);
    source.stop();
    SourceBench.until(source, () -> !(source.status() instanceof PictureStatus.InProgress));

    assertThat(source.status()).isInstanceOf(PictureStatus.Stopped.class);
    assertThat(source.tile(whole)).isInstanceOf(TileAnswer.Ready.class);
    assertThat(files(cache.resolve("levels"))).isEmpty();
    assertThat(library.open(picture, folder)).isNotSameAs(source);
  }

  /** The photo can be worked with, though without sharpness. */
  @Test
  void cacheThatCannotBeWritten_isSaidAndTheFirstPictureStays() throws Exception {
    Files.writeString(cache.resolve("levels"), "a file where a folder should be");
    PictureSource source =
        library.open(picture(PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg"), folder);
    TileKey whole = new TileKey(source.coarsestLevel(), 0, 0);
    SourceBench.until(source, () -> source.status().isOver());

    assertThat(source.status().toString()).contains("coarsely", "cache folder");
    assertThat(source.tile(whole)).isInstanceOf(TileAnswer.Ready.class);
  }

  private void failed(String name, byte[] content, String part) throws Exception {
    assertFailed(SourceBench.photo(PictureSamples.file(folder, name, content), 900, 700), part);
  }

  private void assertFailed(Picture picture, String part) throws Exception {
    PictureSource source = library.open(picture, folder);
    SourceBench.until(source, () -> source.status() instanceof PictureStatus.Failed);
    assertThat(source.status())
        .isInstanceOfSatisfying(
            PictureStatus.Failed.class,
            failure -> assertThat(failure.reason()).contains(picture.file(), part));
    assertThat(source.tile(new TileKey(0, 0, 0))).isInstanceOf(TileAnswer.Failed.class);
    assertThat(files(cache.resolve("levels"))).noneMatch(name -> name.toString().endsWith(".part"));
  }

  private Picture picture(BufferedImage image, String format) throws Exception {
    byte[] content =
        format.equals("jpg") ? PictureSamples.jpeg(image, false) : PictureSamples.png(image, false);
    Path file = PictureSamples.file(folder, "photo." + format, content);
    return SourceBench.photo(file, image.getWidth(), image.getHeight());
  }

  /** None where the folder was never made, as when the work was stopped before its first file. */
  private static List<Path> files(Path of) throws IOException {
    if (!Files.exists(of)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(of)) {
      return all.toList();
    }
  }

  private static BufferedImage tile(PictureSource source, TileKey key) {
    return ((TileAnswer.Ready) source.tile(key)).image();
  }

  /** Mean difference of a tile's pixels to the means of the original's. */
  private static double difference(BufferedImage original, BufferedImage tile, TileKey key) {
    int unit = (int) key.unit();
    double sum = 0;
    int count = 0;
    for (int y = 0; y < tile.getHeight(); y += 7) {
      for (int x = 0; x < tile.getWidth(); x += 7) {
        int left = (int) key.area().left() + x * unit;
        int top = (int) key.area().top() + y * unit;
        double mean = 0;
        int pixels = 0;
        for (int dy = 0; dy < unit && top + dy < original.getHeight(); dy++) {
          for (int dx = 0; dx < unit && left + dx < original.getWidth(); dx++) {
            mean += original.getRGB(left + dx, top + dy) >> 8 & 0xFF;
            pixels++;
          }
        }
        sum += Math.abs(mean / pixels - (tile.getRGB(x, y) >> 8 & 0xFF));
        count++;
      }
    }
    return sum / count;
  }
}
