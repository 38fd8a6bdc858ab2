package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** What a technician asks of the demo instrument, at the real window, with the demo's figures. */
class DemoStoriesIT {
  private static final PictureId PAGE = new PictureId("page-1");
  private static final PictureId TOP = new PictureId("component");
  private static final PictureId BOTTOM = new PictureId("solder");

  @TempDir private Path folder;
  private Path map = Path.of("");

  @BeforeEach
  void copyOfTheDemo() throws IOException {
    map = DemoCopy.into(folder);
  }

  private Technician start(Theme theme) throws Exception {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    return Technician.start(Optional.of(map), settings, folder.resolve("cache"));
  }

  private static Placement placed(Technician tech, PictureId picture, String subject) {
    return tech.session()
        .map()
        .placements()
        .find(new Placement.Key(picture, Subject.parse(subject), 1))
        .orElseThrow(() -> new AssertionError(subject + " is not placed on " + picture));
  }

  private static List<String> cards(Technician tech) {
    return tech.session().selection().strip().cards().stream()
        .map(card -> card.subject().toString())
        .toList();
  }

  private static void find(Technician tech, String text) {
    tech.key("ctrl F");
    tech.type(text);
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
  }

  @Test
  void node_clickedOnThePage_marksExactlyItsPinsOnBothPictures() throws Exception {
    try (Technician tech = start(Theme.LIGHT)) {
      tech.click(tech.panel().page(), placed(tech, PAGE, "C102.-").at());
      assertThat(cards(tech)).containsExactlyInAnyOrder("C102.-", "R106.1");
      assertThat(tech.clicks()).isEqualTo(1);
      for (String pin : cards(tech)) {
        assertThat(placed(tech, PAGE, pin).at()).isNotNull();
        assertThat(placed(tech, TOP, pin).at()).isNotNull();
      }
      find(tech, "A_MIR");
      tech.await("the node", () -> cards(tech).size() == 5);
      assertThat(cards(tech))
          .containsExactlyInAnyOrder("U101.6", "U101.9", "U101.11", "U101.14", "R112.2");
    }
  }

  /** The body lies at (176, 27) mm of the board, as the demo's layout table has it. */
  @Test
  void body_clickedOnThePhoto_tellsItsNameValueAndNets() throws Exception {
    try (Technician tech = start(Theme.LIGHT)) {
      tech.click(tech.panel().photo(), placed(tech, TOP, "R111").at());
      assertThat(tech.session().selection().subject()).contains(Subject.parse("R111"));
      List<String> nets = new ArrayList<>();
      tech.session()
          .selection()
          .strip()
          .groups()
          .forEach(group -> group.net().ifPresent(net -> nets.add(net.text())));
      assertThat(nets).containsExactlyInAnyOrder("VP", "A_VC2");
      assertThat(cards(tech)).first().isEqualTo("R111");
    }
  }

  @Test
  void twinKey_goesThereAndBackAtTheSameZoom_andSaysWhereThereIsNone() throws Exception {
    try (Technician tech = start(Theme.LIGHT)) {
      find(tech, "C102");
      tech.await("C102", () -> tech.session().selection().focus().equals(subject("C102")));
      double zoom = zoom(tech);
      tech.countAnew();
      tech.key("T");
      assertThat(tech.keys()).isEqualTo(1);
      assertThat(tech.session().selection().focus()).isEqualTo(subject("C202"));
      assertThat(zoom(tech)).isEqualTo(zoom);
      tech.key("T");
      assertThat(tech.session().selection().focus()).isEqualTo(subject("C102"));
      assertThat(zoom(tech)).isEqualTo(zoom);
      find(tech, "R225");
      tech.await("R225", () -> tech.session().selection().focus().equals(subject("R225")));
      tech.key("T");
      Notice notice = tech.session().notice().orElseThrow();
      assertThat(notice.kind().toString().toLowerCase(Locale.ROOT)).contains("twin");
      assertThat(tech.session().selection().focus()).isEqualTo(subject("R225"));
    }
  }

  private static Optional<Subject> subject(String text) {
    return Optional.of(Subject.parse(text));
  }

  private static double zoom(Technician tech) {
    tech.waitUntilIdle();
    return Technician.onEdt(() -> tech.panel().photo().canvas().view().orElseThrow().scale());
  }

  /** Seen from above pins count anticlockwise, seen from below clockwise: common practice. */
  @Test
  void pins_countTheOtherWayRoundOnTheSolderSide() throws Exception {
    try (Technician tech = start(Theme.LIGHT)) {
      assertThat(turnOnScreen(tech, TOP)).as("component side, y downwards").isNegative();
      Technician.onEdt(
          () -> {
            tech.session().desk().show(BOTTOM);
            return true;
          });
      tech.waitUntilIdle();
      tech.await(
          "the solder side", () -> tech.session().desk().photo().orElseThrow().id().equals(BOTTOM));
      assertThat(turnOnScreen(tech, BOTTOM)).as("solder side, y downwards").isPositive();
    }
  }

  /** Twice the signed area of U102's pins in order, as they lie on the screen. */
  private static double turnOnScreen(Technician tech, PictureId picture) {
    List<ScreenPoint> pins = new ArrayList<>();
    ViewState view = Technician.onEdt(() -> tech.panel().photo().canvas().view().orElseThrow());
    for (int pin = 1; pin <= 8; pin++) {
      Point at = placed(tech, picture, "U102." + pin).at();
      pins.add(view.toScreen(at));
    }
    double area = 0;
    for (int i = 0; i < pins.size(); i++) {
      ScreenPoint a = pins.get(i);
      ScreenPoint b = pins.get((i + 1) % pins.size());
      area += a.x() * b.y() - b.x() * a.y();
    }
    return area;
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void screens(Theme theme) throws Exception {
    String look = "-" + theme.name().toLowerCase(Locale.ROOT);
    try (Technician tech = start(theme)) {
      tech.shoot("demo-open" + look);
      find(tech, "A_ATT");
      tech.await("the node", () -> cards(tech).size() == 2);
      tech.shoot("demo-node" + look);
      find(tech, "C102");
      tech.await("C102", () -> tech.session().selection().focus().equals(subject("C102")));
      tech.key("T");
      tech.shoot("demo-twin" + look);
      find(tech, "F1");
      tech.dialog("caution");
      tech.shoot("demo-caution" + look);
      tech.key("ctrl ENTER");
      tech.await("the place", () -> tech.session().selection().focus().equals(subject("F1")));
      tech.shoot("demo-hazard" + look);
    }
  }
}
