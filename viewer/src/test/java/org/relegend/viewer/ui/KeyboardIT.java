package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.viewer.ui.DrawnBoard.TOP;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.bench.Instrument;
import org.relegend.bench.MeasurementSetup;
import org.relegend.map.Evidence;
import org.relegend.map.NetId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.pins.PinsTool;
import org.relegend.viewer.mode.trace.TraceTool;
import org.relegend.viewer.session.Session;

/** A typed name is text wherever a name is wanted, and never runs as commands. */
class KeyboardIT {
  private static final Point EMPTY = new Point(60, 60);

  @TempDir private Path folder;

  private Technician start(boolean placed) throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), placed);
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(Theme.LIGHT);
    settings.setAuthor("K");
    settings.setLastFolder(folder);
    Technician tech = Technician.start(Optional.of(map), settings, folder.resolve("cache"));
    tech.key("ctrl F");
    tech.key("ESCAPE");
    return tech;
  }

  private static void awaitTyping(Technician tech) {
    FindField field = tech.named(FindField.class, "find");
    tech.await("the keyboard in the find field", field::isFocusOwner);
  }

  private static String typed(Technician tech) {
    return Technician.onEdt(tech.named(FindField.class, "find")::getText);
  }

  private static void button(Technician tech, String tool) {
    tech.click(tech.named(JToggleButton.class, "tool-" + tool));
  }

  private static boolean isPlaced(Session session, String part) {
    return session.map().placements().has(new Placement.Key(TOP, Subject.parse(part), 1));
  }

  @Test
  void whileNamesArePlaced_theBoxHasTheKeyboard_afterEveryClickRefusalAndDrag() throws Exception {
    try (Technician tech = start(false)) {
      Evidence before = tech.session().hand().evidence();
      PicturePane photo = tech.panel().photo();
      button(tech, "place");
      tech.type("R101");
      tech.key("ENTER");
      tech.click(photo, DrawnBoard.at("R101"));
      assertThat(isPlaced(tech.session(), "R101")).isTrue();

      awaitTyping(tech);
      tech.key("BACK_SPACE");
      tech.click(photo, EMPTY);
      assertThat(tech.session().notice().orElseThrow().kind().isRefusal()).isTrue();
      awaitTyping(tech);
      tech.type("R102 4k7");
      tech.click(photo, DrawnBoard.at("R102"));
      awaitTyping(tech);
      tech.key("ctrl A");
      tech.type("R102");
      tech.drag(photo, EMPTY, new Point(120, 140));
      awaitTyping(tech);
      tech.click(photo, DrawnBoard.at("R102"));
      assertThat(isPlaced(tech.session(), "R102")).isTrue();

      button(tech, "pins");
      tech.type("U1");
      tech.drag(photo, EMPTY, new Point(120, 140));
      awaitTyping(tech);
      tech.type("01");
      assertThat(typed(tech)).isEqualTo("U101");
      assertThat(tech.session().hand().evidence()).isEqualTo(before);
      assertThat(tech.session().isIn(PinsTool.class)).isTrue();
    }
  }

  @Test
  void aToolTaken_clearsWhatWasTypedForAnother() throws Exception {
    try (Technician tech = start(true)) {
      tech.key("ctrl F");
      tech.type("att");
      button(tech, "trace");
      assertThat(typed(tech)).isEmpty();
      tech.click(tech.panel().photo(), DrawnBoard.pinOfArray(DrawnBoard.at("U101"), 4));
      assertThat(tech.session().room(TraceTool.class).text()).isEqualTo("N1");
      // from the picture, the button leads back to where the next net is typed
      button(tech, "trace");
      awaitTyping(tech);
      tech.key("ctrl A");
      tech.type("U201");
      button(tech, "measure");
      assertThat(typed(tech)).isEmpty();
      PictureCanvas photo = tech.panel().photo().canvas();
      tech.await("the keyboard on the picture", photo::isFocusOwner);
    }
  }

  private void beginJob(Technician tech) {
    tech.key("ctrl J");
    tech.dialog("newjob");
    tech.key("ENTER");
    tech.dialog("intake");
    tech.key("ENTER");
    tech.await("the intake closed", () -> tech.find("intake").isEmpty());
    tech.await("the job", () -> tech.session().room(OpenJob.class).isOpen());
    Technician.onEdt(
        () -> {
          tech.session()
              .room(OpenJob.class)
              .setSetting(
                  MeasurementSetup.with(Instrument.DIGITAL_METER).with(MeasurementSetup.Power.ON));
          return true;
        });
  }

  private static int readings(Technician tech) {
    return tech.session().room(OpenJob.class).job().orElseThrow().readings().size();
  }

  private static Optional<Subject> chosen(Technician tech) {
    return tech.session().selection().subject();
  }

  private static void read(Technician tech, String node, String value) {
    int before = readings(tech);
    tech.type(node);
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
    tech.await(node, () -> chosen(tech).equals(Optional.of(Subject.parse("net:" + node))));
    tech.type(value);
    tech.key("ENTER");
    tech.await("the reading", () -> readings(tech) == before + 1);
  }

  @Test
  void nameEnterValueEnter_isAReading_timeAndAgain() throws Exception {
    try (Technician tech = start(true)) {
      beginJob(tech);
      Evidence before = tech.session().hand().evidence();
      tech.key("ctrl F");
      tech.countAnew();
      read(tech, "A_ATT", "5.34");
      read(tech, "B_ATT", "-4.7m");
      read(tech, "A_ATT", "5.33");
      assertThat(tech.keys()).as("Enter, Enter: three times").isEqualTo(6);
      assertThat(tech.clicks()).isZero();
      assertThat(tech.session().hand().evidence()).isEqualTo(before);
      tech.shoot("keyboard-next-node");

      // walked on by an arrow, the next number is a reading
      tech.key("RIGHT");
      tech.type("0.2");
      tech.key("ENTER");
      tech.await("the reading walked to", () -> readings(tech) == 4);
      // commands: with Alt, or after Esc, which keeps what is chosen
      tech.key("alt D");
      tech.await("the differences", () -> tech.panel().lower().listShown().equals("differences"));
      tech.key("ESCAPE");
      tech.key("ctrl F");
      read(tech, "A_ATT", "5.3");
      tech.key("ESCAPE");
      assertThat(chosen(tech)).contains(Subject.parse("net:A_ATT"));
      tech.key("E");
      tech.dialog("log");
      tech.key("ESCAPE");
    }
  }

  @Test
  void withAJobOpen_theTraceButtonAndItsQuestion_haveTheKeyboard() throws Exception {
    try (Technician tech = start(true)) {
      beginJob(tech);
      tech.key("V"); // the keyboard is where readings are typed
      Evidence before = tech.session().hand().evidence();
      button(tech, "trace");
      awaitTyping(tech);
      tech.type("OTHER2 U101.9 C102.-"); // the second is on A_ATT
      tech.key("ENTER");
      tech.await("the question", () -> tech.session().question().isPresent());
      tech.shoot("keyboard-question");
      tech.key("M");
      tech.await("the answer", () -> tech.session().question().isEmpty());
      assertThat(tech.find("meter")).isEmpty();
      assertThat(tech.session().map().net(new NetId("OTHER2")).orElseThrow().pins())
          .extracting(Object::toString)
          .containsExactlyInAnyOrder("U101.9", "C102.-");
      assertThat(tech.session().hand().evidence()).isEqualTo(before);

      // asked for by a click, and clicked again beside it
      Point pin = DrawnBoard.pinOfArray(DrawnBoard.at("U101"), 1);
      tech.click(tech.panel().photo(), pin);
      tech.await("the question", () -> tech.session().question().isPresent());
      tech.drag(tech.panel().photo(), EMPTY, new Point(90, 90));
      tech.key("M");
      tech.await("the answer", () -> tech.session().question().isEmpty());
      assertThat(tech.find("meter")).isEmpty();
    }
  }
}
