package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.relegend.map.Designator;

/** The program that {@link KilledViewerIT} kills: a real window in which parts are placed. */
final class KilledViewer {
  private KilledViewer() {}

  /**
   * @param args the map's folder, a folder for the cache, and the parts to place
   */
  public static void main(String[] args) throws Exception {
    Technician tech =
        Technician.start(
            Optional.of(Path.of(args[0])), ViewerPreferences.inMemory(), Path.of(args[1]));
    tech.key("ctrl F");
    tech.key("ESCAPE");
    tech.key("P");
    for (int i = 2; i < args.length; i++) {
      Designator part = new Designator(args[i]);
      tech.type(part.text());
      tech.click(tech.panel().photo(), DrawnBoard.at(part.text()));
      System.out.println("placed " + part);
    }
    Thread.currentThread().join();
  }
}
