package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.scan.Progress;
import org.relegend.scan.ScanSamples;
import org.relegend.share.PackOptions;
import org.relegend.share.PackWriter;
import org.relegend.store.MapFolder;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.look.LookTool;

/**
 * A pack dropped on the window: opened, lined up, then a colleague's version of it brought in,
 * three clashes decided and one decision taken back.
 */
class PackStoryIT {
  private static final PictureId TOP = new PictureId("component");

  /** Spread over the board, away from its mains corner. */
  private static final List<String> PADS =
      List.of("C104.2", "R101.1", "R206.2", "J203.2", "J201.T", "J101.T");

  private static final List<String> DISPUTED = List.of("R116", "R117", "R118");

  @TempDir private Path folder;
  private Path pack = Path.of("");
  private Path colleagues = Path.of("");

  @BeforeEach
  void packs() throws Exception {
    Path map = DemoCopy.into(folder);
    pack = folder.resolve("from a friend" + PackWriter.ENDING);
    colleagues = folder.resolve("other values" + PackWriter.ENDING);
    try (MapFolder opened = MapFolder.open(map)) {
      BoardMap demo = opened.map();
      PackWriter.write(opened, pack, PackOptions.DEFAULT, Progress.UNWATCHED);
      BoardMap other = demo;
      for (String name : DISPUTED) {
        Part part = other.part(new PartId(name)).orElseThrow();
        other = other.with(MapTables.PARTS, other.parts().with(part.withValue("391k")));
      }
      opened.save(other);
      PackOptions photo =
          new PackOptions(
              Optional.of(Set.of(TOP, new PictureId("solder"))),
              false,
              false,
              false,
              java.util.Map.of(),
              List.of());
      PackWriter.write(opened, colleagues, photo, Progress.UNWATCHED);
    }
  }

  /** As the window system hands over files that are dropped. */
  private static void drop(Technician tech, Path file) {
    Transferable files =
        new Transferable() {
          @Override
          public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
          }

          @Override
          public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
          }

          @Override
          public Object getTransferData(DataFlavor flavor) {
            return List.of(file.toFile());
          }
        };
    Technician.onEdt(
        () -> {
          ViewerWindow window = tech.window();
          return window
              .getTransferHandler()
              .importData(new TransferHandler.TransferSupport(window, files));
        });
    tech.waitUntilIdle();
  }

  private static String value(Technician tech, String part) {
    return tech.session().map().part(new PartId(part)).orElseThrow().value();
  }

  private static void press(Technician tech, String text) {
    tech.await("the choice " + text, () -> button(tech.window().banner(), text).isPresent());
    tech.click(Technician.onEdt(() -> button(tech.window().banner(), text)).orElseThrow());
  }

  private static Optional<JButton> button(java.awt.Container in, String text) {
    for (java.awt.Component child : in.getComponents()) {
      if (child instanceof JButton button && button.isShowing() && text.equals(button.getText())) {
        return Optional.of(button);
      }
      if (child instanceof java.awt.Container container) {
        Optional<JButton> found = button(container, text);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** The solder side left, the component side right, by pads that can be seen on both. */
  private static void lineUp(Technician tech) {
    tech.key("F6");
    tech.key("shift L");
    tech.await("lining up", () -> tech.session().isIn(LineUpTool.class));
    for (String pad : PADS) {
      tech.click(tech.panel().page(), placed(tech, "solder", pad));
      tech.click(tech.panel().photo(), placed(tech, "component", pad));
    }
    tech.await("the line-up", () -> tech.session().map().lineUps().size() == 1);
    assertThat(tech.session().room(LineUpTool.class).fit().orElseThrow().inliers())
        .hasSize(PADS.size());
    tech.key("ESCAPE");
    tech.key("ESCAPE");
    tech.await("looking", () -> tech.session().isIn(LookTool.class));
  }

  private static Point placed(Technician tech, String picture, String subject) {
    return tech.session()
        .map()
        .placements()
        .find(new Placement.Key(new PictureId(picture), Subject.parse(subject), 1))
        .orElseThrow(() -> new AssertionError(subject + " is not placed on " + picture))
        .at();
  }

  private static void readCaution(Technician tech) {
    if (tech.find("first-caution").isPresent()) {
      tech.dialog("first-caution");
      tech.key("ctrl ENTER");
      tech.await("the caution read", () -> tech.find("first-caution").isEmpty());
    }
  }

  @Test
  void droppedPack_isOpened_linedUp_merged_decided_andOneDecisionUndone() throws Exception {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(Theme.LIGHT);
    try (Technician tech = Technician.start(Optional.empty(), settings, folder.resolve("cache"))) {
      drop(tech, pack);
      tech.await("the map to open", () -> tech.window().sitting().isPresent());
      tech.await("the first caution", () -> tech.find("first-caution").isPresent());
      readCaution(tech);
      assertThat(tech.window().sitting().orElseThrow().folder().path())
          .isEqualTo(folder.resolve("from a friend"));
      assertThat(Technician.onEdt(() -> tech.window().banner().isVisible())).isTrue();
      assertThat(tech.session().map().placements()).hasSizeGreaterThan(900);

      lineUp(tech);

      drop(tech, colleagues);
      press(tech, Messages.of("pack.merge"));
      tech.await("the clashes", () -> tech.session().map().clashes().size() == 3);
      for (String part : DISPUTED) {
        assertThat(value(tech, part)).as("nothing is overwritten").isNotEqualTo("391k");
      }
      JList<?> list = tech.named(JList.class, "clashes");
      tech.await("the list", () -> list.isShowing() && list.getModel().getSize() == 3);
      tech.shoot("clashes");
      tech.click(list);
      tech.key("HOME");
      tech.key("T");
      tech.await("one decided", () -> tech.session().map().clashes().size() == 2);
      tech.key("M");
      tech.await("two decided", () -> tech.session().map().clashes().size() == 1);
      tech.key("T");
      tech.await("three decided", () -> tech.session().map().clashes().isEmpty());
      assertThat(DISPUTED.stream().filter(part -> value(tech, part).equals("391k"))).hasSize(2);
      tech.key("ctrl Z");
      tech.await("one undone", () -> tech.session().map().clashes().size() == 1);
      assertThat(DISPUTED.stream().filter(part -> value(tech, part).equals("391k"))).hasSize(1);
    }
  }

  @Test
  void aScanOfAMissingPage_isLinedUp_andShowsWhatIsPlacedThere() throws Exception {
    Path scan = folder.resolve("my scan.png");
    Path pdf = folder.resolve("map/pages/schematic.pdf");
    javax.imageio.ImageIO.write(
        ScanSamples.of(pdf, 1, 2, true).scan(-1.4, 0.7, 0.03, 0.05, 15, 1).image(),
        "png",
        scan.toFile());
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(Theme.DARK);
    try (Technician tech = Technician.start(Optional.empty(), settings, folder.resolve("cache"))) {
      drop(tech, pack);
      tech.await("the map to open", () -> tech.window().sitting().isPresent());
      tech.await("the first caution", () -> tech.find("first-caution").isPresent());
      readCaution(tech);
      Technician.onEdt(
          () -> {
            tech.window().adding().addPages(scan);
            return true;
          });
      tech.await("the line-up", () -> tech.session().map().lineUps().size() == 1);
      assertThat(tech.session().document().carrier().on(new PictureId("my-scan")))
          .hasSizeGreaterThan(200);
      tech.waitUntilIdle();
      tech.shoot("own-scan");
      tech.key("ctrl G");
      JTable trust = tech.named(JTable.class, "trust");
      tech.await("who says what", () -> trust.isShowing() && trust.getRowCount() > 500);
      tech.shoot("trust");
      int all = trust.getRowCount();
      JComboBox<?> least = tech.named(JComboBox.class, "trust.least");
      Technician.onEdt(
          () -> {
            least.setSelectedIndex(2); // beeped
            return true;
          });
      tech.await("fewer rows", () -> trust.getRowCount() < all / 2 && trust.getRowCount() > 20);
      assertThat(trust.getValueAt(0, 0).toString()).contains("U102.1");
      tech.key("ctrl Z");
      tech.await("the scan undone", () -> tech.session().map().lineUps().isEmpty());
    }
  }

  @Test
  void aDamagedPack_isOneClearMessage_andTheWindowStaysAsItIs() throws Exception {
    Path bad =
        java.nio.file.Files.writeString(
            folder.resolve("bad" + PackWriter.ENDING), "no archive at all");
    try (Technician tech =
        Technician.start(Optional.empty(), ViewerPreferences.inMemory(), folder.resolve("cache"))) {
      drop(tech, bad);
      tech.awaitMessage();
      assertThat(tech.message()).contains("bad" + PackWriter.ENDING);
      tech.key("ENTER");
      tech.await("the message read", () -> tech.message().isEmpty());
      assertThat(tech.window().sitting()).isEmpty();
    }
  }
}
