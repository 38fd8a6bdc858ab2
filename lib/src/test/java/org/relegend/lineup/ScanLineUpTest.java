package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.lineup.ScanResult.Aligned;
import org.relegend.lineup.ScanResult.Reason;
import org.relegend.lineup.ScanResult.Unaligned;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.scan.ScanSamples;
import org.relegend.scan.ScanSamples.Scan;
import org.relegend.store.MapFolder;

/** Scans of the demo's two pages, the second of which is a scan itself; the truth is known. */
@Tag("long")
class ScanLineUpTest {
  private static final Path MAP =
      Path.of(System.getProperty("relegend.root", ".."), "demo-data", "map");

  private static BoardMap map = BoardMap.empty("none", MapInfo.titled("none"));
  private static List<ScanSamples> pages = List.of();

  @BeforeAll
  static void render() throws Exception {
    try (MapFolder opened = MapFolder.openReadOnly(MAP)) {
      map = opened.map();
    }
    Path pdf = MAP.resolve("pages/schematic.pdf");
    pages = List.of(ScanSamples.of(pdf, 1, 2, true), ScanSamples.of(pdf, 2, 3, false));
  }

  private static Picture page(int number) {
    return map.picture(new PictureId("page-" + number)).orElseThrow();
  }

  private static List<Placement> placed(int number) {
    return map.placements().stream().filter(p -> p.picture().equals(page(number).id())).toList();
  }

  /** The pins of a page, each clicked somewhat off: standard deviation in points of the page. */
  private static List<Point> pins(int number, double off) {
    Random random = new Random(3);
    List<Point> pins = new ArrayList<>();
    for (Placement placement : placed(number)) {
      if (placement.subject() instanceof Subject.OfPin) {
        pins.add(placement.at().plus(off * random.nextGaussian(), off * random.nextGaussian()));
      }
    }
    return pins;
  }

  private static ScanResult lineUp(int number, Scan scan, List<Point> pins) {
    Extent extent = Extent.of(page(number).width(), page(number).height());
    return ScanLineUp.of(GreyImage.of(scan.image()), extent, pins);
  }

  @ParameterizedTest
  @CsvSource({
    "1,   1.7, 0.9, 0,    0,    12, 0,   1.0",
    "1,  -3.1, 0.9, 0,    0.15, 25, 0,   1.0",
    "1, 182.4, 0.7, 0.1,  0.1,  15, 0.5, 1.5",
    "1,   0.4, 0.6, 0.35, 0,    40, 1,   2.5",
    "1,  92.0, 0.5, 0,    0.1,  40, 0,   1.0",
    "2,  -2.2, 0.8, 0.05, 0.1,  30, 0.5, 3.0",
    "2, -91.5, 0.6, 0,    0.05, 20, 0,   1.0",
  })
  void anotherScan_showsEveryPlaceWithinItsCircle(
      int number,
      double degrees,
      double size,
      double left,
      double top,
      double noise,
      double off,
      double most) {
    Scan scan = pages.get(number - 1).scan(degrees, size, left, top, noise, 1);
    ScanResult result = lineUp(number, scan, pins(number, off));
    assertThat(result).as(result.toString()).isInstanceOf(Aligned.class);
    LineUp lineUp = ((Aligned) result).lineUp();
    int shown = 0;
    int inCircle = 0;
    double sum = 0;
    for (Placement placement : placed(number)) {
      if (scan.shows(placement.at())) {
        shown++;
        double error =
            lineUp.transform().apply(placement.at()).distance(scan.place(placement.at()));
        sum += error;
        inCircle += error <= lineUp.radius95(placement.at()) ? 1 : 0;
      }
    }
    assertThat(shown).isGreaterThan(60);
    assertThat(inCircle).as("of %s within their circles", shown).isGreaterThan(shown * 9 / 10);
    assertThat(sum / shown).as("pixels off on average").isLessThan(most);
  }

  @Test
  void theOtherPage_isRefused() {
    for (int number : List.of(1, 2)) {
      Scan other = pages.get(2 - number).scan(1, 0.8, 0, 0, 10, 1);
      ScanResult result = lineUp(number, other, pins(number, 0));
      assertThat(result).isInstanceOf(Unaligned.class);
      assertThat(((Unaligned) result).reason()).isEqualTo(Reason.NO_AGREEMENT);
      assertThat(((Unaligned) result).message()).contains("pairs");
    }
  }

  @Test
  void whereOnlyOneOfTwoEqualChannelsIsShown_itIsRefused() {
    Scan lower = pages.get(0).scan(0.4, 0.9, 0, 0.5, 20, 1);
    ScanResult result = lineUp(1, lower, pins(1, 0));
    assertThat(((Unaligned) result).reason()).isEqualTo(Reason.AMBIGUOUS);
  }

  @Test
  void blankPaper_andTooFewPins_areRefused() {
    GreyImage blank = GreyImage.of(300, 200, new byte[300 * 200]);
    Extent page = Extent.of(900, 600);
    ScanResult result = ScanLineUp.of(blank, page, pins(1, 0));
    assertThat(((Unaligned) result).reason()).isEqualTo(Reason.BLANK);
    result = ScanLineUp.of(blank, page, pins(1, 0).subList(0, 10));
    assertThat(((Unaligned) result).reason()).isEqualTo(Reason.TOO_FEW_PINS);
  }
}
