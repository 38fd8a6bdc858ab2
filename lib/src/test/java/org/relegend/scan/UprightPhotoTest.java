package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;

class UprightPhotoTest {
  /** Stored corners, in order: upper left, upper right, lower left, lower right. */
  private static final List<Color> STORED =
      List.of(Color.RED, Color.GREEN, Color.BLUE, Color.WHITE);

  @TempDir Path folder;

  /**
   * Exif 2.32, section 4.6.4 A: where the 0th row and 0th column are seen. Value 6, for one: the
   * stored left edge (red above blue) is seen at the top, and the stored top edge (red, then green)
   * at the right, so the upper right is red, the upper left blue, the lower right green.
   */
  @ParameterizedTest(name = "orientation {0}: corners {1}")
  @CsvSource({
    "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"
  })
  void write_turnsPixelsAsTheExifStandardDefines(int value, String corners) throws Exception {
    BufferedImage stored = quarters(640, 400);
    byte[] content = PictureSamples.withOrientation(PictureSamples.jpeg(stored, false), value);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "stored.jpg", content));
    Path target = folder.resolve("upright.jpg");

    UprightPhoto.write(photo, target, Progress.UNWATCHED);

    BufferedImage upright = ImageIO.read(target.toFile());
    int w = value >= 5 ? 400 : 640;
    int h = value >= 5 ? 640 : 400;
    assertThat(List.of(upright.getWidth(), upright.getHeight())).containsExactly(w, h);
    if (value > 1) {
      assertThat(PhotoFile.probe(target).orientation()).isEqualTo(ExifOrientation.UPRIGHT);
    }
    assertThat(letter(upright, w / 4, h / 4)).as("upper left").isEqualTo(corners.charAt(0));
    assertThat(letter(upright, 3 * w / 4, h / 4)).as("upper right").isEqualTo(corners.charAt(1));
    assertThat(letter(upright, w / 4, 3 * h / 4)).as("lower left").isEqualTo(corners.charAt(2));
    assertThat(letter(upright, 3 * w / 4, 3 * h / 4))
        .as("lower right")
        .isEqualTo(corners.charAt(3));
  }

  /** No pixel is lost or doubled, also where the photo is higher than a strip. */
  @ParameterizedTest(name = "orientation {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void write_putsEachPixelWhereTheOrientationSaysItIsSeen(int value) throws Exception {
    BufferedImage stored = PictureSamples.coordinates(211, 256);
    Path source = PictureSamples.file(folder, "stored.png", PictureSamples.png(stored, false));
    ExifOrientation orientation = new ExifOrientation(value);
    PhotoFile photo = new PhotoFile(source, PictureFormat.PNG, 211, 256, orientation);
    Path target = folder.resolve("upright.png");

    UprightPhoto.write(photo, target, Progress.UNWATCHED);

    BufferedImage upright = ImageIO.read(target.toFile());
    int wrong = 0;
    for (int y = 0; y < 256; y++) {
      for (int x = 0; x < 211; x++) {
        Point seen = orientation.seen(new Point(x + 0.5, y + 0.5), 211, 256);
        int there = upright.getRGB((int) seen.x(), (int) seen.y());
        wrong += there == stored.getRGB(x, y) ? 0 : 1;
      }
    }
    assertThat(wrong).as("pixels elsewhere").isZero();
  }

  @Test
  void write_uprightAlready_keepsTheFileByteByByte() throws Exception {
    byte[] content = PictureSamples.jpeg(PictureSamples.discs(300, 200, 1), false);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a.jpg", content));

    UprightPhoto.write(photo, folder.resolve("b.jpg"), Progress.UNWATCHED);

    assertThat(folder.resolve("b.jpg")).hasBinaryContent(content);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 6})
  void write_cutOff_leavesNothing(int orientation) throws Exception {
    byte[] whole =
        PictureSamples.withOrientation(
            PictureSamples.jpeg(PictureSamples.discs(800, 600, 2), false), orientation);
    Path source = PictureSamples.file(folder, "cut.jpg", Arrays.copyOf(whole, whole.length / 2));
    PhotoFile photo = PhotoFile.probe(source);

    assertThatThrownBy(() -> UprightPhoto.write(photo, folder.resolve("b.jpg"), Progress.UNWATCHED))
        .isInstanceOf(PictureException.class)
        .hasMessageContaining("cut.jpg")
        .hasMessageContaining("cut off");
    assertThat(names()).containsExactly("cut.jpg");
  }

  @Test
  void write_targetThere_isNotOverwritten() throws Exception {
    byte[] content = PictureSamples.jpeg(PictureSamples.discs(300, 200, 1), false);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a.jpg", content));
    Path target = Files.writeString(folder.resolve("b.jpg"), "mine");

    assertThatThrownBy(() -> UprightPhoto.write(photo, target, Progress.UNWATCHED))
        .isInstanceOf(PictureException.class)
        .hasMessageContaining("already");
    assertThat(target).hasContent("mine");
  }

  @Test
  void write_cancelled_leavesNothing() throws Exception {
    byte[] content =
        PictureSamples.withOrientation(
            PictureSamples.jpeg(PictureSamples.discs(900, 700, 1), false), 8);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a.jpg", content));

    for (double stop : List.of(0.2, 0.7)) {
      assertThatThrownBy(
              () -> UprightPhoto.write(photo, folder.resolve("b.jpg"), done -> done < stop))
          .isInstanceOf(CancellationException.class);
      assertThat(names()).containsExactly("a.jpg");
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static BufferedImage quarters(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 4; i++) {
      var g = image.createGraphics();
      g.setColor(STORED.get(i));
      g.fillRect(i % 2 * width / 2, i / 2 * height / 2, width / 2, height / 2);
      g.dispose();
    }
    return image;
  }

  private static char letter(BufferedImage image, int x, int y) {
    Color colour = new Color(image.getRGB(x, y));
    return colour.getRed() > 128
        ? (colour.getGreen() > 128 ? 'W' : 'R')
        : (colour.getGreen() > 128 ? 'G' : 'B');
  }
}
