package org.relegend.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoFolderTest {
  @Test
  void allButThePhotosDrawnAnew_hasTheCommittedBytes() throws IOException {
    Map<String, byte[]> files = DemoFolder.files((file, shot) -> Committed.file(file));
    assertThat(files).hasSize(11);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      assertThat(file.getValue()).as(file.getKey()).isEqualTo(Committed.file(file.getKey()));
    }
  }

  @Test
  void folder_staysUnder25Megabytes_andEachFileUnder6() throws IOException {
    long whole = 0;
    for (String part : List.of("map", "job", "other-unit", "truth")) {
      try (Stream<Path> files = Files.walk(Committed.FOLDER.resolve(part))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          assertThat(Files.size(file)).as(file.toString()).isLessThan(6_000_000);
          whole += Files.size(file);
        }
      }
    }
    assertThat(whole).isLessThan(25_000_000);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "map/photos/component.jpg",
        "map/photos/solder.jpg",
        "other-unit/component.jpg",
        "other-unit/solder.jpg"
      })
  void photo_has12Megapixels_andNoNotesOfCameraOrPlace(String file) throws IOException {
    byte[] bytes = Committed.file(file);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat((long) image.getWidth() * image.getHeight()).isGreaterThanOrEqualTo(12_000_000L);
    assertThat(markers(bytes)).doesNotContain(0xE1, 0xED, 0xFE);
  }

  /** The JPEG markers before the picture's data: 0xE1 would be EXIF, 0xED IPTC, 0xFE a comment. */
  private static List<Integer> markers(byte[] jpeg) {
    List<Integer> markers = new java.util.ArrayList<>();
    int at = 2;
    while ((jpeg[at + 1] & 255) != 0xDA) {
      markers.add(jpeg[at + 1] & 255);
      at += 2 + ((jpeg[at + 2] & 255) << 8 | (jpeg[at + 3] & 255));
    }
    assertThat(markers).isNotEmpty();
    return markers;
  }
}
