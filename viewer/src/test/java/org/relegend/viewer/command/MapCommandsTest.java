package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way from empty map over tables to a joined list, through the commands alone. */
class MapCommandsTest {
  private final Shell shell = new Shell();

  @TempDir private Path temp;
  private Path map = Path.of("");

  @BeforeEach
  void demoTables() throws IOException {
    map = temp.resolve("map");
    copy("table/parts.csv", "parts.csv");
    copy("table/pins.csv", "pins.csv");
    copy("circuit/demo-nets.csv", "nets.csv");
    assertThat(shell.run("new", map, "--title", "Demo").code()).isZero();
  }

  private void copy(String resource, String name) throws IOException {
    try (InputStream in = getClass().getResourceAsStream("/org/relegend/" + resource)) {
      assertThat(in).as(resource).isNotNull();
      Files.copy(in, temp.resolve(name));
    }
  }

  private Shell.Run importDemo() {
    return shell.run(
        "import",
        map,
        "--json",
        "--parts",
        temp.resolve("parts.csv"),
        "--pins",
        temp.resolve("pins.csv"));
  }

  @Test
  void joined_eachNetOfTheDemo_equalsItsTable() throws IOException {
    Schemas.valid("import", importDemo().out());
    int nets = 0;
    for (String line : Files.readAllLines(temp.resolve("nets.csv"))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals("net")) {
        continue;
      }
      Shell.Run run = shell.run("joined", map, cells[0], "--json");
      assertThat(run.err()).isEmpty();
      Set<String> pins = new TreeSet<>();
      for (JsonNode pin : Schemas.valid("joined", run.out()).get("pins")) {
        pins.add(pin.get("part").asText() + "." + pin.get("pin").asText());
      }
      assertThat(pins).as(cells[0]).isEqualTo(new TreeSet<>(Arrays.asList(cells[4].split(" "))));
      nets++;
    }
    assertThat(nets).isEqualTo(67);
  }

  @Test
  void import_theSameTablesAgain_changesNotOneByte() throws IOException {
    importDemo();
    byte[] before = Files.readAllBytes(map.resolve("map.json"));
    Shell.Run again = importDemo();
    assertThat(again.code()).isZero();
    assertThat(Files.readAllBytes(map.resolve("map.json"))).isEqualTo(before);
    JsonNode counts = Schemas.valid("import", again.out());
    assertThat(counts.at("/parts/added").asInt() + counts.at("/pins").asInt()).isZero();
  }

  @Test
  void import_withAnError_isOneLineAndNothingWritten() throws IOException {
    byte[] before = Files.readAllBytes(map.resolve("map.json"));
    Path pins = temp.resolve("bad.csv");
    Files.writeString(pins, "net,part,pin\nA,R1,1\nB,R1\n", StandardCharsets.UTF_8);
    Shell.Run run = shell.run("import", map, "--pins", pins);
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("bad.csv", "line 3").doesNotContain("\n");
    assertThat(Files.readAllBytes(map.resolve("map.json"))).isEqualTo(before);
  }

  @Test
  void joined_forPeople_namesPinsRolesAndWhatIsMissing() {
    importDemo();
    String text = shell.run("joined", map, "A_MIR").out();
    assertThat(text)
        .startsWith("A_MIR: 5 pins joined, as built")
        .contains("U101.14", "Te collector", "R112.2", "12k", "inferred", "not placed yet");
  }

  @Test
  void joined_throughTheSwitchAndFuse_saysWhatItPassed() {
    importDemo();
    Shell.Run run =
        shell.run("joined", map, "MAINS_L_IN", "--extended", "--at", "SW1=on", "--json");
    JsonNode joined = Schemas.valid("joined", run.out());
    assertThat(joined.get("nets"))
        .map(JsonNode::asText)
        .containsExactly("MAINS_L_IN", "MAINS_L_FUSED", "MAINS_L_SW");
    for (JsonNode pin : joined.get("pins")) {
      if (pin.get("part").asText().equals("T1")) {
        assertThat(pin.get("through")).map(JsonNode::asText).containsExactly("F1", "SW1");
      }
    }
  }

  @Test
  void joined_misspeltNet_suggestsTheRightOne() {
    importDemo();
    Shell.Run run = shell.run("joined", map, "A_MIRR");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("A_MIR").doesNotContain("\n");
  }

  @Test
  void twin_undeclaredAndUnknown_areToldApart() {
    importDemo();
    Shell.Run none = shell.run("twin", map, "R101", "--json");
    assertThat(none.code()).isZero();
    assertThat(Schemas.valid("twin", none.out()).get("twins")).isEmpty();
    assertThat(shell.run("twin", map, "R999").code()).isEqualTo(ExitCode.REFUSED);
  }

  @Test
  void check_halfMadeMap_hasNoErrorAndExitCode0() {
    importDemo();
    Shell.Run run = shell.run("check", map, "--json");
    assertThat(run.code()).isZero();
    for (JsonNode finding : Schemas.valid("check", run.out()).get("findings")) {
      assertThat(finding.get("severity").asText()).as(finding.toString()).isNotEqualTo("error");
    }
  }

  @Test
  void check_contradiction_isAnErrorWithExitCode1() throws IOException {
    importDemo();
    Path file = map.resolve("map.json");
    String text = Files.readString(file);
    assertThat(text).contains("\"R7.2\"");
    Files.writeString(file, text.replace("\"R7.2\"", "\"R6.1\""));
    Shell.Run run = shell.run("check", map);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out()).contains("error", "R6.1");
  }

  @Test
  void add_photo_thenPlacementsFromATable() throws IOException {
    importDemo();
    Path photo = temp.resolve("top.png");
    ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    Shell.Run added =
        shell.run("add", map, photo, "--photo", "component", "--side", "component", "--json");
    assertThat(added.err()).isEmpty();
    JsonNode picture = Schemas.valid("add", added.out());
    assertThat(picture.get("picture").asText()).isEqualTo("component");
    assertThat(picture.get("width").asDouble()).isEqualTo(400);
    Path places = temp.resolve("places.csv");
    Files.writeString(places, "target,picture,x,y,evidence\nR101,component,20.5,30,seen\n");
    assertThat(shell.run("import", map, "--placements", places).err()).isEmpty();
    assertThat(shell.run("joined", map, "A_IN").out()).contains("component 21,30");
  }

  @Test
  void add_whatIsNoPicture_isOneLineAndNothingLeft() throws IOException {
    Path file = temp.resolve("notes.jpg");
    Files.writeString(file, "no picture");
    Shell.Run run = shell.run("add", map, file, "--photo", "top", "--side", "component");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("notes.jpg").doesNotContain("\n");
    assertThat(Files.exists(map.resolve("photos").resolve("top.jpg"))).isFalse();
  }

  @Test
  void names_unknownPage_saysWhatThereIs() {
    Shell.Run run = shell.run("names", map, "page-9");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err()).contains("no pages yet");
  }

  @Test
  void anyCommand_onNoMap_isOneLine() {
    for (String command : new String[] {"joined", "twin", "names"}) {
      Shell.Run run = shell.run(command, temp.resolve("nowhere"), "R1");
      assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
      assertThat(run.err().strip()).contains("nowhere").doesNotContain("\n");
    }
  }
}
