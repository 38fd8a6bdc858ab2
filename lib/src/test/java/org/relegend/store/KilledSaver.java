package org.relegend.store;

import java.io.IOException;
import java.nio.file.Path;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;

/** The program that the kill test kills: saves two versions of a map in turn, until the end. */
final class KilledSaver {
  private KilledSaver() {}

  /** Versions of very different length, so that a mixture of the two can't be whole. */
  static BoardMap version(int number) {
    return BoardMapSamples.generated(number, 40 + 400 * number, 2);
  }

  public static void main(String[] args) throws StoreException, IOException {
    BoardMap[] versions = {version(0), version(1)};
    try (MapFolder folder = MapFolder.open(Path.of(args[0]))) {
      int next = folder.map().equals(versions[0]) ? 1 : 0;
      for (boolean told = false; ; told = true) {
        folder.save(versions[next]);
        next = 1 - next;
        if (!told) {
          System.out.write('s');
          System.out.flush();
        }
      }
    }
  }
}
