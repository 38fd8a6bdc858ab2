package org.relegend.scan;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Copies a photo with nothing but its pixels: no position, camera, owner, comment, preview, profile
 * or text. JPEG and PNG keep their coded pixels as they are; only what is needed to decode them is
 * written again, segment by segment and chunk by chunk, so that nothing can hide between.
 */
public final class PhotoPrivacy {
  private static final Set<String> CHUNKS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
  private static final int MOST_TABLES = 1 << 16;

  private PhotoPrivacy() {}

  /** The ending that {@link #strip} needs: jpg, or png for what was stored without loss. */
  public static String ending(PhotoFile photo) {
    return UprightPhoto.ending(photo);
  }

  /**
   * Writes the bare photo to a new file, upright.
   *
   * @throws PictureException where the photo is damaged, holds what is no part of a picture, or the
   *     target can't be written; nothing is left there then
   */
  public static void strip(PhotoFile photo, Path target, Progress progress)
      throws PictureException {
    boolean asItIs =
        photo.orientation().equals(ExifOrientation.UPRIGHT) && photo.format() != PictureFormat.TIFF;
    if (asItIs) {
      stripped(photo.path(), photo.format(), target);
      return;
    }
    Path turned = target.resolveSibling(target.getFileName() + ".turned");
    try {
      UprightPhoto.write(photo, turned, progress);
      stripped(turned, PictureFormat.of(turned), target);
    } finally {
      turned.toFile().delete();
    }
  }

  private static void stripped(Path photo, PictureFormat format, Path target)
      throws PictureException {
    boolean done = false;
    try (DataInputStream in =
            new DataInputStream(new BufferedInputStream(Files.newInputStream(photo), 1 << 16));
        OutputStream out = new BufferedOutputStream(Files.newOutputStream(target), 1 << 16)) {
      if (format == PictureFormat.JPEG) {
        new Jpeg(in, out).copy();
      } else {
        new Png(in, out).copy();
      }
      out.flush();
      done = true;
    } catch (IOException problem) {
      throw PhotoFile.damaged(photo, problem);
    } finally {
      if (!done) {
        target.toFile().delete();
      }
    }
  }

  /** The segments of ISO/IEC 10918-1, annex B, that decoding needs. */
  private record Jpeg(DataInputStream in, OutputStream out) {
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int DQT = 0xDB;
    private static final int DHT = 0xC4;
    private static final int DRI = 0xDD;
    private static final int APP14 = 0xEE;

    void copy() throws IOException {
      if (in.readUnsignedShort() != 0xFFD8) {
        throw new IOException("it is no JPEG file");
      }
      out.write(0xFF);
      out.write(0xD8);
      int marker = marker(in.readUnsignedByte());
      while (marker != EOI) {
        byte[] content = new byte[in.readUnsignedShort() - 2];
        in.readFully(content);
        if (marker == APP14) {
          colours(content);
        } else if (isNeeded(marker)) {
          write(marker, exact(marker, content));
        }
        marker = marker == SOS ? scan() : marker(in.readUnsignedByte());
      }
      out.write(0xFF);
      out.write(EOI); // what stands behind it, as a second picture, is left out
    }

    private int marker(int first) throws IOException {
      int value = first;
      if (value != 0xFF) {
        throw new IOException("something stands between its segments");
      }
      while (value == 0xFF) {
        value = in.readUnsignedByte();
      }
      return value;
    }

    private static boolean isNeeded(int marker) {
      return marker >= 0xC0 && marker <= 0xCF || marker == SOS || marker == DQT || marker == DRI;
    }

    private void write(int marker, byte[] content) throws IOException {
      out.write(0xFF);
      out.write(marker);
      out.write((content.length + 2) >> 8);
      out.write(content.length + 2);
      out.write(content);
    }

    /** How colours are coded, without which some photos turn green; the rest of it is flags. */
    private void colours(byte[] content) throws IOException {
      byte[] name = "Adobe".getBytes(StandardCharsets.US_ASCII);
      if (content.length < 12) {
        return;
      }
      for (int i = 0; i < name.length; i++) {
        if (content[i] != name[i]) {
          return;
        }
      }
      byte[] flags = new byte[12];
      System.arraycopy(name, 0, flags, 0, name.length);
      flags[6] = 100;
      flags[11] = content[11];
      write(APP14, flags);
    }

    /** The content, if it is as long as what it tells, so that nothing stands behind it. */
    private static byte[] exact(int marker, byte[] content) throws IOException {
      int length =
          switch (marker) {
            case DQT -> quantisers(content);
            case DHT -> codes(content);
            case DRI -> 2;
            case SOS -> 4 + 2 * (content.length == 0 ? 0 : content[0]);
            case 0xCC -> content.length & ~1;
            default -> 6 + 3 * (content.length < 6 ? 0 : content[5]);
          };
      if (length != content.length || length > MOST_TABLES) {
        throw new IOException("a segment of it holds more than it should");
      }
      return content;
    }

    private static int quantisers(byte[] content) {
      int at = 0;
      while (at < content.length) {
        at += 1 + ((content[at] & 0xF0) == 0 ? 64 : 128);
      }
      return at;
    }

    private static int codes(byte[] content) {
      int at = 0;
      while (at + 17 <= content.length) {
        int count = 0;
        for (int i = 1; i <= 16; i++) {
          count += content[at + i] & 0xFF;
        }
        at += 17 + count;
      }
      return at;
    }

    /** Copies coded pixels and gives the marker that ends them. */
    private int scan() throws IOException {
      while (true) {
        int value = in.readUnsignedByte();
        if (value != 0xFF) {
          out.write(value);
          continue;
        }
        int next = in.readUnsignedByte();
        while (next == 0xFF) {
          next = in.readUnsignedByte();
        }
        if (next != 0 && !(next >= 0xD0 && next <= 0xD7)) {
          return next;
        }
        out.write(0xFF);
        out.write(next);
      }
    }
  }

  /** The chunks of ISO/IEC 15948 that decoding needs. */
  private static final class Png {
    private static final long SIGNATURE = 0x89504E470D0A1A0AL;
    private static final int MOST_CHUNK = 1 << 30;

    private final DataInputStream in;
    private final OutputStream out;
    private final Inflater pixels = new Inflater();

    Png(DataInputStream in, OutputStream out) {
      this.in = in;
      this.out = out;
    }

    void copy() throws IOException {
      try {
        if (in.readLong() != SIGNATURE) {
          throw new IOException("it is no PNG file");
        }
        writeLong(SIGNATURE);
        String type = "";
        while (!type.equals("IEND")) {
          int length = in.readInt();
          byte[] name = new byte[4];
          in.readFully(name);
          type = new String(name, StandardCharsets.ISO_8859_1);
          if (length < 0 || length > MOST_CHUNK) {
            throw new IOException("a chunk of it can't be so long");
          }
          if (CHUNKS.contains(type)) {
            keep(type, name, length);
          } else {
            in.skipNBytes(length + 4L);
          }
        }
        if (!pixels.finished()) {
          throw new EOFException("its pixels are cut off");
        }
      } finally {
        pixels.end();
      }
    }

    private void keep(String type, byte[] name, int length) throws IOException {
      int most =
          type.equals("IDAT")
              ? MOST_CHUNK
              : type.equals("IHDR") ? 13 : type.equals("IEND") ? 0 : 768;
      if (length > most) {
        throw new IOException("a chunk of it holds more than it should");
      }
      CRC32 sum = new CRC32();
      sum.update(name);
      writeInt(length);
      out.write(name);
      byte[] piece = new byte[1 << 16];
      int left = length;
      while (left > 0) {
        int count = in.read(piece, 0, Math.min(left, piece.length));
        if (count < 0) {
          throw new EOFException("it ends too early");
        }
        if (type.equals("IDAT")) {
          check(piece, count);
        }
        sum.update(piece, 0, count);
        out.write(piece, 0, count);
        left -= count;
      }
      if (in.readInt() != (int) sum.getValue()) {
        throw new IOException("a checksum of it is wrong");
      }
      writeInt((int) sum.getValue());
    }

    /** Nothing may stand behind the end of the packed pixels. */
    private void check(byte[] piece, int count) throws IOException {
      byte[] seen = new byte[1 << 16];
      try {
        pixels.setInput(piece, 0, count);
        while (!pixels.needsInput() && !pixels.finished()) {
          if (pixels.inflate(seen) == 0 && pixels.needsDictionary()) {
            throw new IOException("its pixels are packed in an unknown way");
          }
        }
        if (pixels.finished() && pixels.getRemaining() > 0) {
          throw new IOException("something stands behind its pixels");
        }
      } catch (DataFormatException e) {
        throw new IOException("its pixels are damaged", e);
      }
    }

    private void writeInt(int value) throws IOException {
      for (int shift = 24; shift >= 0; shift -= 8) {
        out.write(value >> shift);
      }
    }

    private void writeLong(long value) throws IOException {
      writeInt((int) (value >> 32));
      writeInt((int) value);
    }
  }
}
