package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.store.MapFolder;

/** Predictions on the demo's photo, against the places that the demo's truth tells. */
class PredictCommandTest {
  private static final Path DEMO =
      Path.of(System.getProperty("relegend.root", "..")).resolve("demo-data/map");
  private static final PictureId PHOTO = new PictureId("component");

  private final Shell shell = new Shell();
  private final Map<String, Point> truth = new HashMap<>();
  @TempDir private Path temp = Path.of("");

  PredictCommandTest() throws IOException {
    for (String line : Files.readAllLines(DEMO.resolveSibling("truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("component") && cells[1].equals("body") && !cells[2].contains("/")) {
        truth.put(cells[2], new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
  }

  /** The demo's map with all bodies of channel A on the photo, and of B only these. */
  private Path copy(List<String> placed, boolean withPhoto) throws Exception {
    Path folder = Files.createTempDirectory(temp, "map");
    Files.copy(DEMO.resolve("map.json"), folder.resolve("map.json"));
    if (withPhoto) {
      Files.createDirectory(folder.resolve("photos"));
      Files.copy(DEMO.resolve("photos/component.jpg"), folder.resolve("photos/component.jpg"));
    }
    try (MapFolder opened = MapFolder.open(folder)) {
      BoardMap map = opened.map();
      List<Placement> kept = new ArrayList<>();
      for (Part part : map.parts()) {
        String name = part.id().text();
        if (part.channel().equals("A") || placed.contains(name)) {
          Subject subject = Subject.of(part.id());
          Point at = truth.getOrDefault(name, new Point(0, 0));
          kept.add(new Placement(PHOTO, subject, at, map.twins().at(0).evidence().get(0)));
        }
      }
      opened.save(map.with(MapTables.PLACEMENTS, Table.of(kept)));
    }
    return folder;
  }

  private int inside(JsonNode predictions) {
    int inside = 0;
    for (JsonNode place : predictions) {
      Point at = truth.getOrDefault(place.get("part").asText(), new Point(-1e6, -1e6));
      double off =
          Math.hypot(place.get("x").asDouble() - at.x(), place.get("y").asDouble() - at.y());
      inside += off <= place.get("radius95").asDouble() ? 1 : 0;
    }
    return inside;
  }

  /** Over choices of four placed pairs, 95 of 100 predicted places hold what they state. */
  @Test
  void fromFourPlacedPairs_theRestLiesWithinItsRadius() throws Exception {
    List<String> twins = new ArrayList<>(truth.keySet());
    twins.removeIf(name -> !name.matches("\\D+2\\d\\d") || List.of("R225", "J203").contains(name));
    Collections.sort(twins);
    int inside = 0;
    int all = 0;
    for (int run = 0; run < 12; run++) {
      Collections.shuffle(twins, new Random(run));
      Path map = copy(twins.subList(0, 4), false);
      Shell.Run result = shell.run("predict", map, "--photo", "component", "--json");
      assertThat(result.code()).as(result.err()).isZero();
      JsonNode predictions = Schemas.valid("predict", result.out()).get("predictions");
      assertThat(predictions).hasSize(twins.size() - 4);
      inside += inside(predictions);
      all += predictions.size();
    }
    assertThat((double) inside / all).isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void thePhoto_bringsPlacesNearer() throws Exception {
    List<String> placed = List.of("R201", "R224", "U202", "C205");
    JsonNode blind =
        Schemas.valid(
                "predict",
                shell.run("predict", copy(placed, false), "--photo", "component", "--json").out())
            .get("predictions");
    JsonNode seen =
        Schemas.valid(
                "predict",
                shell.run("predict", copy(placed, true), "--photo", "component", "--json").out())
            .get("predictions");
    assertThat(off(seen)).isLessThan(0.8 * off(blind));
  }

  private double off(JsonNode predictions) {
    double sum = 0;
    for (JsonNode place : predictions) {
      Point at = truth.getOrDefault(place.get("part").asText(), new Point(-1e6, -1e6));
      sum += Math.hypot(place.get("x").asDouble() - at.x(), place.get("y").asDouble() - at.y());
    }
    return sum / predictions.size();
  }

  @Test
  void tooLittlePlaced_andUnknownPhotos_areToldInOneLine() throws Exception {
    Path map = copy(List.of("R201"), false);
    Shell.Run few = shell.run("predict", map, "--photo", "component");
    assertThat(few.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(few.out()).contains("Place at least three pairs of twins (there are 1)");
    Shell.Run page = shell.run("predict", map, "--photo", "page-1");
    assertThat(page.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(page.err()).contains("no photo \"page-1\": its photos are component, solder");
    Shell.Run none = shell.run("predict", map);
    assertThat(none.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(none.err()).contains("--photo");
  }
}
