package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.lineup.CarriedPlacement;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.scan.ScanSamples;
import org.relegend.store.MapFolder;

/** The demo sent to someone with another photo and another scan; the truth is the demo's own. */
@Tag("long")
class ShareStoryTest {
  private static final Path DEMO = Path.of(System.getProperty("relegend.root", ".."), "demo-data");

  /** Pixels of the other unit's photo that a millimetre takes, about: 250 mm across 3,500 px. */
  private static final double PIXELS_A_MM = 14;

  private static final List<String> LANDMARKS = List.of("J1.L", "J203.2", "R206.2", "C104.2");

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

  private Path pairs(UnaryOperator<Point> seen) throws IOException {
    Map<String, Point> from = pads("component");
    Map<String, Point> to = pads("other-component");
    StringBuilder table = new StringBuilder("x1,y1,x2,y2\n");
    for (String pin : LANDMARKS) {
      Point a = from.get(pin);
      Point b = seen.apply(to.get(pin));
      table.append("%s,%s,%s,%s%n".formatted(a.x(), a.y(), b.x(), b.y()));
    }
    return Files.writeString(temp.resolve("pairs.csv"), table);
  }

  private Path unpacked() throws IOException {
    Path pack = temp.resolve("demo.relegend-pack");
    Shell.Run packed = shell.run("pack", DEMO.resolve("map"), pack, "--json");
    assertThat(packed.err()).isEmpty();
    Schemas.valid("pack", packed.out());
    try (ZipFile zip = new ZipFile(pack.toFile())) {
      assertThat(zip.stream().map(entry -> entry.getName()))
          .as("no byte of a scan")
          .containsExactly(
              "manifest.json", "map.json", "photos/component.jpg", "photos/solder.jpg");
    }
    Path there = temp.resolve("there");
    Shell.Run run = shell.run("unpack", pack, there, "--json");
    assertThat(run.err()).isEmpty();
    assertThat(Schemas.valid("unpack", run.out()).get("missing")).hasSize(2);
    Shell.Run added =
        shell.run(
            "add",
            there,
            DEMO.resolve("other-unit/component.jpg"),
            "--photo",
            "mine",
            "--side",
            "component");
    assertThat(added.code()).isZero();
    return there;
  }

  @Test
  void fourLandmarks_bringEveryPadToTheOtherUnitsPhoto_withinAMillimetre() throws Exception {
    Path there = unpacked();
    Path pairs = pairs(at -> at);
    assertThat(shell.run("lineup", there, "component", "mine", "--pairs", pairs, "--accept").code())
        .isZero();
    Map<String, Point> truth = pads("other-component");
    List<Double> errors = new ArrayList<>();
    int inCircle = 0;
    try (MapFolder opened = MapFolder.openReadOnly(there)) {
      PlacementCarrier carrier = PlacementCarrier.of(opened.map());
      for (CarriedPlacement carried : carrier.on(new PictureId("mine"))) {
        Placement place = carried.asPlacement();
        Point truePlace =
            place.subject() instanceof Subject.OfPin ? truth.get(place.subject().toString()) : null;
        if (truePlace != null && !LANDMARKS.contains(place.subject().toString())) {
          double error = place.at().distance(truePlace);
          errors.add(error);
          inCircle += error <= carried.radius95() ? 1 : 0;
        }
      }
    }
    assertThat(errors).hasSizeGreaterThan(200);
    long within = errors.stream().filter(error -> error < PIXELS_A_MM).count();
    assertThat(within)
        .as("pads within a millimetre of %s", errors.size())
        .isGreaterThan(errors.size() * 95L / 100);
    assertThat(inCircle).as("pads within their circles").isGreaterThan(errors.size() * 9 / 10);
  }

  /** Both pages as the recipient has them: skewed, smaller, cut off, on grey paper, with noise. */
  @Test
  void scansOfOnesOwn_areLinedUp_andEveryPlaceShowsWithinItsCircle() throws Exception {
    Path pdf = DEMO.resolve("map/pages/schematic.pdf");
    List<ScanSamples.Scan> scans =
        List.of(
            ScanSamples.of(pdf, 1, 2, true).scan(-2.3, 0.8, 0.05, 0.12, 20, 1),
            ScanSamples.of(pdf, 2, 3, false).scan(91.4, 0.7, 0, 0.06, 20, 2));
    Path pack = temp.resolve("demo.relegend-pack");
    assertThat(shell.run("pack", DEMO.resolve("map"), pack, "--no-photos").code()).isZero();
    Path there = temp.resolve("scanned");
    List<Object> words = new ArrayList<>(List.of("unpack", pack, there, "--json"));
    for (int i = 0; i < scans.size(); i++) {
      Path file = temp.resolve("my page " + (i + 1) + ".png");
      ImageIO.write(scans.get(i).image(), "png", file.toFile());
      words.addAll(List.of("--scan", file));
    }
    Shell.Run run = shell.run(words.toArray());
    assertThat(run.err()).isEmpty();
    JsonNode json = Schemas.valid("unpack", run.out()).get("scans");
    assertThat(json).hasSize(2);
    try (MapFolder opened = MapFolder.openReadOnly(there)) {
      for (int i = 0; i < scans.size(); i++) {
        assertThat(json.get(i).get("shows").asText()).isEqualTo("page-" + (i + 1));
        places(opened.map(), json.get(i).get("picture").asText(), scans.get(i));
      }
    }
  }

  private static void places(BoardMap map, String picture, ScanSamples.Scan scan) {
    int shown = 0;
    int inCircle = 0;
    for (CarriedPlacement carried : PlacementCarrier.of(map).on(new PictureId(picture))) {
      Point truePlace = scan.place(carried.source().at());
      shown++;
      inCircle += carried.at().distance(truePlace) <= carried.radius95() ? 1 : 0;
      assertThat(carried.radius95()).as("pixels").isLessThan(8);
    }
    assertThat(shown).isGreaterThan(60);
    assertThat(inCircle).as("of %s in their circles", shown).isGreaterThan(shown * 9 / 10);
  }

  @Test
  void theVerySameFile_becomesThePagesFile_andAScanOfSomethingElseIsToldAsSuch() throws Exception {
    Path pack = temp.resolve("demo.relegend-pack");
    shell.run("pack", DEMO.resolve("map"), pack, "--no-photos");
    Path same = DEMO.resolve("map/pages/schematic.pdf");
    Shell.Run run = shell.run("unpack", pack, temp.resolve("same"), "--scan", same);
    assertThat(run.out()).contains("is the file of Signal path").doesNotContain("page Signal");
    assertThat(temp.resolve("same/pages/schematic.pdf")).hasSameBinaryContentAs(same);
    Path photo = DEMO.resolve("other-unit/solder.jpg");
    run = shell.run("unpack", pack, temp.resolve("other"), "--scan", photo);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("not lined up").contains("pairs").contains("lineup");
    Path table = Files.writeString(temp.resolve("bad.csv"), "a,b\n1,2\n");
    run = shell.run("unpack", pack, temp.resolve("none"), "--scan", table);
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("bad.csv").doesNotContain("\n");
    run = shell.run("unpack", pack, temp.resolve("none"), "--scan", temp.resolve("gone.png"));
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("gone.png").doesNotContain("\n");
    assertThat(temp.resolve("none")).doesNotExist();
  }

  @Test
  void aMirroredPhoto_isCaughtAndNamed() throws Exception {
    Path there = unpacked();
    Path pairs = pairs(at -> new Point(4000 - at.x(), at.y()));
    Shell.Run run = shell.run("lineup", there, "component", "mine", "--pairs", pairs);
    assertThat((run.out() + run.err()).toLowerCase(java.util.Locale.ROOT)).contains("mirror");
  }

  @Test
  void unpack_refusesWithOneLine_andWritesNothing() throws IOException {
    Path bad =
        Files.writeString(temp.resolve("bad.relegend-pack"), "no archive, whatever its name");
    Shell.Run run = shell.run("unpack", bad, temp.resolve("out"));
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("bad.relegend-pack").doesNotContain("\n");
    assertThat(temp.resolve("out")).doesNotExist();
    Shell.Run gone = shell.run("unpack", temp.resolve("gone"), temp.resolve("out"));
    assertThat(gone.code()).isEqualTo(ExitCode.REFUSED);
    Shell.Run never =
        shell.run("pack", DEMO.resolve("map"), temp.resolve("p"), "--no-photos", "--never", "R116");
    assertThat(never.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(never.err()).contains("R116").contains("the map");
    assertThat(temp.resolve("p")).doesNotExist();
  }
}
