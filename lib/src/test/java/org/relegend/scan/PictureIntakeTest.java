package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.MAIN;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.EditGroup;
import org.relegend.map.MapInfo;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.store.Digests;

class PictureIntakeTest {
  private static final BoardMap EMPTY = BoardMap.empty("intake", MapInfo.titled("Intake"));

  @TempDir private Path outside;
  @TempDir private Path folder;

  private Path image(String name) throws IOException {
    Path file = outside.resolve(name);
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  private Path pdf(int pages) throws IOException {
    Path file = outside.resolve("sheet.pdf");
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pages; i++) {
        document.addPage(new PDPage(new PDRectangle(400, 300 + i)));
      }
      document.save(file.toFile());
    }
    return file;
  }

  private List<Path> filesInFolder() throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile).toList();
    }
  }

  private PictureIntake.Shown solderSide(String title) {
    return new PictureIntake.Shown(title, MAIN, Side.SOLDER, BoardTurn.SIDE_EDGE);
  }

  @Test
  void photo_isCopiedAndAddedWithItsBoard() throws Exception {
    EditGroup edit =
        new PictureIntake(folder, EMPTY)
            .photo(image("IMG 12.png"), solderSide("Solder side"), Progress.UNWATCHED);
    BoardMap map = edit.applyTo(EMPTY);
    Photo photo = (Photo) map.picture(new PictureId("solder-side")).orElseThrow();
    assertThat(photo.file()).isEqualTo("photos/solder-side.png");
    assertThat(photo.turn()).isEqualTo(BoardTurn.SIDE_EDGE);
    assertThat(photo.width()).isEqualTo(40);
    assertThat(photo.sha256()).isEqualTo(Digests.sha256(folder.resolve(photo.file())));
    assertThat(map.boards().has(MAIN)).isTrue();
    assertThat(edit.label(EMPTY)).isEqualTo("Add photo Solder side");
  }

  @Test
  void photoOfTheComponentSide_wasTurnedOverNoEdge() throws Exception {
    PictureIntake.Shown shown =
        new PictureIntake.Shown("", new BoardId("psu"), Side.COMPONENT, BoardTurn.TOP_EDGE);
    BoardMap map =
        new PictureIntake(folder, EMPTY)
            .photo(image("IMG_12.png"), shown, Progress.UNWATCHED)
            .applyTo(EMPTY);
    Photo photo = (Photo) map.picture(new PictureId("img-12")).orElseThrow();
    assertThat(photo.turn()).isEqualTo(BoardTurn.UNKNOWN);
    assertThat(photo.title()).isEqualTo("IMG_12");
  }

  @Test
  void sameTitleTwice_getsAnotherNameAndFile() throws Exception {
    Path file = image("a.png");
    BoardMap one =
        new PictureIntake(folder, EMPTY)
            .photo(file, solderSide("Below"), Progress.UNWATCHED)
            .applyTo(EMPTY);
    BoardMap two =
        new PictureIntake(folder, one)
            .photo(file, solderSide("Below"), Progress.UNWATCHED)
            .applyTo(one);
    assertThat(two.pictures().stream().map(Picture::file))
        .containsExactly("photos/below.png", "photos/below-2.png");
  }

  @Test
  void pagesOfAPdf_shareOneFile_alsoWhenAddedLater() throws Exception {
    Path file = pdf(3);
    assertThat(PictureIntake.pagesIn(file)).isEqualTo(3);
    BoardMap one =
        new PictureIntake(folder, EMPTY)
            .pages(file, "Main board", List.of(1, 2), Progress.UNWATCHED)
            .applyTo(EMPTY);
    BoardMap two =
        new PictureIntake(folder, one).pages(file, "", List.of(3), Progress.UNWATCHED).applyTo(one);
    assertThat(two.pictures().stream().map(Picture::caption))
        .containsExactly("Main board 1", "Main board 2", "sheet");
    assertThat(two.pictures().stream().map(Picture::file).distinct()).hasSize(1);
    assertThat(two.pictures().stream().map(Picture::height)).containsExactly(300.0, 301.0, 302.0);
    assertThat(filesInFolder()).hasSize(1);
  }

  @Test
  void scanThatIsAnImage_isOnePage() throws Exception {
    Path file = image("scan.png");
    assertThat(PictureIntake.pagesIn(file)).isEqualTo(1);
    BoardMap map =
        new PictureIntake(folder, EMPTY)
            .pages(file, "", List.of(1), Progress.UNWATCHED)
            .applyTo(EMPTY);
    assertThat(map.picture(new PictureId("scan")).orElseThrow().file()).isEqualTo("pages/scan.png");
  }

  @Test
  void fileThatIsNoPicture_isRefused_andLeavesNothing() throws Exception {
    Path text = Files.writeString(outside.resolve("notes.jpg"), "no picture at all");
    Path empty = Files.createFile(outside.resolve("empty.jpg"));
    PictureIntake intake = new PictureIntake(folder, EMPTY);
    for (Path bad : List.of(text, empty, outside.resolve("gone.jpg"))) {
      assertThatThrownBy(() -> intake.photo(bad, solderSide("x"), Progress.UNWATCHED))
          .isInstanceOf(PictureException.class)
          .hasMessageContaining(String.valueOf(bad.getFileName()));
      assertThatThrownBy(() -> intake.pages(bad, "x", List.of(1), Progress.UNWATCHED))
          .isInstanceOf(PictureException.class);
    }
    assertThat(filesInFolder()).isEmpty();
  }

  @Test
  void pageThatTheFileHasNot_isRefused_andLeavesNothing() throws Exception {
    PictureIntake intake = new PictureIntake(folder, EMPTY);
    Path file = pdf(1);
    assertThatThrownBy(() -> intake.pages(file, "x", List.of(2), Progress.UNWATCHED))
        .isInstanceOf(PictureException.class);
    Path scan = image("scan.png");
    assertThatThrownBy(() -> intake.pages(scan, "x", List.of(2), Progress.UNWATCHED))
        .isInstanceOf(PictureException.class)
        .hasMessageContaining("one page");
    assertThat(filesInFolder()).isEmpty();
  }
}
