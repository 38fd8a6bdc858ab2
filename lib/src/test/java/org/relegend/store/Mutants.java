package org.relegend.store;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;

/** Files with small damage, as disks, editors and mail programs do it, drawn from a seed. */
final class Mutants {
  private static final byte[] TELLING =
      "{}[]\",:0-9eE.\\untfl\n \0\u007f".getBytes(StandardCharsets.ISO_8859_1);

  private Mutants() {}

  /** The bytes with one to three places damaged. */
  static byte[] of(byte[] bytes, Random random) {
    byte[] result = bytes;
    for (int i = random.nextInt(3); i >= 0; i--) {
      result = damaged(result, random);
    }
    return result;
  }

  private static byte[] damaged(byte[] bytes, Random random) {
    if (bytes.length < 2) {
      return bytes;
    }
    int from = random.nextInt(bytes.length);
    int length = Math.min(bytes.length - from, 1 + random.nextInt(60));
    byte[] copy = bytes.clone();
    return switch (random.nextInt(6)) {
      case 0 -> Arrays.copyOf(bytes, from);
      case 1 -> {
        copy[from] ^= (byte) (1 << random.nextInt(8));
        yield copy;
      }
      case 2 -> {
        copy[from] = TELLING[random.nextInt(TELLING.length)];
        yield copy;
      }
      case 3 -> {
        Arrays.fill(copy, from, from + length, (byte) 0);
        yield copy;
      }
      case 4 -> spliced(bytes, from, from + length, 0);
      default -> spliced(bytes, from, from, length);
    };
  }

  /** Takes out what stands from {@code from} to {@code to}, or doubles {@code again} bytes. */
  private static byte[] spliced(byte[] bytes, int from, int to, int again) {
    byte[] result = new byte[bytes.length - (to - from) + again];
    System.arraycopy(bytes, 0, result, 0, from);
    System.arraycopy(bytes, from, result, from, again);
    System.arraycopy(bytes, to, result, from + again, bytes.length - to);
    return result;
  }
}
