package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.relegend.map.BoardMap;

/** The program that the kill test kills: saves two versions of a map in turn, until the end. */
final class KilledSaver {
  private KilledSaver() {}

  /**
   * @param args the map's folder, and the files of the two versions
   */
  public static void main(String[] args) throws StoreException, IOException {
    BoardMap[] versions = {read(args[1]), read(args[2])};
    try (MapFolder folder = MapFolder.open(Path.of(args[0]))) {
      int next = folder.map().equals(versions[0]) ? 1 : 0;
      for (boolean stated = false; ; stated = true) {
        folder.save(versions[next]);
        next = 1 - next;
        if (!stated) {
          System.out.write('s');
          System.out.flush();
        }
      }
    }
  }

  private static BoardMap read(String file) throws StoreException, IOException {
    return MapFormat.read(Files.readAllBytes(Path.of(file)), Path.of(file));
  }
}
