package org.relegend.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * The single steps of replacing a file. Apart, so that tests can let any of them fail, or end the
 * program after any of them.
 */
interface DiskOperations {
  /** Writes a new file, or over an old one, and waits until it is on the disk. */
  void write(Path file, byte[] content) throws IOException;

  /** Puts one file in the place of another, in one step that can't be seen half done. */
  void move(Path from, Path to) throws IOException;

  /** Waits until the folder's list of names is on the disk. */
  void forceFolder(Path folder) throws IOException;

  /** The disk of this computer. */
  DiskOperations REAL =
      new DiskOperations() {
        @Override
        public void write(Path file, byte[] content) throws IOException {
          try (FileChannel out =
              FileChannel.open(
                  file,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.WRITE,
                  StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
              out.write(rest);
            }
            out.force(true);
          }
        }

        @Override
        public void move(Path from, Path to) throws IOException {
          Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }

        @Override
        public void forceFolder(Path folder) throws IOException {
          if (WINDOWS) {
            return; // there a folder can't be opened, and moves are written through
          }
          try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
          }
        }
      };

  boolean WINDOWS = System.getProperty("os.name", "").startsWith("Windows");
}
