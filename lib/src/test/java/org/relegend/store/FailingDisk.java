package org.relegend.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.Function;

/** A disk on which one step of writing fails, half done, as on a full disk. */
final class FailingDisk implements DiskOperations {
  static final Function<Path, IOException> FULL =
      path -> new FileSystemException(path.toString(), null, "No space left on device");
  static final Function<Path, IOException> NO_RIGHTS =
      path -> new AccessDeniedException(path.toString());

  private final int failing;
  private final Function<Path, IOException> trouble;
  private int step;

  /**
   * @param failing which step fails, from 1
   */
  FailingDisk(int failing, Function<Path, IOException> trouble) {
    this.failing = failing;
    this.trouble = trouble;
  }

  /** How many steps were asked for. */
  int steps() {
    return step;
  }

  private boolean fails() {
    return ++step == failing;
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    if (fails()) {
      Files.write(file, Arrays.copyOf(content, content.length / 2));
      throw trouble.apply(file);
    }
    REAL.write(file, content);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    if (fails()) {
      throw trouble.apply(to);
    }
    REAL.move(from, to);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    if (fails()) {
      throw trouble.apply(folder);
    }
    REAL.forceFolder(folder);
  }
}
