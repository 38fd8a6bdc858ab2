package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.viewer.ui.DrawnBoard.TOP;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.MapFolder;
import org.relegend.viewer.mode.place.PlaceTool;

/** The whole job at the real window: place, trace, look, compare, undo, save, reopen. */
class WorkIT {
  @TempDir private Path folder;

  @Test
  void tenParts_fourteenPins_aNet_itsNode_itsTwin_undoneAndRedone_savedAndReopened()
      throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), false);
    BoardMap worked;
    BoardMap before;
    try (Technician tech = start(map)) {
      before = tech.session().map();
      placeTenParts(tech);
      placeFourteenPins(tech);
      traceANet(tech);
      worked = tech.session().map();
      lookAtTheNode(tech);
      undoAndRedoAll(tech, before, worked);
      tech.key("ctrl S");
      tech.await("all to be saved", () -> keeping(tech) instanceof MapAutosave.State.Saved);
    }
    try (Technician again = start(map)) {
      assertThat(again.session().map()).isEqualTo(worked);
    }
    try (MapFolder onDisk = MapFolder.openReadOnly(map)) {
      assertThat(onDisk.map()).isEqualTo(worked);
    }
  }

  private Technician start(Path map) throws Exception {
    return Technician.start(
        Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"));
  }

  private static MapAutosave.State keeping(Technician tech) {
    return tech.window().sitting().orElseThrow().keeping().state();
  }

  private static List<String> twoPinParts(BoardMap map) {
    return map.parts().stream()
        .filter(part -> part.pins().size() == 2)
        .map(Part::designator)
        .map(Designator::text)
        .toList();
  }

  /** Each takes the typing of its name, and one click; the next names are offered. */
  private static void placeTenParts(Technician tech) {
    List<String> parts = new ArrayList<>(twoPinParts(tech.session().map()));
    assertThat(parts).hasSize(10);
    tech.key("ctrl F");
    tech.key("ESCAPE");
    tech.key("P");
    tech.type(parts.get(0));
    tech.countAnew();
    for (String part : parts) {
      tech.await(
          "the offer of " + part, () -> tech.session().room(PlaceTool.class).text().equals(part));
      tech.click(tech.panel().photo(), DrawnBoard.at(part));
    }
    assertThat(tech.clicks()).isEqualTo(10);
    assertThat(tech.keys()).isZero();
    for (String part : parts) {
      Point at = placed(tech, part).at();
      assertThat(at.distance(DrawnBoard.at(part))).as("error of " + part).isLessThan(8);
    }
  }

  private static Placement placed(Technician tech, String subject) {
    return tech.session()
        .map()
        .placements()
        .find(new Placement.Key(TOP, Subject.parse(subject), 1))
        .orElseThrow(() -> new AssertionError(subject + " is not placed"));
  }

  private static void placeFourteenPins(Technician tech) {
    Point body = DrawnBoard.at("U101");
    tech.key("ESCAPE");
    tech.key("shift P");
    tech.type("U101");
    tech.countAnew();
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 0));
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 13));
    assertThat(tech.clicks()).isEqualTo(2);
    assertThat(tech.keys()).isZero();
    for (int pin = 1; pin <= 14; pin++) {
      Point wanted = DrawnBoard.pinOfArray(body, pin - 1);
      assertThat(placed(tech, "U101." + pin).at().distance(wanted))
          .as("error of pin " + pin)
          .isLessThan(16);
    }
  }

  private static void traceANet(Technician tech) {
    tech.key("ESCAPE");
    tech.key("N");
    tech.type("X9");
    tech.key("ENTER");
    Point body = DrawnBoard.at("U101");
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 4));
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 5));
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 8));
    assertThat(tech.session().map().net(new NetId("X9")).orElseThrow().pins())
        .extracting(Object::toString)
        .containsExactly("U101.5", "U101.6", "U101.9");
    assertThat(tech.session().selection().strip().cards()).hasSize(3);
    tech.key("ESCAPE");
  }

  private static void lookAtTheNode(Technician tech) {
    Point body = DrawnBoard.at("U101");
    tech.countAnew();
    tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 1));
    assertThat(tech.clicks()).isEqualTo(1);
    assertThat(tech.session().selection().strip().cards())
        .extracting(card -> card.subject().toString())
        .containsExactly("C102.-", "R104.1", "U101.2");
    assertThat(tech.session().selection().cursor()).isEqualTo(2);
    tech.key("LEFT");
    tech.key("LEFT");
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C102.-"));
    tech.countAnew();
    tech.key("T");
    assertThat(tech.keys()).isEqualTo(1);
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C202.-"));
    tech.key("T");
    assertThat(tech.session().selection().focus()).contains(Subject.parse("C102.-"));
  }

  private static void undoAndRedoAll(Technician tech, BoardMap before, BoardMap worked) {
    int steps = 0;
    while (tech.session().document().undoLabel().isPresent()) {
      tech.key("ctrl Z");
      steps++;
      assertThat(steps).isLessThan(100);
    }
    assertThat(tech.session().map()).isEqualTo(before);
    assertThat(steps).isEqualTo(10 + 1 + 3);
    while (tech.session().document().redoLabel().isPresent()) {
      tech.key("ctrl Y");
    }
    assertThat(tech.session().map()).isEqualTo(worked);
  }
}
