package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.MapInfo;
import org.relegend.scan.PictureSamples;
import org.relegend.store.MapFolder;

/** Files that can't be used, dropped on the real window: one clear message, and nothing is lost. */
class BadFilesIT {
  @TempDir private Path folder;
  private Path map = Path.of("");

  record Bad(String name, Supplier<byte[]> content, String text) {}

  @BeforeEach
  void aMap() throws Exception {
    map = DrawnBoard.write(folder.resolve("map"), true);
  }

  private Technician start() throws Exception {
    return Technician.start(
        Optional.of(map), ViewerPreferences.inMemory(), folder.resolve("cache"));
  }

  static Stream<Named<Bad>> files() throws IOException {
    byte[] jpeg =
        PictureSamples.jpeg(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), false);
    // the file type box of ISO/IEC 14496-12, with the brand that ISO/IEC 23008-12 gives HEIC
    byte[] heic = "\0\0\0\30ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);
    byte[] hollow = PictureSamples.hollowPng(30_000, 30_000);
    byte[] swollen = PictureSamples.swollenJpeg(jpeg, 30_000, 30_000);
    return Stream.of(
            new Bad("notes.jpg", () -> "not a photo".getBytes(StandardCharsets.UTF_8), "notes.jpg"),
            new Bad("empty.jpg", () -> new byte[0], "empty"),
            new Bad("huge.png", () -> hollow, "30000"),
            new Bad("huge.jpg", () -> swollen, "30000"),
            new Bad("phone.heic", () -> heic, "HEIC"),
            new Bad("phone.jpg", () -> heic, "HEIC"),
            new Bad("torn.jpg", () -> Arrays.copyOf(jpeg, 60), "torn.jpg"),
            new Bad(
                "torn.pdf", () -> "%PDF-1.7 and no more".getBytes(StandardCharsets.UTF_8), "torn"))
        .map(bad -> Named.of(bad.name() + " " + bad.text(), bad));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files")
  void badFile_givesOneClearMessage_andNothingChanges(Bad bad) throws Exception {
    Path file = Files.write(folder.resolve(bad.name()), bad.content().get());
    try (Technician tech = start()) {
      BoardMap before = tech.session().map();
      List<Path> files = filesOfTheMap();
      drop(tech, file);
      tech.awaitMessage();
      assertThat(tech.message()).contains(bad.name()).containsIgnoringCase(bad.text());
      assertThat(tech.message()).doesNotContain("Exception").doesNotContain("java.");
      tech.key("ENTER");
      tech.await("the message gone", () -> tech.message().isEmpty());
      assertThat(tech.session().map()).isEqualTo(before);
      assertThat(filesOfTheMap()).isEqualTo(files);
    }
  }

  @Test
  void folderThatIsNoMap_isToldOf_andTheMapStaysOpen() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    try (Technician tech = start()) {
      drop(tech, other);
      tech.awaitMessage();
      assertThat(tech.message()).contains(other.toString());
      tech.key("ENTER");
      tech.await("the message gone", () -> tech.message().isEmpty());
      assertThat(tech.window().sitting()).isPresent();
    }
    try (MapFolder kept = MapFolder.openReadOnly(map)) {
      assertThat(kept.map().placements()).isNotEmpty();
    }
  }

  /** The map is open elsewhere: it can be looked at, and says that it can't be changed here. */
  @Test
  void lockedFolder_opensForReadingOnly_andSaysSo() throws Exception {
    try (MapFolder elsewhere = MapFolder.open(map);
        Technician tech = start()) {
      BoardMap before = elsewhere.map();
      Banner banner = tech.named(Banner.class, "banner");
      tech.await("the banner", banner::isShowing);
      assertThat(banner.getAccessibleContext().getAccessibleName())
          .containsIgnoringCase("reading only");
      tech.click(tech.panel().photo(), DrawnBoard.at("R102"));
      tech.key("DELETE");
      assertThat(tech.session().map()).isEqualTo(before);
      tech.shoot("read-only");
    }
  }

  /** Noticed as soon as one comes back to the window, before anything is saved over it. */
  @Test
  void mapChangedOnDisk_isNoticedOnComingBack_andNeverOverwritten() throws Exception {
    try (Technician tech = start()) {
      Path other = folder.resolve("other");
      MapFolder.create(other, BoardMap.empty("other", MapInfo.titled("From elsewhere"))).close();
      byte[] theirs = Files.readAllBytes(other.resolve(MapFolder.MAP_FILE));
      Files.write(map.resolve(MapFolder.MAP_FILE), theirs);
      WindowEvent back = new WindowEvent(tech.window(), WindowEvent.WINDOW_ACTIVATED);
      SwingUtilities.invokeAndWait(
          () ->
              Stream.of(tech.window().getWindowListeners())
                  .forEach(listener -> listener.windowActivated(back)));
      Banner banner = tech.named(Banner.class, "banner");
      tech.await("the banner", banner::isShowing);
      tech.click(tech.panel().photo(), DrawnBoard.at("R104"));
      tech.key("DELETE");
      tech.await("the edit", () -> tech.session().document().undoLabel().isPresent());
      tech.key("ctrl S");
      tech.shoot("changed-on-disk");
      assertThat(Files.readAllBytes(map.resolve(MapFolder.MAP_FILE))).isEqualTo(theirs);
      assertThat(Stream.of(banner.getComponents()).flatMap(BadFilesIT::buttons)).hasSize(2);
    }
    assertThat(Files.readAllBytes(map.resolve(MapFolder.MAP_FILE)))
        .isEqualTo(Files.readAllBytes(folder.resolve("other").resolve(MapFolder.MAP_FILE)));
  }

  private static Stream<JButton> buttons(java.awt.Component in) {
    return in instanceof JComponent panel
        ? Stream.of(panel.getComponents())
            .filter(JButton.class::isInstance)
            .map(JButton.class::cast)
        : Stream.empty();
  }

  private List<Path> filesOfTheMap() throws IOException {
    try (Stream<Path> all = Files.walk(map)) {
      return all.filter(path -> !path.toString().contains("journal")).sorted().toList();
    }
  }

  private static void drop(Technician tech, Path file) {
    List<File> files = List.of(file.toFile());
    Transferable dropped =
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
          public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            return files;
          }
        };
    TransferHandler handler = tech.window().getTransferHandler();
    JLabel any = new JLabel();
    Technician.onEdt(() -> handler.importData(new TransferHandler.TransferSupport(any, dropped)));
  }

  /** The folder goes while edits wait: nobody leaves them behind unasked. */
  @Test
  void aMapThatCantBeSaved_isNotLeftUnasked() throws Exception {
    try (Technician tech = start()) {
      List<Path> all;
      try (Stream<Path> walk = Files.walk(map)) {
        all = walk.sorted(Comparator.reverseOrder()).toList();
      }
      for (Path file : all) {
        Files.delete(file);
      }
      BoardMap before = tech.session().map();
      Technician.onEdt(
          () -> tech.session().document().apply(new ChangeInfo(MapInfo.titled("Another title"))));
      assertThat(tech.session().map()).isNotEqualTo(before);
      tech.key("ctrl W");
      tech.awaitMessage();
      assertThat(tech.message()).contains("not saved").contains("map");
      tech.key("ENTER");
      tech.await("the message gone", () -> tech.message().isEmpty());
      assertThat(tech.session().map().info().title()).isEqualTo("Another title");
      assertThat(tech.session().document().isReadOnly()).isFalse();
      Files.createDirectories(map);
      tech.key("ctrl S");
      tech.await("it is saved again", () -> Files.exists(map.resolve(MapFolder.MAP_FILE)));
    }
  }
}
