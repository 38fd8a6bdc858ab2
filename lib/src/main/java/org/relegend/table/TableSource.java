package org.relegend.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * The bytes of one table, with the name that messages use for it.
 *
 * @param bytes not copied: nobody changes them afterwards
 */
@SuppressWarnings("ArrayRecordComponent") // carried from the disk to the decoder, never compared
public record TableSource(String name, byte[] bytes) {
  /** Largest table taken: 16 MiB hold more than half a million pins. */
  public static final int MAX_BYTES = 16 << 20;

  /**
   * Reads a file.
   *
   * @throws TableException where it can't be read or is larger than any table
   */
  public static TableSource of(Path file) throws TableException {
    String name = String.valueOf(file.getFileName());
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        throw whole(name, "is larger than the %d MiB a table may have".formatted(MAX_BYTES >> 20));
      }
      return new TableSource(name, bytes);
    } catch (NoSuchFileException missing) {
      throw whole(file.toString(), "there is no such file");
    } catch (AccessDeniedException denied) {
      throw whole(file.toString(), "may not be read: check its permissions");
    } catch (IOException failed) {
      throw whole(file.toString(), "can't be read: " + failed.getMessage());
    }
  }

  private static TableException whole(String name, String message) {
    return new TableException(new TableProblem(name, 0, "", message));
  }
}
