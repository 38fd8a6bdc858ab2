package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.lineup.Transform;
import org.relegend.map.Point;

/** The line-up of the demo's photos, against the places that the drawing code knows. */
@Tag("long")
class LineUpCommandTest {
  private static final Path DEMO = Path.of(System.getProperty("relegend.root", ".."), "demo-data");
  private static final String OTHER_PADS = "other-component";
  private static final Path OTHER = DEMO.resolve("other-unit/component.jpg");

  /** Pixels of the demo's solder photo that a millimetre takes, about. */
  private static final double PIXELS_A_MM = 14;

  private final Shell shell = new Shell();

  @TempDir private Path temp;

  private static Map<String, Point> pads(String picture) throws IOException {
    Map<String, Point> pads = new HashMap<>();
    for (String line : Files.readAllLines(DEMO.resolve("truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals(picture) && cells[1].equals("pad")) {
        pads.put(cells[2], new Point(Double.parseDouble(cells[3]), Double.parseDouble(cells[4])));
      }
    }
    return pads;
  }

  private static Transform transform(JsonNode lineUp) {
    double[] matrix = new double[9];
    for (int i = 0; i < matrix.length; i++) {
      matrix[i] = lineUp.get("matrix").get(i).asDouble();
    }
    return Transform.of(matrix);
  }

  private static List<Double> errors(JsonNode lineUp, String from, String to) throws IOException {
    Transform carried = transform(lineUp);
    Map<String, Point> there = pads(to);
    List<Double> errors = new ArrayList<>();
    pads(from).forEach((pin, at) -> errors.add(carried.apply(at).distance(there.get(pin))));
    Collections.sort(errors);
    return errors;
  }

  @Test
  void anotherUnit_fromAnotherPlace_isLinedUpByItself() throws IOException {
    Shell.Run run = shell.run("lineup", DEMO.resolve("map"), "component", OTHER, "--json");
    assertThat(run.err()).isEmpty();
    JsonNode lineUp = Schemas.valid("lineup", run.out());
    List<Double> errors = errors(lineUp, "component", "other-component");
    assertThat(errors).hasSize(259);
    double diagonal = Math.hypot(4080, 3060);
    assertThat(errors.get(errors.size() / 2)).isLessThan(0.002 * diagonal);
    assertThat(errors.get(errors.size() * 95 / 100)).isLessThan(lineUp.get("radius95").asDouble());
    assertThat(lineUp.get("mirrors").asBoolean()).isFalse();
  }

  /** The folder beside the map holds a photo of each side; only one can be the right one. */
  @Test
  void aFolderOfPhotos_theOneThatLinesUpIsTaken() throws IOException {
    Shell.Run run = shell.run("lineup", DEMO.resolve("map"), "component", "other-unit", "--json");
    assertThat(run.err()).isEmpty();
    JsonNode lineUp = Schemas.valid("lineup", run.out());
    assertThat(lineUp.get("to").asText()).isEqualTo("other-unit/component.jpg");
    List<Double> errors = errors(lineUp, "component", OTHER_PADS);
    assertThat(errors.get(errors.size() / 2)).isLessThan(0.002 * Math.hypot(4080, 3060));
    assertThat(errors.get(errors.size() * 95 / 100)).isLessThan(lineUp.get("radius95").asDouble());
  }

  @Test
  void aFolderOfPhotos_withPairsOrWithoutPhotos_isRefused() throws IOException {
    Path pairs = temp.resolve("pairs.csv");
    Files.writeString(pairs, "x1,y1,x2,y2\n1,1,2,2\n");
    Object map = DEMO.resolve("map");
    Shell.Run paired = shell.run("lineup", map, "component", "other-unit", "--pairs", pairs);
    assertThat(paired.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(paired.err()).contains("folder of 2 photos: name one");
    Shell.Run empty = shell.run("lineup", map, "component", temp);
    assertThat(empty.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(empty.err()).contains("no photo").contains(temp.toString());
  }

  @Test
  void solderSide_fromSixPairs_isWithinAMillimetre() throws IOException {
    Map<String, Point> from = pads("component");
    Map<String, Point> to = pads("solder");
    StringBuilder table = new StringBuilder("x1,y1,x2,y2\n");
    for (String pin : new String[] {"J1.L", "R8.1", "C104.2", "J203.2", "U101.1", "R206.2"}) {
      Point a = from.get(pin);
      Point b = to.get(pin);
      table.append("%s,%s,%s,%s%n".formatted(a.x(), a.y(), b.x(), b.y()));
    }
    Path pairs = temp.resolve("pairs.csv");
    Files.writeString(pairs, table.toString());
    Shell.Run run =
        shell.run("lineup", DEMO.resolve("map"), "component", "solder", "--pairs", pairs, "--json");
    assertThat(run.err()).isEmpty();
    JsonNode lineUp = Schemas.valid("lineup", run.out());
    assertThat(lineUp.get("mirrors").asBoolean()).isTrue();
    List<Double> errors = errors(lineUp, "component", "solder");
    assertThat(errors.get(errors.size() - 1)).isLessThan(PIXELS_A_MM);
  }

  @Test
  void theOtherSide_aBlankPhoto_andABlurredOne_areRefusedWithPlacesForPairs() throws IOException {
    BufferedImage blank = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = blank.createGraphics();
    g.setColor(new Color(120, 130, 90));
    g.fillRect(0, 0, 1600, 1200);
    g.dispose();
    Path plain = temp.resolve("blank.png");
    ImageIO.write(blank, "png", plain.toFile());
    Path blurred = temp.resolve("blurred.png");
    ImageIO.write(blurred(ImageIO.read(OTHER.toFile())), "png", blurred.toFile());
    for (Object to : new Object[] {"solder", plain, blurred}) {
      Shell.Run run = shell.run("lineup", DEMO.resolve("map"), "component", to);
      assertThat(run.code()).as(to.toString()).isEqualTo(ExitCode.DOES_NOT_HOLD);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).contains("Click four pairs");
      assertThat(run.err().strip()).doesNotContain("\n");
    }
  }

  /** So far out of focus that no part can be told from another. */
  private static BufferedImage blurred(BufferedImage sharp) {
    BufferedImage tiny = new BufferedImage(24, 18, BufferedImage.TYPE_INT_RGB);
    Graphics2D down = tiny.createGraphics();
    down.drawImage(
        sharp.getScaledInstance(24, 18, java.awt.Image.SCALE_AREA_AVERAGING), 0, 0, null);
    down.dispose();
    BufferedImage large = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
    Graphics2D up = large.createGraphics();
    up.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    up.drawImage(tiny, 0, 0, 1600, 1200, null);
    up.dispose();
    return large;
  }

  @Test
  void pairs_tooFewOrOnALine_areRefusedInOneLine() throws IOException {
    Path two = temp.resolve("two.csv");
    Files.writeString(two, "x1,y1,x2,y2\n1,1,2,2\n1,1,2,2\n");
    Path bad = temp.resolve("bad.csv");
    Files.writeString(bad, "x1,y1,x2\n1,1,2\n");
    for (Path pairs : new Path[] {two, bad}) {
      Shell.Run run =
          shell.run("lineup", DEMO.resolve("map"), "component", "solder", "--pairs", pairs);
      assertThat(run.code()).isNotZero();
      assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n");
    }
  }

  @Test
  void neitherPictureNorFile_isOneLine() {
    Shell.Run run = shell.run("lineup", DEMO.resolve("map"), "component", "nowhere.jpg");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err()).contains("nowhere.jpg");
  }

  /**
   * The demo's map, of which nothing is placed on the solder side, lined up by eight clicked pairs.
   */
  private Path acceptedMap() throws IOException {
    Path map = temp.resolve("map");
    copy(DEMO.resolve("map"), map);
    Path json = map.resolve("map.json");
    JsonNode read = new ObjectMapper().readTree(Files.readString(json));
    Iterator<JsonNode> placements = read.get("placements").elements();
    while (placements.hasNext()) {
      if (placements.next().get("picture").asText().equals("solder")) {
        placements.remove();
      }
    }
    Files.writeString(json, read.toString());
    Map<String, Point> from = pads("component");
    Map<String, Point> to = pads("solder");
    Random clicks = new Random(1);
    StringBuilder table = new StringBuilder("x1,y1,x2,y2\n");
    for (String pin :
        new String[] {"J1.L", "R8.1", "C104.2", "J203.2", "U101.1", "R206.2", "R108.1", "R106.2"}) {
      Point a = from.get(pin);
      Point b = to.get(pin);
      Point seen = b.plus(2 * clicks.nextGaussian(), 2 * clicks.nextGaussian());
      table.append("%s,%s,%s,%s%n".formatted(a.x(), a.y(), seen.x(), seen.y()));
    }
    Path pairs = temp.resolve("pairs.csv");
    Files.writeString(pairs, table.toString());
    Shell.Run run =
        shell.run("lineup", map, "component", "solder", "--pairs", pairs, "--accept", "--json");
    assertThat(run.err()).isEmpty();
    assertThat(Schemas.valid("lineup", run.out()).get("accepted").asBoolean()).isTrue();
    return map;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  @Test
  void acceptedPairs_carryPlacesToTheOtherSide_withinTheirCircle() throws IOException {
    Path map = acceptedMap();
    Shell.Run again = shell.run("lineup", map, "solder", "component", "--json");
    JsonNode kept = Schemas.valid("lineup", again.out());
    assertThat(kept.get("inliers").asInt()).isEqualTo(8);
    Map<String, Point> truth = pads("solder");
    int within = 0;
    int all = 0;
    for (String net : new String[] {"A_MIR", "0V", "VP", "VN"}) {
      Shell.Run run = shell.run("joined", map, net, "--json");
      for (JsonNode pin : Schemas.valid("joined", run.out()).get("pins")) {
        Point there = truth.get(pin.get("part").asText() + "." + pin.get("pin").asText());
        for (JsonNode carried : pin.get("carried")) {
          assertThat(carried.get("picture").asText()).isEqualTo("solder");
          assertThat(carried.get("from").asText()).isEqualTo("component");
          Point at = new Point(carried.get("x").asDouble(), carried.get("y").asDouble());
          assertThat(at.distance(there)).isLessThan(PIXELS_A_MM);
          within += at.distance(there) <= carried.get("radius95").asDouble() ? 1 : 0;
          all++;
        }
      }
    }
    assertThat(all).isGreaterThan(40);
    assertThat(within).isGreaterThan(all * 9 / 10);
    assertThat(shell.run("joined", map, "A_MIR").out()).contains("carried to solder ");
    assertThat(shell.run("check", map).out()).doesNotContain("line-up");
  }

  @Test
  void automaticPairs_areKept_andServeAsWellAgain() throws IOException {
    Path map = temp.resolve("two");
    copy(DEMO.resolve("map"), map);
    Shell.Run added =
        shell.run("add", map, OTHER, "--photo", "other", "--board", "main", "--side", "component");
    assertThat(added.code()).as(added.err()).isZero();
    Shell.Run first = shell.run("lineup", map, "component", "other", "--accept", "--json");
    Shell.Run second = shell.run("lineup", map, "component", "other", "--json");
    List<Double> found = errors(Schemas.valid("lineup", first.out()), "component", OTHER_PADS);
    JsonNode again = Schemas.valid("lineup", second.out());
    List<Double> kept = errors(again, "component", OTHER_PADS);
    double diagonal = Math.hypot(4080, 3060);
    assertThat(kept.get(kept.size() / 2)).isLessThan(0.002 * diagonal);
    assertThat(kept.get(kept.size() / 2)).isLessThan(2 * found.get(found.size() / 2));
    assertThat(kept.get(kept.size() * 95 / 100)).isLessThan(again.get("radius95").asDouble());
  }

  @Test
  void accepting_whatTheMapCanNotKeep_isRefusedAndNothingIsWritten() throws IOException {
    Path map = temp.resolve("same");
    copy(DEMO.resolve("map"), map);
    String before = Files.readString(map.resolve("map.json"));
    Shell.Run file = shell.run("lineup", map, "component", OTHER, "--accept");
    assertThat(file.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(file.err()).contains("add it first").hasLineCount(1);
    Path four = temp.resolve("four.csv");
    Files.writeString(four, "x1,y1,x2,y2\n1,1,2,2\n9,1,9,2\n9,9,8,8\n1,9,3,7\n");
    Shell.Run page = shell.run("lineup", map, "page-1", "component", "--pairs", four, "--accept");
    assertThat(page.code()).isNotZero();
    assertThat(page.err()).hasLineCount(1);
    assertThat(Files.readString(map.resolve("map.json"))).isEqualTo(before);
  }
}
