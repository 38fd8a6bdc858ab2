package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.relegend.map.Point;

class PageNamesTest {
  private static final double HEIGHT = 400;
  private static final float SIZE = 8;

  private final PDDocument document = new PDDocument();
  private final PDPage page = new PDPage(new PDRectangle(600, (float) HEIGHT));

  /** Writes text with its lower left corner at a point of the page, y downwards. */
  private void write(String text, double x, double y, double degrees) throws IOException {
    if (document.getNumberOfPages() == 0) {
      document.addPage(page);
    }
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, PDPageContentStream.AppendMode.APPEND, false)) {
      out.beginText();
      out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), SIZE);
      out.setTextMatrix(
          Matrix.getRotateInstance(Math.toRadians(degrees), (float) x, (float) (HEIGHT - y)));
      out.showText(text);
      out.endText();
    }
  }

  private List<PageNames.Found> found() throws IOException {
    return PageNames.among(PageWords.of(document, 1));
  }

  @Test
  void designators_areFoundWhereTheyStand() throws IOException {
    write("R101", 100, 50, 0);
    write("4k7", 100, 60, 0);
    write("see FIG2 and note 3", 300, 300, 0);
    List<PageNames.Found> found = found();
    assertThat(found).map(name -> name.designator().text()).containsExactly("R101");
    assertThat(found.get(0).values()).containsExactly("4k7");
    assertThat(found.get(0).word().box().contains(new Point(105, 47))).isTrue();
    assertThat(found.get(0).word().box().width()).isBetween(15.0, 25.0);
  }

  @Test
  void designator_writtenInPieces_isOneName() throws IOException {
    write("R", 100, 50, 0);
    write("202", 100 + 0.722 * SIZE, 50, 0); // Helvetica's R is 722/1000 em wide (Adobe AFM)
    assertThat(found()).map(name -> name.designator().text()).containsExactly("R202");
  }

  @Test
  void neighbours_stayApart() throws IOException {
    write("R1", 100, 50, 0);
    write("R2", 100 + 3 * SIZE, 50, 0);
    write("C3 C4", 100, 80, 0);
    assertThat(found())
        .map(name -> name.designator().text())
        .containsExactly("R1", "R2", "C3", "C4");
  }

  @Test
  void turnedText_isFoundWithItsBox() throws IOException {
    write("C12", 200, 200, 90);
    write("C13", 300, 200, 270);
    List<PageNames.Found> found = found();
    assertThat(found).map(name -> name.designator().text()).containsExactly("C12", "C13");
    assertThat(found.get(0).word().box().contains(new Point(197, 190))).isTrue();
    assertThat(found.get(1).word().box().contains(new Point(303, 210))).isTrue();
  }

  @Test
  void turnedPage_givesPlacesAsDisplayed() throws IOException {
    write("R7", 100, 50, 0);
    page.setRotation(90);
    PageWord word = found().get(0).word();
    // a quarter turn clockwise carries (x, y) to (height - y, x)
    assertThat(word.box().grown(1).contains(new Point(HEIGHT - 48, 104))).isTrue();
  }

  @Test
  void aValue_belongsToTheNearestName() throws IOException {
    write("R1", 100, 50, 0);
    write("R2", 100, 80, 0);
    write("10k", 100, 72, 0);
    assertThat(found().get(0).values()).isEmpty();
    assertThat(found().get(1).values()).containsExactly("10k");
  }

  @Test
  void pageWithoutText_hasNoNames() throws IOException {
    document.addPage(page);
    assertThat(found()).isEmpty();
  }
}
