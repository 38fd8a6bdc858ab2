package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.scan.PictureSamples;
import org.relegend.share.PackReader;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.session.Session;

/**
 * What can't be opened or made leaves the open map open; packing; a photo that is there already.
 */
class FileMenuIT {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK"})
  void filesAreOpened_made_packed_andAdded(Theme theme) throws Exception {
    Path map = DrawnBoard.write(folder.resolve("map"), true);
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(theme);
    settings.setLastFolder(folder);
    try (Technician tech = Technician.start(Optional.of(map), settings, folder.resolve("cache"))) {
      Session session = tech.session();
      failedOpen(tech);
      failedNew(tech);
      assertThat(tech.session()).isSameAs(session);
      pack(tech, theme);
      samePhotoTwice(tech, map);
    }
  }

  private void failedOpen(Technician tech) throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    later(() -> tech.window().open(other));
    tech.awaitMessage();
    assertThat(tech.message()).contains(other.toString());
    tech.key("ENTER");
    tech.await("the message gone", () -> tech.message().isEmpty());
  }

  /** A folder that has a map already; the title that was typed is there to be used again. */
  private static void failedNew(Technician tech) {
    later(() -> tech.window().acts().run(UserAction.NEW));
    tech.await("the form", () -> title(tech).isPresent());
    Technician.onEdt(
        () -> {
          title(tech).orElseThrow().setText("map");
          return true;
        });
    tech.key("ENTER");
    tech.awaitMessage();
    assertThat(tech.message()).contains("there is a map in this folder already");
    tech.key("ENTER");
    tech.await(
        "the form again", () -> title(tech).filter(t -> t.getText().equals("map")).isPresent());
    tech.key("ESCAPE");
    tech.await("the form gone", () -> tech.front().isEmpty());
  }

  private static Optional<JTextField> title(Technician tech) {
    return tech.front().flatMap(dialog -> Technician.search(dialog, JTextField.class, "title"));
  }

  private void pack(Technician tech, Theme theme) {
    later(() -> tech.window().acts().run(UserAction.PACK));
    tech.dialog("givepack");
    tech.shoot("givepack-" + theme.name().toLowerCase(Locale.ROOT));
    tech.key("ENTER");
    Path file = folder.resolve("map.relegend-pack");
    tech.await("the pack", () -> PackReader.isPack(file) && tech.front().isPresent());
    tech.shoot("givepack-report-" + theme.name().toLowerCase(Locale.ROOT));
    tech.key("ESCAPE");
    tech.await("the report gone", () -> tech.front().isEmpty());
  }

  private void samePhotoTwice(Technician tech, Path map) throws Exception {
    Path photo =
        Files.write(
            folder.resolve("again.jpg"),
            PictureSamples.jpeg(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), false));
    int before = tech.session().map().pictures().size();
    add(tech, photo);
    tech.await("the photo", () -> tech.session().map().pictures().size() == before + 1);
    List<Path> files = files(map.resolve("photos"));
    add(tech, photo);
    tech.awaitMessage();
    assertThat(tech.message()).contains("again.jpg is in this map already");
    tech.key("ENTER");
    tech.await("the message gone", () -> tech.message().isEmpty());
    assertThat(tech.session().map().pictures()).hasSize(before + 1);
    assertThat(files(map.resolve("photos"))).isEqualTo(files);
  }

  private static void add(Technician tech, Path photo) {
    later(() -> tech.window().adding().addPhoto(photo));
    tech.await("the form", () -> tech.front().isPresent());
    tech.waitUntilIdle();
    tech.key("ENTER");
  }

  private static List<Path> files(Path in) throws Exception {
    try (Stream<Path> all = Files.list(in)) {
      return all.sorted().toList();
    }
  }

  private static void later(Runnable deed) {
    SwingUtilities.invokeLater(deed);
  }
}
