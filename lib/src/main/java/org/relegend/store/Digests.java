package org.relegend.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 digests, as 64 small hexadecimal digits. */
public final class Digests {
  private Digests() {}

  public static String sha256(byte[] bytes) {
    return HexFormat.of().formatHex(algorithm().digest(bytes));
  }

  /**
   * The digest of a file's content, read in pieces.
   *
   * @throws StoreException where the file can't be read
   */
  public static String sha256(Path file) throws StoreException {
    MessageDigest digest = algorithm();
    byte[] piece = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
        digest.update(piece, 0, n);
      }
    } catch (IOException e) {
      throw DiskErrors.reading(e, file);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  static MessageDigest algorithm() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
