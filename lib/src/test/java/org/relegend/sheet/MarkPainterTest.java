package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.says;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.Photo;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;
import org.relegend.scan.Progress;

/**
 * Marks and zones on the rendered page, against places that were painted into the photo itself: the
 * pad of each pin is a blob of a colour that nothing else has.
 */
class MarkPainterTest {
  private static final double PER_POINT = 4;
  private static final NetId NODE = new NetId("N");

  @TempDir private Path folder;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 6);
  }

  /** The colour of a pad, of full saturation. */
  private static Color colour(int pin) {
    return Color.getHSBColor((pin - 1) / 6f, 1, 1);
  }

  private BoardMap map(List<Point> pads, int width, int height, List<HazardZone> zones)
      throws IOException {
    BufferedImage photo = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = photo.createGraphics();
    g.setColor(new Color(0x9A9A9A));
    g.fillRect(0, 0, width, height);
    BoardMap map = BoardMapSamples.blank();
    List<String> pins = new ArrayList<>();
    for (int i = 0; i < pads.size(); i++) {
      String name = "R" + (i + 1);
      g.setColor(colour(i + 1));
      int half = Math.max(width, height) / 180;
      int side = 2 * half + 1;
      g.fillOval((int) pads.get(i).x() - half, (int) pads.get(i).y() - half, side, side);
      map = BoardMapSamples.with(map, BoardMapSamples.twoPin(name, "resistor", "1k"));
      pins.add(name + ".1");
      Subject pad = Subject.of(PinRef.parse(name + ".1"));
      map =
          map.with(
              MapTables.PLACEMENTS,
              map.placements()
                  .with(new Placement(BoardMapSamples.TOP, pad, pads.get(i), says(Evidence.SEEN))));
    }
    g.dispose();
    Files.createDirectories(folder.resolve("photos"));
    Files.write(folder.resolve("photos/top.png"), Sheets.png(photo));
    return BoardMapSamples.with(map, BoardMapSamples.net("N", pins.toArray(String[]::new)))
        .with(
            MapTables.PICTURES,
            map.pictures()
                .with(
                    new Photo(
                        BoardMapSamples.TOP,
                        "Top",
                        "photos/top.png",
                        MAIN,
                        Side.COMPONENT,
                        BoardTurn.UNKNOWN,
                        BoardMapSamples.DIGEST,
                        width,
                        height)))
        .with(MapTables.ZONES, map.zones().withAll(zones));
  }

  private Sheets printed(BoardMap map) {
    return new Sheets(
        new MapSheets(Circuit.of(map), picture -> folder.resolve(picture.file()))
            .print(PaperSize.A4, List.of(NODE), NOON, Progress.UNWATCHED)
            .pdf());
  }

  /** Six pads in the six fields of the photo, so that each label's nearest pad is its own. */
  private static List<Point> pads(long seed, int width, int height) {
    Random random = new Random(seed);
    List<Point> pads = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      int row = i / 3;
      double x = (i % 3 + 0.25 + 0.5 * random.nextDouble()) * width / 3;
      double y = (row + 0.25 + 0.5 * random.nextDouble()) * height / 2;
      pads.add(new Point(Math.floor(x), Math.floor(y)));
    }
    return pads;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void rings_standAroundThePadsOfTheirNumbers(long seed) throws IOException {
    int width = seed % 2 == 0 ? 1500 : 2600;
    int height = seed % 3 == 0 ? 2400 : 1300;
    try (Sheets sheets = printed(map(pads(seed, width, height), width, height, List.of()))) {
      int page = sheets.count();
      BufferedImage image = sheets.rendered(page, PER_POINT);
      List<Sheets.Word> labels =
          sheets.words(page).stream().filter(word -> word.text().matches("[1-6]")).toList();
      for (int pin = 1; pin <= 6; pin++) {
        Point pad = blob(image, colour(pin));
        assertThat(dark(image, pad, MarkPainter.RING * PER_POINT))
            .as("ring of " + pin)
            .isGreaterThan(20);
        assertThat(dark(image, pad, 2 * MarkPainter.RING * PER_POINT))
            .as("beyond it")
            .isLessThan(8);
        assertThat(nearest(labels, pad)).isEqualTo(String.valueOf(pin));
      }
    }
  }

  /** Middle of what has a colour, in pixels. */
  private static Point blob(BufferedImage image, Color colour) {
    double x = 0;
    double y = 0;
    int count = 0;
    float[] wanted = hsb(colour.getRGB());
    for (int row = 0; row < image.getHeight(); row++) {
      for (int column = 0; column < image.getWidth(); column++) {
        float[] found = hsb(image.getRGB(column, row));
        float apart = Math.abs(found[0] - wanted[0]);
        if (found[1] > 0.7 && found[2] > 0.7 && Math.min(apart, 1 - apart) < 0.06) {
          x += column;
          y += row;
          count++;
        }
      }
    }
    assertThat(count).as("pixels of the pad").isGreaterThan(20);
    return new Point(x / count, y / count);
  }

  private static float[] hsb(int rgb) {
    return Color.RGBtoHSB(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, null);
  }

  /** In how many of 24 directions there is black at this distance, give or take two pixels. */
  private static int dark(BufferedImage image, Point from, double distance) {
    int dark = 0;
    for (int i = 0; i < 24; i++) {
      boolean found = false;
      for (double r = distance - 2; r <= distance + 2; r++) {
        int x = (int) Math.round(from.x() + r * Math.cos(i * Math.PI / 12));
        int y = (int) Math.round(from.y() + r * Math.sin(i * Math.PI / 12));
        found |= Sheets.grey(image.getRGB(x, y)) < 60;
      }
      dark += found ? 1 : 0;
    }
    return dark;
  }

  private static String nearest(List<Sheets.Word> labels, Point pad) {
    Point at = new Point(pad.x() / PER_POINT, pad.y() / PER_POINT);
    return labels.stream()
        .min(
            java.util.Comparator.comparingDouble(
                word -> at.distance(new Point(word.x(), word.y()))))
        .map(Sheets.Word::text)
        .orElse("none");
  }

  /** The band of ISO 3864 has equal parts of both colours; in grey they must still differ. */
  @Test
  void aZonesBand_isStripedInGreyToo_andNamed() throws IOException {
    List<Point> outline =
        List.of(
            new Point(300, 200), new Point(1300, 200), new Point(1300, 900), new Point(300, 900));
    HazardZone zone =
        new HazardZone(
            new ZoneId("z"),
            BoardMapSamples.TOP,
            HazardZone.Kind.MAINS,
            outline,
            "",
            List.of(says(Evidence.SEEN)));
    List<Point> pads = pads(3, 1600, 1100);
    try (Sheets sheets = printed(map(pads, 1600, 1100, List.of(zone)))) {
      int page = sheets.count();
      BufferedImage image = sheets.rendered(page, PER_POINT);
      Point first = blob(image, colour(1));
      Point last = blob(image, colour(6));
      double scale = (last.x() - first.x()) / (pads.get(5).x() - pads.get(0).x());
      int y = (int) Math.round(first.y() + (200 - pads.get(0).y()) * scale);
      int left = (int) Math.round(first.x() + (420 - pads.get(0).x()) * scale);
      int right = (int) Math.round(first.x() + (1200 - pads.get(0).x()) * scale);
      int light = 0;
      int dark = 0;
      int turns = 0;
      boolean wasDark = false;
      for (int x = left; x < right; x++) {
        int grey = Sheets.grey(image.getRGB(x, y));
        light += grey > 150 ? 1 : 0;
        dark += grey < 60 ? 1 : 0;
        boolean isDark = grey < 100;
        turns += isDark == wasDark ? 0 : 1;
        wasDark = isDark;
      }
      assertThat(light).isGreaterThan((right - left) / 3);
      assertThat(dark).isGreaterThan((right - left) / 3);
      assertThat(turns).isGreaterThan(10);
      assertThat(sheets.words(page)).anyMatch(word -> word.text().equals("MAINS"));
      assertThat(sheets.text(page)).contains(NodeSheet.PLANNED);
    }
  }
}
