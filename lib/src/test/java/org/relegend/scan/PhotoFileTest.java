package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFileTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void probe_readsSizeAndOrientation(int value) throws Exception {
    byte[] jpeg = PictureSamples.jpeg(PictureSamples.discs(300, 200, 1), false);
    Path file = PictureSamples.file(folder, "a.jpg", PictureSamples.withOrientation(jpeg, value));

    PhotoFile photo = PhotoFile.probe(file);

    assertThat(photo)
        .isEqualTo(new PhotoFile(file, PictureFormat.JPEG, 300, 200, new ExifOrientation(value)));
    assertThat(photo.seenWidth()).isEqualTo(value < 5 ? 300 : 200);
    assertThat(photo.seenHeight()).isEqualTo(value < 5 ? 200 : 300);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 255})
  void probe_orientationTheStandardReserves_countsAsUpright(int value) throws Exception {
    byte[] jpeg = PictureSamples.jpeg(PictureSamples.discs(30, 20, 1), false);
    Path file = PictureSamples.file(folder, "a.jpg", PictureSamples.withOrientation(jpeg, value));

    assertThat(PhotoFile.probe(file).orientation()).isEqualTo(ExifOrientation.UPRIGHT);
  }

  @Test
  void probe_goesByContent_notByName() throws Exception {
    BufferedImage image = PictureSamples.discs(30, 20, 1);
    Path png = PictureSamples.file(folder, "a.jpg", PictureSamples.png(image, false));
    Path tiff = PictureSamples.file(folder, "b.txt", PictureSamples.tiff(image));

    assertThat(PhotoFile.probe(png).format()).isEqualTo(PictureFormat.PNG);
    assertThat(PhotoFile.probe(tiff).format()).isEqualTo(PictureFormat.TIFF);
  }

  @Test
  void probe_whatIsNoPicture_isRefusedWithOneClearLine() throws Exception {
    byte[] jpeg = PictureSamples.jpeg(PictureSamples.discs(64, 64, 1), false);
    refused("empty.jpg", new byte[0], PictureException.Kind.EMPTY, "0 bytes");
    refused("letter.jpg", text("Dear Sir"), PictureException.Kind.UNKNOWN_FORMAT, "JPEG, PNG");
    refused("a.heic", text("\0\0\0\30ftypheic\0\0\0\0mif1"), UNKNOWN, "HEIC");
    refused("a.avif", text("\0\0\0\34ftypavif\0\0\0\0"), UNKNOWN, "AVIF");
    refused("a.webp", text("RIFF\0\0\0\0WEBPVP8 "), UNKNOWN, "WebP");
    refused("a.gif", text("GIF89a\1\0\1\0"), UNKNOWN, "GIF");
    refused("a.pdf", text("%PDF-1.7\n"), UNKNOWN, "PDF");
    refused("head.jpg", Arrays.copyOf(jpeg, 12), DAMAGED, "damaged or cut off");
    refused("head.png", text("\u0089PNG\r\n\u001a\n\0\0"), DAMAGED, "damaged or cut off");
    refused("vast.png", PictureSamples.hollowPng(30_000, 30_000), TOO_LARGE, "30000 x 30000");
    refused(
        "vast.jpg", PictureSamples.swollenJpeg(jpeg, 30_000, 30_000), TOO_LARGE, "120 megapixels");
    refused("long.png", PictureSamples.hollowPng(1_000_000, 2), TOO_LARGE, "1000000 x 2");
  }

  private static final PictureException.Kind UNKNOWN = PictureException.Kind.UNKNOWN_FORMAT;
  private static final PictureException.Kind DAMAGED = PictureException.Kind.DAMAGED;
  private static final PictureException.Kind TOO_LARGE = PictureException.Kind.TOO_LARGE;

  @Test
  void probe_missingFileOrFolder_isRefused() {
    assertRefused(
        () -> PhotoFile.probe(folder.resolve("no.jpg")),
        PictureException.Kind.UNREADABLE,
        "no.jpg: there is no such file");
    assertRefused(
        () -> PhotoFile.probe(folder), PictureException.Kind.UNREADABLE, "this is a folder");
  }

  @Test
  void thumbnail_isTheOneInTheFile() throws Exception {
    BufferedImage image = PictureSamples.discs(1600, 1200, 3);
    byte[] small = PictureSamples.jpeg(PictureSamples.discs(160, 120, 4), false);
    byte[] content = PictureSamples.withThumbnail(PictureSamples.jpeg(image, false), small);
    PhotoFile photo = PhotoFile.probe(PictureSamples.file(folder, "a.jpg", content));

    assertThat(photo.thumbnail())
        .hasValueSatisfying(
            found -> assertThat(found.getWidth() + "x" + found.getHeight()).isEqualTo("160x120"));
  }

  @Test
  void thumbnail_noneOrOfAnotherShape_isNotUsed() throws Exception {
    byte[] jpeg = PictureSamples.jpeg(PictureSamples.discs(1600, 1200, 3), false);
    byte[] square = PictureSamples.jpeg(PictureSamples.discs(120, 120, 4), false);
    Path none = PictureSamples.file(folder, "a.jpg", jpeg);
    Path other = PictureSamples.file(folder, "b.jpg", PictureSamples.withThumbnail(jpeg, square));
    Path broken =
        PictureSamples.file(
            folder, "c.jpg", PictureSamples.withThumbnail(jpeg, text("not a picture")));

    assertThat(PhotoFile.probe(none).thumbnail()).isEmpty();
    assertThat(PhotoFile.probe(other).thumbnail()).isEmpty();
    assertThat(PhotoFile.probe(broken).thumbnail()).isEmpty();
  }

  private void refused(String name, byte[] content, PictureException.Kind kind, String part)
      throws Exception {
    Path file = PictureSamples.file(folder, name, content);
    assertRefused(() -> PhotoFile.probe(file), kind, part);
  }

  private static void assertRefused(
      ThrowingCallable probing, PictureException.Kind kind, String part) {
    assertThatThrownBy(probing)
        .isInstanceOfSatisfying(
            PictureException.class,
            refusal -> {
              assertThat(refusal.kind()).isEqualTo(kind);
              assertThat(refusal.getMessage()).contains(part).doesNotContain("\n");
            });
  }

  private static byte[] text(String content) {
    return content.getBytes(StandardCharsets.ISO_8859_1);
  }
}
