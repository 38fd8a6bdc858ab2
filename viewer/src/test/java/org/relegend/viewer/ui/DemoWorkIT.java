package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.Box;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * Ten parts and an array of 14 pins are placed on the demo's photo at the real window, where its
 * own map has them; then a net is traced and a node looked at, and all is undone and redone.
 */
class DemoWorkIT {
  private static final PictureId TOP = new PictureId("component");
  private static final List<String> TEN =
      List.of("R101", "R102", "R103", "R104", "R105", "R106", "C101", "C102", "C103", "Q101");

  /**
   * Pixels of the photo to a millimetre of the board, roughly: 4000 pixels for 250 mm and a rim.
   */
  private static final double PIXELS_PER_MM = 14;

  @TempDir private Path folder;

  @Test
  void tenParts_anArray_aNet_itsNode_itsTwin_undoneAndRedone_savedAndReopened() throws Exception {
    Path map = DemoCopy.into(folder);
    BoardMap truth = withoutPlaces(map);
    BoardMap worked;
    try (Technician tech = start(map)) {
      BoardMap before = tech.session().map();
      tech.key("ctrl F");
      tech.key("ESCAPE");
      placeTenParts(tech, truth);
      placeTheArray(tech, truth);
      traceANet(tech);
      worked = tech.session().map();
      lookAtTheNode(tech);
      undoAll(tech);
      assertThat(tech.session().map()).isEqualTo(before);
      while (tech.session().document().redoLabel().isPresent()) {
        tech.key("ctrl Y");
      }
      assertThat(tech.session().map()).isEqualTo(worked);
      tech.key("ctrl S");
      tech.await(
          "all to be saved",
          () ->
              tech.window().sitting().orElseThrow().keeping().state()
                  instanceof MapAutosave.State.Saved);
    }
    try (Technician again = start(map)) {
      assertThat(again.session().map()).isEqualTo(worked);
    }
  }

  private Technician start(Path map) throws Exception {
    return Technician.start(
        Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"));
  }

  /** Takes away the places that are to be set anew, and gives the map that had them. */
  private static BoardMap withoutPlaces(Path folder) throws StoreException {
    try (MapFolder map = MapFolder.open(folder)) {
      BoardMap truth = map.map();
      BoardMap bare = truth;
      for (Placement placement : truth.placements()) {
        String part = placement.subject().toString().split("\\.")[0];
        boolean gone = TEN.contains(part) || part.equals("U101");
        if (placement.picture().equals(TOP) && gone) {
          bare = bare.with(MapTables.PLACEMENTS, bare.placements().without(placement.key()));
        }
      }
      map.save(bare);
      return truth;
    }
  }

  private static Point place(BoardMap map, String subject) {
    return map.placements()
        .find(new Placement.Key(TOP, Subject.parse(subject), 1))
        .map(Placement::at)
        .orElseThrow(() -> new AssertionError(subject + " is not placed"));
  }

  private static void goNear(Technician tech, List<Point> points) {
    Technician.onEdt(
        () -> {
          tech.panel().photo().canvas().zoomTo(Box.around(points).grown(60));
          return true;
        });
  }

  private static void placeTenParts(Technician tech, BoardMap truth) {
    goNear(tech, TEN.stream().map(part -> place(truth, part)).toList());
    tech.key("P");
    tech.countAnew();
    for (String part : TEN) {
      tech.type(part);
      tech.click(tech.panel().photo(), place(truth, part));
    }
    assertThat(tech.clicks()).isEqualTo(TEN.size());
    assertThat(tech.keys()).isZero();
    for (String part : TEN) {
      assertThat(place(tech.session().map(), part).distance(place(truth, part)))
          .as("error of " + part)
          .isLessThan(PIXELS_PER_MM / 2);
    }
    tech.shoot("demo-placing");
  }

  private static void placeTheArray(Technician tech, BoardMap truth) {
    List<String> pins = IntStream.rangeClosed(1, 14).mapToObj(pin -> "U101." + pin).toList();
    goNear(tech, pins.stream().map(pin -> place(truth, pin)).toList());
    tech.key("ESCAPE");
    tech.key("shift P");
    tech.type("U101");
    tech.countAnew();
    tech.click(tech.panel().photo(), place(truth, "U101.1"));
    tech.click(tech.panel().photo(), place(truth, "U101.14"));
    assertThat(tech.clicks()).isEqualTo(2);
    assertThat(tech.keys()).isZero();
    for (String pin : pins) {
      assertThat(place(tech.session().map(), pin).distance(place(truth, pin)))
          .as("error of " + pin)
          .isLessThan(PIXELS_PER_MM);
    }
    tech.key("ESCAPE");
  }

  /** Every pin of the array is on a net already: for each it asks, and moves the pin. */
  private static void traceANet(Technician tech) {
    tech.key("N");
    tech.type("X9");
    tech.key("ENTER");
    for (String pin : List.of("U101.2", "U101.4")) {
      tech.click(tech.panel().photo(), place(tech.session().map(), pin));
      tech.await("the question", () -> tech.session().question().isPresent());
      tech.key("M"); // moves the pin, its other net stays
      tech.await("the answer", () -> tech.session().question().isEmpty());
    }
    assertThat(tech.session().map().net(new NetId("X9")).orElseThrow().pins())
        .extracting(Object::toString)
        .containsExactly("U101.2", "U101.4");
    tech.key("ESCAPE");
  }

  private static void lookAtTheNode(Technician tech) {
    Placement onPage =
        tech.session()
            .map()
            .placements()
            .find(new Placement.Key(new PictureId("page-1"), Subject.parse("C102.-"), 1))
            .orElseThrow();
    tech.countAnew();
    tech.click(tech.panel().page(), onPage.at());
    assertThat(tech.clicks()).isEqualTo(1);
    assertThat(cards(tech)).containsExactlyInAnyOrder("C102.-", "R106.1");
    tech.key("RIGHT");
    assertThat(tech.session().selection().focus()).contains(Subject.parse("R106.1"));
    tech.key("LEFT");
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C102.-"));
    tech.countAnew();
    tech.key("T");
    assertThat(tech.keys()).isEqualTo(1);
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C202.-"));
    tech.key("T");
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C102.-"));
  }

  private static List<String> cards(Technician tech) {
    return tech.session().selection().strip().cards().stream()
        .map(card -> card.subject().toString())
        .toList();
  }

  private static void undoAll(Technician tech) {
    int steps = 0;
    while (tech.session().document().undoLabel().isPresent()) {
      tech.key("ctrl Z");
      steps++;
      assertThat(steps).isLessThan(21);
    }
    assertThat(steps).isEqualTo(TEN.size() + 1 + 2);
  }
}
