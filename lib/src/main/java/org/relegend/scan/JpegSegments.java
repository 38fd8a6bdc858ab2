package org.relegend.scan;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;

/**
 * The segments of a JPEG file before and between its scans (ISO/IEC 10918-1, annex B).
 *
 * @param exifStart where the TIFF header of the Exif segment begins; -1 where there is none
 * @param scans how many scans there are; more than one in a progressive file
 */
record JpegSegments(long exifStart, int scans) {
  private static final int FIRST_FRAME = 0xC0;
  private static final int LAST_SEQUENTIAL = 0xC1;
  private static final int LAST_FRAME = 0xC3;
  private static final int START_OF_SCAN = 0xDA;
  private static final int END_OF_IMAGE = 0xD9;
  private static final int APP1 = 0xE1;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};
  private static final int CHUNK = 1 << 16;

  /**
   * Walks over the file, as far as needed to know both.
   *
   * @throws IOException where it can't be read; a file cut off ends the walk without one
   */
  static JpegSegments of(RandomAccessFile in) throws IOException {
    long exif = -1;
    int scans = 0;
    int components = 0;
    boolean progressive = false;
    try {
      in.seek(2);
      while (true) {
        int marker = nextMarker(in);
        if (marker == END_OF_IMAGE) {
          break;
        }
        long start = in.getFilePointer();
        int length = in.readUnsignedShort();
        if (marker == START_OF_SCAN) {
          scans++;
          if (!progressive && in.readUnsignedByte() == components) {
            break; // a sequential file with all its colours in the first scan: the usual case
          }
        } else if (marker >= FIRST_FRAME && marker <= LAST_FRAME) {
          progressive = marker > LAST_SEQUENTIAL;
          in.skipBytes(5);
          components = in.readUnsignedByte();
        } else if (marker == APP1 && exif < 0 && isExif(in)) {
          exif = start + 2 + EXIF.length;
        }
        in.seek(start + Math.max(2, length));
      }
    } catch (EOFException end) {
      return new JpegSegments(exif, scans); // decoding will tell that it is cut off
    }
    return new JpegSegments(exif, scans);
  }

  private static boolean isExif(RandomAccessFile in) throws IOException {
    for (byte expected : EXIF) {
      if (in.readByte() != expected) {
        return false;
      }
    }
    return true;
  }

  /** Skips coded data, in which 0xFF is followed by 0 or by a restart marker (D0 to D7). */
  private static int nextMarker(RandomAccessFile in) throws IOException {
    byte[] chunk = new byte[CHUNK];
    long base = in.getFilePointer();
    boolean afterFf = false;
    int count;
    while ((count = in.read(chunk)) > 0) {
      for (int i = 0; i < count; i++) {
        int value = chunk[i] & 0xFF;
        if (afterFf && value != 0 && value != 0xFF && !(value >= 0xD0 && value <= 0xD7)) {
          in.seek(base + i + 1);
          return value;
        }
        afterFf = value == 0xFF;
      }
      base += count;
    }
    throw new EOFException();
  }
}
