package org.relegend.scan;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What kind of picture a file holds, told by its first bytes and never by its name. */
public enum PictureFormat {
  JPEG,
  PNG,
  TIFF,
  PDF;

  private static final int HEAD = 1024;
  private static final Set<String> HEIC_BRANDS =
      Set.of("heic", "heix", "hevc", "hevx", "heim", "heis", "mif1", "msf1");
  private static final Map<String, String> KNOWN_OTHERS =
      Map.of("GIF8", "a GIF picture", "BM", "a BMP picture", "8BPS", "a layered picture (PSD)");

  /**
   * Looks at the first bytes.
   *
   * @throws PictureException where there is no such file, it is empty, or of no kind known here
   */
  public static PictureFormat of(Path file) throws PictureException {
    byte[] head = head(file);
    String text = new String(head, StandardCharsets.ISO_8859_1);
    if (head.length == 0) {
      throw new PictureException(
          PictureException.Kind.EMPTY,
          file,
          "the file is empty (0 bytes); copy it again from where it came from");
    }
    if (text.startsWith("\u00ff\u00d8\u00ff")) {
      return JPEG;
    }
    if (text.startsWith("\u0089PNG\r\n\u001a\n")) {
      return PNG;
    }
    if (text.startsWith("II*\0") || text.startsWith("MM\0*")) {
      return TIFF;
    }
    if (text.contains("%PDF-")) {
      return PDF;
    }
    throw new PictureException(
        PictureException.Kind.UNKNOWN_FORMAT,
        file,
        "this is "
            + otherKind(text)
            + "; pictures can be JPEG, PNG or TIFF, schematics also PDF: convert it first");
  }

  public boolean isImage() {
    return this != PDF;
  }

  private static byte[] head(Path file) throws PictureException {
    if (Files.isDirectory(file)) {
      throw new PictureException(
          PictureException.Kind.UNREADABLE, file, "this is a folder; name a picture file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(HEAD);
    } catch (NoSuchFileException missing) {
      throw new PictureException(
          PictureException.Kind.UNREADABLE, file, "there is no such file", missing);
    } catch (IOException problem) {
      throw new PictureException(
          PictureException.Kind.UNREADABLE,
          file,
          "the file can't be read (%s); look at its rights".formatted(problem.getMessage()),
          problem);
    }
  }

  private static String otherKind(String text) {
    if (text.length() >= 12 && text.startsWith("ftyp", 4)) {
      String brand = text.substring(8, 12).toLowerCase(Locale.ROOT);
      if (HEIC_BRANDS.contains(brand)) {
        return "a HEIC picture, as some phones save them (their camera settings offer JPEG too)";
      }
      return brand.startsWith("avi") ? "an AVIF picture" : "a film or a picture of a newer kind";
    }
    if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
      return "a WebP picture";
    }
    return KNOWN_OTHERS.entrySet().stream()
        .filter(other -> text.startsWith(other.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("no picture of a known kind");
  }
}
