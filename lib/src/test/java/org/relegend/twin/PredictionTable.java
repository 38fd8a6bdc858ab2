package org.relegend.twin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * How often the twins that aren't placed yet lie within their stated radius on the demo's component
 * photo, over all choices of four placed pairs; by the layout alone, without the photo's help.
 * Takes some minutes, so it is not part of the build. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.twin.PredictionTable"
 * </pre>
 */
public final class PredictionTable {
  private static final PictureId PHOTO = new PictureId("component");

  private final BoardMap map;
  private final TwinResult twins;
  private final Map<String, Point> truth = new HashMap<>();
  private final List<String> second = new ArrayList<>();
  private final LongAdder choices = new LongAdder();
  private final LongAdder places = new LongAdder();
  private final LongAdder inside = new LongAdder();
  private final LongAdder notTold = new LongAdder();

  private PredictionTable(Path demo) throws IOException, StoreException {
    map = MapFolder.openReadOnly(demo.resolve("map")).map();
    TwinSearch search = TwinSearch.of(Circuit.of(map));
    twins = search.from(List.of(), search.known());
    for (String line : Files.readAllLines(demo.resolve("truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("component") && cells[1].equals("body") && !cells[2].contains("/")) {
        truth.put(cells[2], new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
    truth.keySet().stream()
        .filter(name -> name.matches("\\D+2\\d\\d"))
        .filter(name -> !List.of("R225", "J203").contains(name))
        .sorted()
        .forEach(second::add);
  }

  /** Maven starts it in the module or at the root. */
  public static void main(String[] arguments) throws IOException, StoreException {
    Path here = Path.of("demo-data");
    PredictionTable table =
        new PredictionTable(Files.isDirectory(here) ? here : Path.of("..").resolve(here));
    table.all();
    System.out.printf(
        Locale.ROOT,
        "%d choices of four, %d without an answer; %d places, %.2f %% within their radius%n",
        table.choices.sum(),
        table.notTold.sum(),
        table.places.sum(),
        100.0 * table.inside.sum() / table.places.sum());
  }

  private void all() {
    int n = second.size();
    IntStream.range(0, n * n)
        .parallel()
        .filter(pair -> pair / n < pair % n)
        .forEach(
            pair -> {
              for (int k = pair % n + 1; k < n; k++) {
                for (int l = k + 1; l < n; l++) {
                  tryOut(
                      List.of(
                          second.get(pair / n),
                          second.get(pair % n),
                          second.get(k),
                          second.get(l)));
                }
              }
            });
  }

  private void tryOut(List<String> placed) {
    choices.increment();
    TwinPredictions result = TwinPredictions.on(with(placed), PHOTO, twins);
    if (result.all().isEmpty()) {
      notTold.increment();
    }
    for (TwinPredictions.Prediction place : result.all()) {
      Point at = truth.getOrDefault(map.nameOf(place.part()), new Point(-1e6, -1e6));
      places.increment();
      inside.add(place.at().distance(at) <= place.radius95() ? 1 : 0);
    }
  }

  /** All bodies of the first channel on the photo, and of the second only these. */
  private BoardMap with(List<String> placed) {
    List<Placement> kept = new ArrayList<>();
    map.parts()
        .forEach(
            part -> {
              String name = part.id().text();
              if (part.channel().equals("A") || placed.contains(name)) {
                kept.add(
                    new Placement(
                        PHOTO,
                        Subject.of(new PartId(name)),
                        truth.getOrDefault(name, new Point(0, 0)),
                        map.twins().at(0).evidence().get(0)));
              }
            });
    Collections.sort(kept, (a, b) -> a.key().compareTo(b.key()));
    return map.with(MapTables.PLACEMENTS, Table.of(kept));
  }
}
