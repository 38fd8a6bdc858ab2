package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.Page;
import org.relegend.map.PictureId;
import org.relegend.map.Point;

/**
 * Pages of the demo's schematic against scans of them that are made here, so where all lies is
 * known.
 */
@Tag("long")
class MatchImageTest {
  private static final Path DEMO = Path.of(System.getProperty("relegend.root", ".."), "demo-data");
  private static final Path PDF = DEMO.resolve("map/pages/schematic.pdf");

  @TempDir private Path folder;

  private static MatchImage page(int number) throws Exception {
    try (PdfPages pages = PdfPages.open(PDF)) {
      PdfPages.Size size = pages.size(number);
      Page page =
          new Page(
              new PictureId("page-" + number),
              "Page",
              "pages/schematic.pdf",
              number,
              "0".repeat(64),
              size.width(),
              size.height());
      return MatchImage.of(PDF, page, Progress.UNWATCHED);
    }
  }

  private MatchImage scanned(ScanSamples.Scan scan) throws Exception {
    Path file = folder.resolve("scan.png");
    ImageIO.write(scan.image(), "png", file.toFile());
    return MatchImage.of(file, Progress.UNWATCHED);
  }

  private static List<Point> pins(int number) throws Exception {
    List<Point> pins = new ArrayList<>();
    for (String line : Files.readAllLines(DEMO.resolve("truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("page-" + number) && cells[1].equals("pin")) {
        pins.add(new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
    return pins;
  }

  @ParameterizedTest
  @CsvSource({"1, 2.3, 0.8, 0.06, 0.04", "1, 181, 1.2, 0, 0.1", "2, -3, 0.7, 0, 0.05"})
  void anotherScanOfAPage_isLinedUpByItself(
      int number, double degrees, double size, double left, double top) throws Exception {
    // the demo's first page is drawn in lines, the second is a scan
    ScanSamples.Scan scan =
        ScanSamples.of(PDF, number, 2, number == 1).scan(degrees, size, left, top, 12, 7);

    PhotoResult result = page(number).lineUp(scanned(scan), () -> false);

    LineUp way = ((PhotoResult.Aligned) result).lineUp();
    int shown = 0;
    int within = 0;
    for (Point pin : pins(number)) {
      if (scan.shows(pin)) {
        shown++;
        double off = way.carry(pin).orElseThrow().distance(scan.place(pin));
        assertThat(off).isLessThan(0.002 * Math.hypot(scan.image().getWidth(), 1000));
        within += off <= way.radius95(pin) ? 1 : 0;
      }
    }
    assertThat(shown).isGreaterThan(40);
    assertThat(within).isGreaterThanOrEqualTo((int) (0.95 * shown));
  }

  @Test
  void anotherPage_isRefused() throws Exception {
    ScanSamples.Scan scan = ScanSamples.of(PDF, 2, 2, false).scan(1, 0.8, 0, 0, 8, 3);
    assertThat(page(1).lineUp(scanned(scan), () -> false))
        .isInstanceOf(PhotoResult.Unaligned.class);
  }
}
