package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The oracle is ImageIO's own reading of the whole picture. */
class PhotoRowsTest {
  private static final List<Integer> TYPES =
      List.of(
          BufferedImage.TYPE_3BYTE_BGR,
          BufferedImage.TYPE_BYTE_GRAY,
          BufferedImage.TYPE_4BYTE_ABGR,
          BufferedImage.TYPE_BYTE_BINARY,
          BufferedImage.TYPE_BYTE_INDEXED,
          BufferedImage.TYPE_USHORT_GRAY);

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void decode_jpeg_equalsReadingTheWhole(boolean progressive) throws Exception {
    for (int type : List.of(BufferedImage.TYPE_3BYTE_BGR, BufferedImage.TYPE_BYTE_GRAY)) {
      assertSame(PictureSamples.jpeg(sample(type), progressive), 1);
      assertSame(PictureSamples.jpeg(sample(type), progressive), 3);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void decode_png_equalsReadingTheWhole(boolean interlaced) throws Exception {
    for (int type : TYPES) {
      assertSame(PictureSamples.png(sample(type), interlaced), 1);
      assertSame(PictureSamples.png(sample(type), interlaced), 4);
    }
  }

  @Test
  void decode_tiff_equalsReadingTheWhole() throws Exception {
    for (int type : TYPES) {
      assertSame(PictureSamples.tiff(sample(type)), 1);
    }
  }

  @Test
  void decode_transparentPixels_areOverWhite() throws Exception {
    BufferedImage clear = new BufferedImage(20, 10, BufferedImage.TYPE_4BYTE_ABGR);
    byte[] png = PictureSamples.png(clear, false);

    int[] seen = decoded(PictureSamples.file(folder, "clear.png", png), 1);

    assertThat(seen).containsOnly(0xFFFFFF);
  }

  @Test
  void decode_cutOffAnywhere_isRefused() throws Exception {
    BufferedImage image = PictureSamples.discs(500, 400, 5);
    for (byte[] whole :
        List.of(
            PictureSamples.jpeg(image, false),
            PictureSamples.jpeg(image, true),
            PictureSamples.png(image, false),
            PictureSamples.png(image, true),
            PictureSamples.tiff(image))) {
      for (int percent : List.of(30, 60, 95)) {
        byte[] cut = Arrays.copyOf(whole, whole.length * percent / 100);
        Path file = PictureSamples.file(folder, "cut", cut);
        assertThatThrownBy(() -> decoded(file, 1))
            .as("%d %% of a file that begins with %x", percent, whole[0])
            .isInstanceOf(PictureException.class)
            .hasMessageContaining("cut off");
      }
    }
  }

  @Test
  void decode_cancelled_stops() throws Exception {
    BufferedImage image = PictureSamples.discs(500, 400, 5);
    for (byte[] content :
        List.of(
            PictureSamples.jpeg(image, false),
            PictureSamples.png(image, false),
            PictureSamples.tiff(image))) {
      PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a", content));
      int[] last = {0};
      assertThatThrownBy(() -> PhotoRows.decode(photo, (y, row) -> last[0] = y, done -> done < 0.5))
          .isInstanceOf(CancellationException.class);
      assertThat(last[0]).isBetween(150, 260);
    }
  }

  @Test
  void decode_sinkFails_theReasonIsTold() throws Exception {
    Path file =
        PictureSamples.file(
            folder, "a.jpg", PictureSamples.jpeg(PictureSamples.discs(90, 60, 5), false));
    PhotoFile photo = PhotoFile.probe(file);

    assertThatThrownBy(
            () ->
                PhotoRows.decode(
                    photo,
                    (y, row) -> {
                      throw new IOException("no room left");
                    },
                    Progress.UNWATCHED))
        .isInstanceOf(PictureException.class)
        .hasMessageContaining("no room left");
  }

  private void assertSame(byte[] content, int step) throws Exception {
    Path file = PictureSamples.file(folder, "picture", content);
    BufferedImage whole = ImageIO.read(file.toFile());
    BufferedImage plain =
        new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = plain.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, plain.getWidth(), plain.getHeight());
    g.drawImage(whole, 0, 0, null);
    g.dispose();
    int[] seen = decoded(file, step);
    int w = PhotoRows.reduced(whole.getWidth(), step);
    int furthest = 0;
    for (int i = 0; i < seen.length; i++) {
      int expected = plain.getRGB(i % w * step, i / w * step) & 0xFFFFFF;
      furthest = Math.max(furthest, distance(seen[i], expected));
    }
    assertThat(furthest).as("difference of the worst pixel").isLessThanOrEqualTo(1);
  }

  private static int distance(int a, int b) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 0xFF) - (b >> shift & 0xFF)));
    }
    return most;
  }

  private static int[] decoded(Path file, int step) throws PictureException {
    PhotoFile photo = PhotoFile.probe(file);
    int bands = PhotoRows.bands(photo);
    int w = PhotoRows.reduced(photo.width(), step);
    int[] pixels = new int[w * PhotoRows.reduced(photo.height(), step)];
    PhotoRows.decode(
        photo,
        step,
        (y, row) -> {
          for (int x = 0; x < w; x++) {
            int red = row[x * bands] & 0xFF;
            int green = row[x * bands + bands / 2] & 0xFF;
            int blue = row[x * bands + bands - 1] & 0xFF;
            pixels[y * w + x] = red << 16 | green << 8 | blue;
          }
        },
        Progress.UNWATCHED);
    return pixels;
  }

  private static BufferedImage sample(int type) {
    BufferedImage image = new BufferedImage(201, 333, type);
    Graphics2D g = image.createGraphics();
    g.drawImage(PictureSamples.discs(201, 333, 7), 0, 0, null);
    g.dispose();
    return image;
  }
}
