package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JList;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.check.FindingsPanel;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** At the real window: no way to a place in a hazard zone but past its caution; no hiding it. */
class HazardStoryIT {
  private static final PictureId TOP = new PictureId("component");
  private static final PictureId SUPPLY = new PictureId("page-2");

  private static final PictureId BELOW = new PictureId("solder");

  @TempDir private Path folder;

  /** A way to a place in a zone, at keyboard and pointer. */
  interface Way {
    void go(Technician tech);
  }

  private Technician atTheDemo(ViewerPreferences settings) throws Exception {
    return Technician.start(Optional.of(DemoCopy.into(folder)), settings, folder.resolve("cache"));
  }

  private static Placement placed(Technician tech, PictureId picture, String subject) {
    return tech.session()
        .map()
        .placements()
        .find(new Placement.Key(picture, Subject.parse(subject), 1))
        .orElseThrow(() -> new AssertionError(subject + " is not placed on " + picture));
  }

  private static void find(Technician tech, String text) {
    tech.key("ctrl F");
    tech.type(text);
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
  }

  static Stream<Named<Way>> ways() {
    return Stream.of(
        Named.of(
            "a click on the body",
            tech -> tech.click(tech.panel().photo(), placed(tech, TOP, "F1").at())),
        Named.of(
            "a click on the pad",
            tech -> tech.click(tech.panel().photo(), placed(tech, TOP, "F1.2").at())),
        Named.of(
            "a click on the page",
            tech -> {
              Technician.onEdt(
                  () -> {
                    tech.session().desk().show(SUPPLY);
                    return true;
                  });
              tech.click(tech.panel().page(), placed(tech, SUPPLY, "F1.1").at());
            }),
        Named.of(
            "a click on bare board inside the zone",
            tech -> tech.click(tech.panel().photo(), bareBoard(tech))),
        Named.of("find, by the part's name", tech -> find(tech, "F1")),
        Named.of("find, by the net's name", tech -> find(tech, "MAINS_L_FUSED")),
        Named.of("a finding", HazardStoryIT::openFindingOfMains),
        Named.of(
            "a band drawn with Shift",
            tech ->
                tech.dragShifted(
                    tech.panel().photo(), bareBoard(tech), placed(tech, TOP, "F1").at())));
  }

  /** The wheel over a zone: as soon as it is looked at closely, the caution stands before it. */
  @Test
  void theWheel_theDrag_andTheKeys_meetTheCautionBeforeTheZoneIsNear() throws Exception {
    try (Technician tech = atTheDemo(ViewerPreferences.inMemory())) {
      Point inside = placed(tech, TOP, "F1").at();
      double whole = view(tech).scale();
      tech.moveTo(tech.panel().photo(), inside);
      for (int notch = 0; notch < 12 && tech.find("caution").isEmpty(); notch++) {
        tech.wheel(-1);
      }
      tech.dialog("caution");
      assertThat(view(tech).scale()).isLessThan(2 * whole);
      tech.key("ESCAPE");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      double before = view(tech).scale();
      tech.wheel(-1);
      tech.dialog("caution");
      assertThat(view(tech).scale()).isEqualTo(before);
      tech.key("ctrl ENTER");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      tech.await(
          "the zoom", () -> tech.panel().photo().canvas().view().orElseThrow().scale() > before);
      tech.wheel(-1);
      tech.waitUntilIdle();
      assertThat(tech.find("caution")).isEmpty();
    }
  }

  /** Enter typed for something else, once or often, and letters: none of them says "read". */
  @Test
  void strayKeys_doNotSayThatTheCautionWasRead() throws Exception {
    try (Technician tech = atTheDemo(ViewerPreferences.inMemory())) {
      find(tech, "F1");
      tech.dialog("caution");
      tech.shoot("hazard-caution");
      for (String key : new String[] {"ENTER", "R", "SPACE", "ENTER", "Y", "F1"}) {
        tech.key(key);
        tech.waitUntilIdle();
        assertThat(tech.find("caution")).as("after " + key).isPresent();
      }
      tech.key("ESCAPE");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      assertThat(tech.session().selection().subject()).isEmpty();
    }
  }

  /** The zone proposed around unmarked mains puts the finding right; it can be undone. */
  @Test
  void findingOfUnmarkedMains_isPutRightByOneKey() throws Exception {
    try (Technician tech = atTheDemo(ViewerPreferences.inMemory())) {
      openFindingOfMains(tech);
      tech.dialog("caution");
      tech.key("ctrl ENTER");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      JList<?> list = tech.named(JList.class, "findings");
      Technician.onEdt(list::requestFocusInWindow);
      tech.waitUntilIdle();
      tech.key("M");
      tech.await("the zone", () -> findMainsOn(tech, BELOW).isPresent());
      tech.await(
          "no finding of it",
          () ->
              list.getModel().getSize() == 0
                  || !(list.getModel().getElementAt(0) instanceof Finding first)
                  || first.severity() != Severity.ERROR);
      tech.shoot("hazard-proposed");
      tech.key("ctrl Z");
      tech.await("no zone again", () -> findMainsOn(tech, BELOW).isEmpty());
    }
  }

  private static Optional<HazardZone> findMainsOn(Technician tech, PictureId picture) {
    return tech.session().map().zones().stream()
        .filter(z -> z.picture().equals(picture) && z.kind() == HazardZone.Kind.MAINS)
        .findFirst();
  }

  private static HazardZone mainsOn(Technician tech, PictureId picture) {
    return findMainsOn(tech, picture)
        .orElseThrow(() -> new AssertionError("no mains zone on " + picture));
  }

  /** A place in the zone with nothing near it. */
  private static Point bareBoard(Technician tech) {
    HazardZone zone = mainsOn(tech, TOP);
    Point corner =
        zone.outline().stream()
            .max(Comparator.comparingDouble(at -> at.y() - at.x()))
            .orElseThrow();
    return corner.plus(14, -14);
  }

  /** The zone of the solder side is gone: the graver findings, which come first, are of mains. */
  private static void openFindingOfMains(Technician tech) {
    findMainsOn(tech, BELOW)
        .ifPresent(
            zone ->
                Technician.onEdt(
                    () -> tech.session().document().apply(MapTables.ZONES.remove(zone.id()))));
    if (!tech.named(FindingsPanel.class, "findings-area").isShowing()) {
      tech.key("ESCAPE"); // out of the find field
      tech.key("G");
    }
    tech.awaitShown(FindingsPanel.class, "findings-area");
    JList<?> list = tech.named(JList.class, "findings");
    tech.await(
        "a finding of unmarked mains",
        () ->
            list.getModel().getSize() > 0
                && list.getModel().getElementAt(0) instanceof Finding first
                && first.severity() == Severity.ERROR
                && first.picture().equals(Optional.of(BELOW)));
    tech.key("ENTER");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void anyWay_meetsTheCautionBeforeThePlace(Way way) throws Exception {
    try (Technician tech = atTheDemo(ViewerPreferences.inMemory())) {
      ViewState before = view(tech);
      way.go(tech);
      tech.dialog("caution");
      assertThat(view(tech)).as("the view").isEqualTo(before);
      assertThat(tech.session().selection().subject()).as("what is chosen").isEmpty();

      tech.key("ESCAPE");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      assertThat(view(tech)).as("turned back").isEqualTo(before);
      assertThat(tech.session().selection().subject()).as("turned back").isEmpty();

      way.go(tech);
      tech.dialog("caution");
      tech.key("ctrl ENTER");
      tech.await("the caution gone", () -> tech.find("caution").isEmpty());
      tech.await("the place", () -> tech.session().gate().caution().isEmpty());
    }
  }

  private static ViewState view(Technician tech) {
    tech.waitUntilIdle();
    return Technician.onEdt(() -> tech.panel().photo().canvas().view().orElseThrow());
  }

  /** Channel B of the drawn board lies in a zone, and a card shows its part's twin as well. */
  @ParameterizedTest
  @ValueSource(strings = {"R101", "R102"})
  void cardThatWouldShowATwinInTheZone_meetsTheCaution_andThenTheTwinKeyIsFree(String part)
      throws Exception {
    Path map = DrawnBoard.write(folder.resolve("drawn"), true);
    try (Technician tech =
        Technician.start(Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      tech.click(tech.panel().photo(), DrawnBoard.at(part));
      tech.dialog("caution");
      assertThat(tech.session().selection().subject()).isEmpty();
      tech.key("ctrl ENTER");
      tech.await("the part", () -> tech.session().selection().subject().isPresent());
      tech.key("T");
      assertThat(tech.session().selection().focus().map(Object::toString))
          .contains(part.replace("10", "20"));
    }
  }

  @Test
  void undo_ofSomethingInTheZone_showsThePlaceAfterTheCautionOnly() throws Exception {
    Path map = DrawnBoard.write(folder.resolve("drawn"), true);
    try (Technician tech =
        Technician.start(Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      Placement there = placed(tech, DrawnBoard.TOP, "R201");
      Technician.onEdt(
          () -> tech.session().document().apply(MapTables.PLACEMENTS.remove(there.key())));
      ViewState elsewhere =
          Technician.onEdt(
              () -> {
                PictureCanvas canvas = tech.panel().photo().canvas();
                canvas.setView(canvas.view().orElseThrow().centredOn(new Point(2000, 200), 2));
                return canvas.view().orElseThrow();
              });
      tech.key("ctrl Z");
      tech.dialog("caution");
      assertThat(view(tech)).isEqualTo(elsewhere);
      tech.key("ctrl ENTER");
      tech.await(
          "the place",
          () -> tech.panel().photo().canvas().view().orElseThrow().visible().contains(there.at()));
    }
  }

  /** Whatever is done to the view, the band shows as long as the outline is in view. */
  @Test
  void zones_canNotBeHidden() throws Exception {
    try (Technician tech = atTheDemo(ViewerPreferences.inMemory())) {
      assertThat(bandPixels(tech)).isGreaterThan(200);
      for (UserAction act : UserAction.values()) {
        if (act.group() == UserAction.Group.VIEW
            && act != UserAction.CLEAN
            && act != UserAction.LOUPE) {
          Technician.onEdt(
              () -> {
                tech.window().acts().run(act);
                return true;
              });
          tech.waitUntilIdle();
          centreOnZone(tech);
          assertThat(bandPixels(tech)).as("after %s", act.text()).isGreaterThan(200);
        }
      }
      Technician.onEdt(
          () -> {
            tech.panel().photo().canvas().setCleanUp(new CleanUp(0, 1, 255));
            return true;
          });
      assertThat(bandPixels(tech)).as("with the picture all black").isGreaterThan(200);
      for (UserAction act : UserAction.values()) {
        assertThat(act.text().toLowerCase(Locale.ROOT)).doesNotContain("hide");
      }
    }
  }

  private static void centreOnZone(Technician tech) {
    Technician.onEdt(
        () -> {
          PictureCanvas canvas = tech.panel().photo().canvas();
          canvas.zoomTo(Box.around(mainsOn(tech, TOP).outline()));
          return true;
        });
  }

  /** Pixels of the photo's pane in the yellow of ISO 3864. */
  private static int bandPixels(Technician tech) {
    BufferedImage seen = tech.look(tech.panel().photo().canvas());
    int count = 0;
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        count +=
            (seen.getRGB(x, y) & 0xffffff) == (Palette.WARNING_YELLOW.getRGB() & 0xffffff) ? 1 : 0;
      }
    }
    return count;
  }

  /** The band must be told in grey as well: along the outline it goes from dark to bright. */
  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void band_showsLightDarkAndGrey(Theme theme) throws Exception {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    try (Technician tech = atTheDemo(settings)) {
      centreOnZone(tech);
      String name = "hazard-zone-" + theme.name().toLowerCase(Locale.ROOT);
      tech.shoot(name);
      BufferedImage grey = tech.shootGrey(name + "-grey");
      assertThat(grey.getType()).isEqualTo(BufferedImage.TYPE_BYTE_GRAY);
      BufferedImage pane = Technician.grey(tech.look(tech.panel().photo().canvas()));
      HazardZone zone = mainsOn(tech, TOP);
      ViewState view = view(tech);
      ScreenPoint a = view.toScreen(zone.outline().get(0));
      ScreenPoint b = view.toScreen(zone.outline().get(1));
      int dark = 0;
      int bright = 0;
      for (double t = 0.1; t < 0.9; t += 0.002) {
        int x = (int) (a.x() + t * (b.x() - a.x()));
        int y = (int) (a.y() + t * (b.y() - a.y()));
        int value = pane.getRaster().getSample(x, y, 0);
        dark += value < 60 ? 1 : 0;
        bright += value > 150 ? 1 : 0;
      }
      assertThat(dark).as("dark places of the band").isGreaterThan(60);
      assertThat(bright).as("bright places of the band").isGreaterThan(60);
    }
  }
}
