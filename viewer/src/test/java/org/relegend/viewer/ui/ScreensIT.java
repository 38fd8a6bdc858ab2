package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.MapFolder;
import org.relegend.viewer.mode.check.FindingsPanel;
import org.relegend.viewer.mode.pins.PinsTool;

/** Every screen, light and dark, as a picture in target/screens, to be looked at. */
class ScreensIT {
  @TempDir private Path folder;

  private static ViewerPreferences dressed(Theme theme) {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    return settings;
  }

  private Technician start(Optional<Path> map, Theme theme) throws Exception {
    return Technician.start(map, dressed(theme), folder.resolve("cache"));
  }

  private static void shoot(Technician tech, Theme theme, String name) {
    tech.shoot(name + "-" + theme.name().toLowerCase(Locale.ROOT));
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void startAndEmptyMap(Theme theme) throws Exception {
    Path empty = folder.resolve("empty");
    MapFolder.create(empty, BoardMap.empty("empty", MapInfo.titled("Unit on the bench"))).close();
    ViewerPreferences settings = dressed(theme);
    settings.opened(empty);
    try (Technician tech =
        Technician.start(
            Optional.empty(), settings, folder.resolve("cache"), Optional.of(folder))) {
      shoot(tech, theme, "start");
    }
    try (Technician tech = start(Optional.of(empty), theme)) {
      shoot(tech, theme, "empty");
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void lookingAround(Theme theme) throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), true);
    try (Technician tech = start(Optional.of(map), theme)) {
      shoot(tech, theme, "open");
      tech.type("R10");
      tech.awaitShown(FindResults.class, "results");
      shoot(tech, theme, "find");
      tech.key("ESCAPE");
      tech.click(tech.panel().photo(), DrawnBoard.at("C102").plus(90, 0));
      assertThat(tech.session().selection().subject()).contains(Subject.parse("C102.-"));
      shoot(tech, theme, "node");
      tech.key("T");
      shoot(tech, theme, "twin");
      tech.key("T");
      tech.click(tech.panel().photo(), DrawnBoard.at("R102"));
      shoot(tech, theme, "part");
      tech.click(tech.panel().photo(), DrawnBoard.at("R201"));
      tech.dialog("caution");
      shoot(tech, theme, "caution");
      tech.key("ctrl ENTER");
      tech.await("the place", () -> tech.session().selection().subject().isPresent());
      shoot(tech, theme, "hazard");
      tech.key("G");
      tech.awaitShown(FindingsPanel.class, "findings-area");
      shoot(tech, theme, "findings");
      tech.key("G");
      tech.key("F1");
      tech.dialog("shortcuts");
      shoot(tech, theme, "shortcuts");
      tech.key("ESCAPE");
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void workingOn(Theme theme) throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), false);
    try (Technician tech = start(Optional.of(map), theme)) {
      tech.key("ESCAPE");
      tech.key("P");
      tech.click(tech.panel().photo(), DrawnBoard.at("C102"));
      tech.click(tech.panel().photo(), DrawnBoard.at("C202"));
      tech.type("R10");
      shoot(tech, theme, "placing");
      tech.key("ESCAPE");
      tech.key("ESCAPE");
      tech.key("shift P");
      tech.type("U101");
      Point body = DrawnBoard.at("U101");
      tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 0));
      tech.await(
          "the first pin",
          () -> tech.session().room(PinsTool.class).first(DrawnBoard.TOP).isPresent());
      tech.moveTo(tech.panel().photo(), DrawnBoard.pinOfArray(body, 13).plus(-6, -14));
      shootAsIs(tech, theme, "pins");
      tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 13));
      tech.await(
          "the pins", () -> tech.session().room(PinsTool.class).first(DrawnBoard.TOP).isEmpty());
      tech.key("ESCAPE");
      tech.key("N");
      tech.type("X9");
      tech.key("ENTER");
      tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 4));
      tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(body, 1));
      tech.await("the question", () -> tech.session().question().isPresent());
      shoot(tech, theme, "tracing");
      tech.key("V");
      tech.key("ESCAPE");
      tech.key("Z");
      tech.click(tech.panel().photo(), new Point(300, 300));
      tech.click(tech.panel().photo(), new Point(700, 300));
      tech.click(tech.panel().photo(), new Point(700, 520));
      tech.key("ENTER");
      tech.await("the question", () -> tech.session().question().isPresent());
      shoot(tech, theme, "zone");
    }
  }

  private static void shootAsIs(Technician tech, Theme theme, String name) {
    tech.shootAsIs(name + "-" + theme.name().toLowerCase(Locale.ROOT));
  }
}
