package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.edit.EntryEditor;

/** What the map says of a part and a net is put right at the real window, and a part is removed. */
class EntryIT {
  private static final PartId R102 = new PartId("R102");

  @TempDir private Path folder;

  private static Part part(Technician tech) {
    return tech.session().map().part(R102).orElseThrow();
  }

  private static void shoot(Technician tech, Theme theme, String name) {
    tech.shoot(name + "-" + theme.name().toLowerCase(Locale.ROOT));
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void value_net_andWhatIsThereByASlip_arePutRight(Theme theme) throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), true);
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    try (Technician tech = Technician.start(Optional.of(map), settings, folder.resolve("cache"))) {
      changeThePart(tech, theme);
      renameTheNet(tech, theme);
      removeThePart(tech, theme);
    }
  }

  private static void changeThePart(Technician tech, Theme theme) {
    tech.click(tech.panel().photo(), DrawnBoard.at("R102"));
    tech.dialog("caution");
    tech.key("ctrl ENTER");
    tech.await("the choice", () -> tech.session().selection().subject().isPresent());
    tech.key("F2");
    tech.dialog("part");
    tech.type("10u");
    tech.key("ENTER");
    tech.waitUntilIdle();
    assertThat(tech.find("part")).as("a value that does not fit is asked about").isPresent();
    shoot(tech, theme, "entry-doubt");
    tech.key("ctrl A");
    tech.type("4k7");
    shoot(tech, theme, "entry-part");
    tech.key("ENTER");
    tech.await("the form to close", () -> tech.find("part").isEmpty());
    assertThat(part(tech).value()).isEqualTo("4k7");
    tech.key("ctrl Z");
    assertThat(part(tech).value()).isNotEqualTo("4k7");
  }

  private static void renameTheNet(Technician tech, Theme theme) {
    NetId net = tech.session().map().nets().stream().findFirst().orElseThrow().id();
    tech.key("ctrl F");
    tech.type(net.text());
    tech.key("ENTER");
    tech.await("the net", () -> tech.session().room(EntryEditor.class).chosen().isPresent());
    tech.key("F2");
    tech.dialog("net");
    tech.type("TRUE_NAME");
    shoot(tech, theme, "entry-net");
    tech.key("ENTER");
    tech.await("the form to close", () -> tech.find("net").isEmpty());
    assertThat(tech.session().map().net(net).orElseThrow().name()).isEqualTo("TRUE_NAME");
  }

  private static void removeThePart(Technician tech, Theme theme) {
    Technician.onEdt(
        () -> {
          tech.session().choose(Subject.of(R102));
          tech.window().acts().run(UserAction.REMOVE);
          return true;
        });
    tech.await("the question", () -> tech.session().question().isPresent());
    shoot(tech, theme, "entry-remove");
    assertThat(part(tech)).isNotNull();
    tech.key("R");
    tech.await("the part gone", () -> tech.session().map().part(R102).isEmpty());
  }
}
