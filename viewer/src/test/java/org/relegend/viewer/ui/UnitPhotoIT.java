package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;

/**
 * Photos of this very unit: dropped on the window with a job open, lined up by themselves with the
 * map's, on the cards, in the printed record, and there again when the job is opened anew. The
 * photo is the demo's other unit, taken from another place.
 */
class UnitPhotoIT {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  private static final PictureId COMPONENT = new PictureId("component");

  @TempDir private Path folder;
  private Path map = Path.of("");
  private Path job = Path.of("");

  @BeforeEach
  void copies() throws IOException {
    map = DemoCopy.into(folder);
    job = Files.createDirectories(folder.resolve("job"));
    Files.copy(ROOT.resolve("demo-data/job/job.json"), job.resolve("job.json"));
  }

  private Technician start(Theme theme) throws Exception {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    settings.setAuthor("K");
    settings.setLastFolder(folder);
    return Technician.start(Optional.of(job), settings, folder.resolve("cache"));
  }

  private static Job job(Technician tech) {
    return tech.session().room(OpenJob.class).job().orElseThrow();
  }

  private static void drop(Technician tech, Path file) {
    SwingUtilities.invokeLater(() -> tech.window().adding().addPhoto(file));
    tech.dialog("add");
  }

  private static void find(Technician tech, String part) {
    tech.key("ctrl F");
    tech.type(part);
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
    tech.await(
        part,
        () ->
            tech.session().selection().subject().equals(Optional.of(Subject.of(new PartId(part)))));
  }

  /** A piece of the photo around a place of the map, as a camera held near would see it. */
  private Path nearC102(Technician tech) throws IOException {
    Placement seen =
        tech.session().document().index().placementsOf(Subject.parse("C102")).stream()
            .filter(place -> tech.session().document().isOwn(place.picture()))
            .findFirst()
            .orElseThrow();
    BufferedImage all = ImageIO.read(ROOT.resolve("demo-data/other-unit/component.jpg").toFile());
    Point at = seen.at();
    BufferedImage near = all.getSubimage((int) at.x() - 220, (int) at.y() - 160, 440, 320);
    Path file = folder.resolve("near.png");
    ImageIO.write(near, "png", file.toFile());
    return file;
  }

  @Test
  void aPhotoOfTheUnit_isLinedUp_shown_printed_andThereAgain() throws Exception {
    byte[] before = Files.readAllBytes(map.resolve("map.json"));
    try (Technician tech = start(Theme.LIGHT)) {
      drop(tech, ROOT.resolve("demo-data/other-unit/component.jpg"));
      tech.shoot("unit-add");
      tech.key("ctrl A");
      tech.type("top");
      tech.key("ENTER");
      tech.await("the line-up", () -> job(tech).photos().stream().anyMatch(JobPhoto::linedUp));
      JobPhoto own = job(tech).photos().at(0);
      assertThat(own.onto()).isEqualTo("component");
      assertThat(job.resolve(own.photo().file())).exists();

      find(tech, "C102");
      tech.shoot("unit-photo");
      assertThat(tech.session().desk().photo().orElseThrow().id()).isEqualTo(own.key());
      tech.key("Y");
      assertThat(tech.session().desk().photo().orElseThrow().id()).isEqualTo(COMPONENT);
      assertThat(tech.session().selection().card().orElseThrow().unit()).isPresent();
      tech.shoot("unit-card");

      drop(tech, nearC102(tech));
      tech.click(Technician.onEdt(() -> closeUpField(tech)));
      tech.type("C102");
      tech.key("ENTER");
      tech.await("the close-up", () -> job(tech).photos().size() == 2);
      assertThat(job(tech).photos().stream().flatMap(photo -> photo.shows().stream()))
          .containsExactly(new PartId("C102"));
      tech.key("PAGE_UP");
      tech.shoot("unit-closeup");

      print(tech);
    }
    assertThat(Files.readAllBytes(map.resolve("map.json"))).as("the shared map").isEqualTo(before);
    try (PDDocument printed = Loader.loadPDF(folder.resolve("shop.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(printed))
          .contains("top, this unit", "Close-ups of this unit", "C102: near");
    }
    try (Technician tech = start(Theme.DARK)) {
      tech.await("both photos", () -> tech.session().desk().photos().size() == 4);
      find(tech, "C102");
      assertThat(tech.session().room(UnitPhotoEditor.class).closeUps(new PartId("C102")))
          .hasSize(1);
      tech.shoot("unit-dark");
    }
  }

  private static JTextField closeUpField(Technician tech) {
    return field(tech.find("add").orElseThrow().getContentPane()).orElseThrow();
  }

  private static Optional<JTextField> field(java.awt.Container in) {
    for (java.awt.Component child : in.getComponents()) {
      if (child instanceof JTextField text && "closeup".equals(text.getName())) {
        return Optional.of(text);
      }
      Optional<JTextField> inside =
          child instanceof java.awt.Container container ? field(container) : Optional.empty();
      if (inside.isPresent()) {
        return inside;
      }
    }
    return Optional.empty();
  }

  private void print(Technician tech) throws IOException {
    tech.key("ctrl P");
    tech.dialog("print");
    tech.key("ctrl A");
    tech.type(folder.resolve("shop.pdf").toString());
    tech.key("TAB");
    tech.key("DOWN");
    tech.key("TAB");
    tech.key("ENTER");
    tech.await("the record", () -> Files.exists(folder.resolve("shop.pdf")));
    Path kept = Path.of("target/screens/unit-shop.pdf");
    Files.createDirectories(kept.getParent());
    Files.copy(folder.resolve("shop.pdf"), kept, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
  }
}
