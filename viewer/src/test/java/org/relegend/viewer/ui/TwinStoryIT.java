package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;
import org.relegend.store.MapFolder;
import org.relegend.twin.TwinPredictions;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.mode.twins.ChannelComparison;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.SubjectQueries;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * At the real window, on the demo without its twins: from one pair to the channel, from four placed
 * pairs to the rest, the jump, and two channels side by side. The demo's own twins and places are
 * the truth.
 */
class TwinStoryIT {
  private static final PictureId TOP = new PictureId("component");

  /** Of channel B these stay on the photo. */
  private static final List<String> PLACED = List.of("R201", "R224", "U202", "C205");

  /** Lies in a zone that one of the tests draws. */
  private static final String DANGEROUS = "R216";

  /** Pairs of parts, sections and nets of the demo's two channels. */
  private static final int ALL = 71;

  @TempDir private Path folder;
  private final Map<String, Point> truth = new HashMap<>();

  @BeforeEach
  void knowTheTruth() throws IOException {
    Path places =
        Path.of(System.getProperty("relegend.root", ".."), "demo-data", "truth", "places.csv");
    for (String line : Files.readAllLines(places)) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("component") && cells[1].equals("body")) {
        truth.put(cells[2], new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
  }

  private Point at(String part) {
    return Optional.ofNullable(truth.get(part)).orElseThrow();
  }

  private Technician start(Theme theme, UnaryOperator<BoardMap> change) throws Exception {
    Path map = DemoCopy.into(folder);
    try (MapFolder opened = MapFolder.open(map)) {
      opened.save(change.apply(opened.map()));
    }
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    return Technician.start(Optional.of(map), settings, folder.resolve("cache"));
  }

  private static BoardMap twins(BoardMap map, List<String> parts) {
    List<TwinPair> kept =
        map.twins().stream().filter(pair -> parts.contains(pair.a().toString())).toList();
    return map.with(MapTables.TWINS, Table.of(kept));
  }

  private static void choose(Technician tech, String part) {
    tech.key("ctrl F");
    tech.type(part);
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
    tech.await(
        part, () -> tech.session().selection().subject().equals(Optional.of(Subject.parse(part))));
  }

  private static int rows(Technician tech, String list) {
    return tech.named(JList.class, list).getModel().getSize();
  }

  private static Notice.Kind lastNotice(Technician tech) {
    return tech.session().notice().orElseThrow().kind();
  }

  @Test
  void onePair_givesTheChannel_acceptedUndoneAndDoneAgain() throws Exception {
    try (Technician tech = start(Theme.LIGHT, map -> map.with(MapTables.TWINS, Table.empty()))) {
      choose(tech, "R101");
      tech.countAnew();
      tech.key("shift T");
      tech.awaitShown(JTextField.class, "whichtwin");
      tech.type("R201");
      tech.shoot("twin-said");
      tech.key("ENTER");
      tech.awaitShown(RowListPanel.class, "twins-area");
      JList<?> list = tech.named(JList.class, "twins");
      tech.await("what follows", () -> list.getModel().getSize() == ALL);
      assertThat(tech.session().map().twins()).hasSize(1);
      assertThat(tech.session().hand().evidence()).as("digits are text").isEqualTo(Evidence.SEEN);
      tech.shoot("twin-proposals");

      tech.key("D");
      tech.await("the mark", () -> tech.session().map().deviations().size() == 1);
      assertThat(tech.session().map().deviations().at(0).cause())
          .isEqualTo(ChannelDeviation.Cause.DESIGN);
      tech.key("shift C");
      tech.await("all of them", () -> tech.session().map().twins().size() == ALL);
      assertThat(tech.keys()).as("keys beside the name").isEqualTo(4);
      assertThat(tech.session().map().twins())
          .filteredOn(pair -> pair.a() instanceof Subject.OfPart)
          .hasSize(39)
          .allMatch(pair -> pair.b().toString().equals(pair.a().toString().replaceFirst("1", "2")));
      tech.await("only the difference left", () -> list.getModel().getSize() == 1);
      tech.shoot("twin-accepted");
      tech.key("ctrl Z");
      tech.await("undone", () -> tech.session().map().twins().size() == 1);
      assertThat(tech.session().notice().orElseThrow().arguments())
          .containsExactly("Accept 70 twins");
      tech.key("ctrl Y");
      tech.await("done again", () -> tech.session().map().twins().size() == ALL);
    }
  }

  @Test
  void wrongPair_isListedAsOneThatCantBe_andTakenBackByOneKey() throws Exception {
    try (Technician tech = start(Theme.LIGHT, map -> map.with(MapTables.TWINS, Table.empty()))) {
      choose(tech, "R110");
      tech.key("shift T");
      tech.awaitShown(JTextField.class, "whichtwin");
      tech.type("R211");
      tech.key("ENTER");
      tech.await(
          "the contradiction",
          () -> !tech.session().document().following().contradictions().isEmpty());
      tech.key("shift C");
      assertThat(lastNotice(tech)).isEqualTo(Notice.Kind.TWINS_CLASH);
      assertThat(tech.session().map().twins()).hasSize(1);
      tech.shoot("twin-contradiction");
      tech.key("DELETE");
      tech.await("taken back", () -> tech.session().map().twins().size() == 0);
    }
  }

  /** Channel B is bare but for four bodies, one of the others in a hazard zone. */
  private BoardMap fourPlaced(BoardMap map) {
    List<Attestation> seen = map.twins().at(0).evidence();
    Point at = at(DANGEROUS);
    HazardZone zone =
        new HazardZone(
            new ZoneId("drawn"),
            TOP,
            HazardZone.Kind.HOT,
            List.of(at.plus(-60, -60), at.plus(60, -60), at.plus(60, 60), at.plus(-60, 60)),
            "",
            seen);
    List<Placement> places =
        new ArrayList<>(
            map.placements().stream()
                .filter(place -> !place.picture().equals(TOP) || !isOfB(map, place.subject()))
                .toList());
    for (String part : PLACED) {
      places.add(new Placement(TOP, Subject.parse(part), 1, at(part), List.of(), seen));
    }
    return twins(map, List.of("R101"))
        .with(MapTables.ZONES, map.zones().with(zone))
        .with(MapTables.PLACEMENTS, Table.of(places));
  }

  private static boolean isOfB(BoardMap map, Subject subject) {
    return SubjectQueries.partOf(subject)
        .flatMap(map::part)
        .filter(part -> part.channel().equals("B"))
        .isPresent();
  }

  @Test
  void fourPlacedPairs_giveTheRest_acceptedRejectedAndAllAtOnce() throws Exception {
    try (Technician tech = start(Theme.DARK, this::fourPlaced)) {
      tech.key("ESCAPE");
      tech.countAnew();
      tech.key("J");
      tech.await("the ghosts", () -> tech.session().room(PredictedPlaces.class).all().size() == 35);
      assertThat(insideOf(tech)).as("within their circles").isGreaterThanOrEqualTo(33);
      tech.shoot("twin-ghosts");
      choose(tech, rowOf(tech, DANGEROUS));
      tech.key("ENTER");
      tech.dialog("caution");
      assertThat(tech.session().selection().subject()).isEmpty();
      tech.key("ctrl ENTER");
      tech.await(
          "the place",
          () -> tech.session().selection().subject().equals(Optional.of(Subject.parse(DANGEROUS))));
      tech.shoot("twin-ghost-chosen");
      tech.key("C");
      tech.await("placed", () -> place(tech, DANGEROUS).isPresent());
      assertThat(place(tech, DANGEROUS).orElseThrow().best()).isEqualTo(Evidence.INFERRED);
      String next =
          tech.session().room(PredictedPlaces.class).chosen().orElseThrow().part().toString();
      tech.key("DELETE");
      tech.await("rejected", () -> tech.session().room(PredictedPlaces.class).all().size() == 33);
      assertThat(place(tech, next)).isEmpty();
      tech.key("shift C");
      tech.await("all", () -> tech.session().room(PredictedPlaces.class).all().isEmpty());
      assertThat(tech.session().map().placements())
          .filteredOn(place -> place.best() == Evidence.INFERRED)
          .hasSize(34);
      assertThat(place(tech, next)).isEmpty();
      tech.shoot("twin-ghosts-accepted");
      tech.key("ctrl Z");
      tech.await("undone", () -> tech.session().room(PredictedPlaces.class).all().size() == 33);
    }
  }

  private int insideOf(Technician tech) {
    int inside = 0;
    for (TwinPredictions.Prediction ghost : tech.session().room(PredictedPlaces.class).all()) {
      Point at = truth.getOrDefault(ghost.part().toString(), new Point(-1e6, -1e6));
      inside += ghost.at().distance(at) <= ghost.radius95() ? 1 : 0;
    }
    return inside;
  }

  private static Optional<Placement> place(Technician tech, String part) {
    return tech.session().map().placements().find(new Placement.Key(TOP, Subject.parse(part), 1));
  }

  private static int rowOf(Technician tech, String part) {
    List<String> parts =
        tech.session().room(PredictedPlaces.class).all().stream()
            .map(ghost -> ghost.part().toString())
            .toList();
    return parts.indexOf(part);
  }

  private static void choose(Technician tech, int row) {
    JList<?> list = tech.named(JList.class, "ghosts");
    Technician.onEdt(
        () -> {
          list.setSelectedIndex(row);
          list.ensureIndexIsVisible(row);
          return true;
        });
    tech.await("the list's keyboard", list::isFocusOwner);
  }

  private static void takeAway(Technician tech, String part) {
    Placement.Key key = new Placement.Key(TOP, Subject.parse(part), 1);
    Technician.onEdt(() -> tech.session().document().apply(MapTables.PLACEMENTS.remove(key)));
  }

  /** A click on a ghost chooses it as well; with too few pairs placed, that is said. */
  @Test
  void ghostPointedAt_isChosen_andRejectedFromThePhoto_untilTooFewArePlaced() throws Exception {
    try (Technician tech = start(Theme.LIGHT, this::fourPlaced)) {
      tech.key("ESCAPE");
      tech.key("J");
      tech.await("the ghosts", () -> !tech.session().room(PredictedPlaces.class).all().isEmpty());
      TwinPredictions.Prediction ghost =
          tech.session().room(PredictedPlaces.class).all().stream()
              .filter(one -> one.part().equals(Subject.parse("C202")))
              .findFirst()
              .orElseThrow();
      tech.click(tech.panel().photo(), ghost.at());
      tech.await(
          "it chosen",
          () -> tech.session().room(PredictedPlaces.class).chosen().equals(Optional.of(ghost)));
      tech.key("DELETE");
      assertThat(tech.session().room(PredictedPlaces.class).all()).doesNotContain(ghost);
      assertThat(lastNotice(tech)).isEqualTo(Notice.Kind.GHOST_REJECTED);
      takeAway(tech, "R201");
      takeAway(tech, "R224");
      tech.await(
          "the reason why there are none",
          () ->
              tech.session()
                  .room(PredictedPlaces.class)
                  .text()
                  .filter(text -> text.contains("at least three"))
                  .isPresent());
      assertThat(rows(tech, "ghosts")).isZero();
    }
  }

  @Test
  void twinThatFollows_isOnTheCard_jumpedTo_andSeenBeside() throws Exception {
    try (Technician tech = start(Theme.LIGHT, map -> twins(map, List.of("R101")))) {
      choose(tech, "R115");
      tech.await(
          "the twin that follows",
          () -> tech.session().selection().card().flatMap(NodeCard::follows).isPresent());
      tech.shoot("twin-follows");
      tech.countAnew();
      tech.key("T");
      assertThat(tech.session().selection().focus()).contains(Subject.parse("R215"));
      assertThat(tech.keys()).isEqualTo(1);
      assertThat(tech.named(JLabel.class, "said").getText())
          .isEqualTo("R215 follows from R101 = R201");
      tech.key("T");
      assertThat(tech.session().selection().focus()).contains(Subject.parse("R115"));
      for (String[] pair : new String[][] {{"R115.1", "R215.1"}, {"A_VC1", "B_VC1"}}) {
        Subject from = Subject.parse(pair[0].contains("_") ? "net:" + pair[0] : pair[0]);
        Subject to = Subject.parse(pair[1].contains("_") ? "net:" + pair[1] : pair[1]);
        Technician.onEdt(
            () -> {
              tech.session().choose(from);
              return true;
            });
        tech.key("T");
        assertThat(tech.session().selection().subject()).contains(to);
      }
      sideBySide(tech);
    }
  }

  private void sideBySide(Technician tech) {
    choose(tech, "R115");
    tech.countAnew();
    tech.key("A");
    tech.await("two photos", () -> tech.session().room(ChannelComparison.class).isOn());
    assertThat(tech.keys()).isEqualTo(1);
    tech.shoot("twin-beside");
    assertBeside(tech, "R115", "R215");
    tech.drag(tech.panel().page(), at("R115").plus(150, 120), at("R115").plus(30, 40));
    assertBeside(tech, "R115", "R215");
    tech.key("PLUS");
    assertBeside(tech, "R115", "R215");
    tech.click(tech.panel().photo(), at("R215"));
    assertThat(tech.session().selection().subject()).contains(Subject.parse("R215"));
    assertBeside(tech, "R115", "R215");
    tech.key("RIGHT");
    tech.waitUntilIdle();
    tech.shoot("twin-beside-walked");
    tech.key("A");
    tech.await("the page again", () -> tech.session().desk().facing().isEmpty());
    assertThat(tech.named(JLabel.class, "page-title").getText()).startsWith("Signal path");
  }

  /** Both places as far from the middles of their panes, at one scale. */
  private void assertBeside(Technician tech, String left, String right) {
    tech.waitUntilIdle();
    ViewState a = view(tech.panel().page());
    ViewState b = view(tech.panel().photo());
    ScreenPoint at = a.toScreen(at(left));
    ScreenPoint twin = b.toScreen(at(right));
    assertThat(b.scale()).isCloseTo(a.scale(), within(1e-9));
    assertThat(twin.x() - b.width() / 2.0).isCloseTo(at.x() - a.width() / 2.0, within(0.5));
    assertThat(twin.y() - b.height() / 2.0).isCloseTo(at.y() - a.height() / 2.0, within(0.5));
  }

  private static ViewState view(PicturePane pane) {
    return Technician.onEdt(() -> pane.canvas().view().orElseThrow());
  }
}
