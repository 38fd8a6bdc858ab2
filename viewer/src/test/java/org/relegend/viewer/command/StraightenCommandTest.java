package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.lineup.Transform;
import org.relegend.map.BoardMap;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.store.MapFolder;

/**
 * The demo's component photo, straightened by the board's corners, which the drawing code knows.
 */
class StraightenCommandTest {
  private static final Path DEMO = Path.of(System.getProperty("relegend.root", ".."), "demo-data");
  private static final String CORNERS =
      "203.09,338.85 3810.61,269.32 3886.92,2640.96 196.52,2686.14";

  private final Shell shell = new Shell();

  @TempDir private Path temp;
  private Path map = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    map = temp.resolve("map");
    try (Stream<Path> all = Files.walk(DEMO.resolve("map"))) {
      for (Path file : all.toList()) {
        Files.copy(file, map.resolve(DEMO.resolve("map").relativize(file).toString()));
      }
    }
  }

  private static Map<String, Point> pads() throws IOException {
    Map<String, Point> pads = new HashMap<>();
    for (String line : Files.readAllLines(DEMO.resolve("truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("component") && cells[1].equals("pad")) {
        pads.put(cells[2], new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
    return pads;
  }

  /**
   * A dual in-line package tells whether the scale is right everywhere and in both directions: its
   * pins are 2.54 mm apart, its rows 7.62 mm (JEDEC MS-001).
   */
  @Test
  void packages_haveTheirPitchInBothDirections() throws Exception {
    Shell.Run run =
        shell.run(
            "straighten", map, "component", "--corners", CORNERS, "--size", "250x162", "--json");
    assertThat(run.err()).isEmpty();
    JsonNode made = Schemas.valid("straighten", run.out());
    double[] numbers = new double[9];
    for (int i = 0; i < 9; i++) {
      numbers[i] = made.get("matrix").get(i).asDouble();
    }
    Transform toDrawing = Transform.of(numbers).inverse();
    double unit = made.get("pixels_per_mm").asDouble();
    Map<String, Point> pads = pads();
    for (String part : new String[] {"U101", "U201"}) {
      Point one = toDrawing.apply(pads.get(part + ".1"));
      Point seven = toDrawing.apply(pads.get(part + ".7"));
      Point fourteen = toDrawing.apply(pads.get(part + ".14"));
      assertThat(one.distance(seven) / unit).isCloseTo(6 * 2.54, within(0.25));
      assertThat(one.distance(fourteen) / unit).isCloseTo(7.62, within(0.25));
    }
  }

  @Test
  void placements_showOnTheNewPhoto_andItsPixelsAreThoseOfTheFirst() throws Exception {
    Shell.Run run =
        shell.run(
            "straighten",
            map,
            "component",
            "--corners",
            CORNERS,
            "--size",
            "250 x 162",
            "--title",
            "Component, square on");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("component-square-on").contains("pixels to the millimetre");
    MapFolder opened = MapFolder.openReadOnly(map);
    BoardMap after = opened.map();
    PictureId made = new PictureId("component-square-on");
    PictureId first = new PictureId("component");
    Path drawn = opened.fileOf(after.picture(made).orElseThrow());
    assertThat(ImageIO.read(drawn.toFile()).getWidth())
        .isEqualTo((int) after.picture(made).orElseThrow().width());
    PlacementCarrier carrier = PlacementCarrier.of(after);
    var pixels = ImageIO.read(drawn.toFile());
    var photo = ImageIO.read(opened.fileOf(after.picture(first).orElseThrow()).toFile());
    int alike = 0;
    int all = 0;
    for (Point pad : pads().values()) {
      PlacementCarrier.Chained carried = carrier.carry(first, pad, made).orElseThrow();
      assertThat(carried.chain().radius95(pad)).isLessThan(2);
      all++;
      alike +=
          near(grey(photo.getRGB((int) pad.x(), (int) pad.y())), grey(at(pixels, carried.at())))
              ? 1
              : 0;
    }
    assertThat(alike).isGreaterThan(all * 9 / 10);
    try (Stream<Path> files = Files.list(map.resolve("photos"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("component.jpg", "solder.jpg", "component-square-on.jpg");
    }
  }

  private static int at(java.awt.image.BufferedImage image, Point at) {
    return image.getRGB((int) at.x(), (int) at.y());
  }

  private static int grey(int rgb) {
    return ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
  }

  private static boolean near(int one, int other) {
    return Math.abs(one - other) < 25;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "component; 1,1 2,2 3,3 4,4; 250x162; no corners",
        "component; 1,1 900,1 900,900; 250x162; four corners",
        "component; a,1 900,1 900,900 1,900; 250x162; \"a,1\" is no point",
        "component; 203,338 3810,269 3886,2640 196,2686; 250; width and height in mm",
        "component; 203,338 3810,269 3886,2640 196,2686; 0x162; above 0 mm",
        "nowhere; 203,338 3810,269 3886,2640 196,2686; 250x162; its photos are component, solder",
        "page-1; 203,338 3810,269 3886,2640 196,2686; 250x162; no photo \"page-1\""
      })
  void whatCannotBe_isOneLine_andNothingIsWritten(
      String photo, String corners, String size, String why) throws IOException {
    String before = Files.readString(map.resolve("map.json"));
    Shell.Run run = shell.run("straighten", map, photo, "--corners", corners, "--size", size);
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains(why).doesNotContain("\n");
    assertThat(map.resolve("map.json")).hasContent(before);
    try (Stream<Path> files = Files.list(map.resolve("photos"))) {
      assertThat(files).hasSize(2);
    }
  }
}
