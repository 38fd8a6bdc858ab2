package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;

class PhotoBrightnessTest {
  @TempDir Path folder;

  /** Weights of ITU-R BT.601: 0.299 red, 0.587 green, 0.114 blue. */
  @ParameterizedTest(name = "orientation {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void read_putsEachPixelWhereItIsSeen_weighed(int value) throws Exception {
    BufferedImage stored = PictureSamples.coordinates(211, 96);
    Path source = PictureSamples.file(folder, "stored.png", PictureSamples.png(stored, false));
    ExifOrientation orientation = new ExifOrientation(value);
    PhotoFile photo = new PhotoFile(source, PictureFormat.PNG, 211, 96, orientation);

    PhotoBrightness seen = PhotoBrightness.read(photo, Progress.UNWATCHED);

    assertThat(seen.width()).isEqualTo(orientation.seenWidth(211, 96));
    assertThat(seen.height()).isEqualTo(orientation.seenHeight(211, 96));
    int wrong = 0;
    for (int y = 0; y < 96; y++) {
      for (int x = 0; x < 211; x++) {
        int rgb = stored.getRGB(x, y);
        double weighed = 0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
        Point there = orientation.seen(new Point(x + 0.5, y + 0.5), 211, 96);
        int row = (int) there.y();
        int column = (int) there.x();
        int read = seen.pixels()[row * seen.width() + column] & 255;
        wrong += Math.abs(read - weighed) <= 1 ? 0 : 1;
      }
    }
    assertThat(wrong).as("pixels elsewhere or weighed otherwise").isZero();
  }

  @Test
  void read_cutOff_isRefused() throws Exception {
    byte[] whole = PictureSamples.jpeg(PictureSamples.discs(800, 600, 2), false);
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "half.jpg", half));

    assertThatThrownBy(() -> PhotoBrightness.read(photo, Progress.UNWATCHED))
        .isInstanceOf(PictureException.class)
        .hasMessageContaining("half.jpg");
  }

  @Test
  void read_stopped_throwsCancellation() throws Exception {
    byte[] content = PictureSamples.jpeg(PictureSamples.discs(800, 600, 2), false);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a.jpg", content));

    assertThatThrownBy(() -> PhotoBrightness.read(photo, fraction -> false))
        .isInstanceOf(CancellationException.class);
  }
}
