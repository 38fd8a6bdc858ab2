package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The commands on the demo map as it is shipped. */
class DemoMapCommandsTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  private static final Path MAP = ROOT.resolve("demo-data/map");

  private final Shell shell = new Shell();

  @Test
  void joined_eachNet_equalsTheDemosTable() throws IOException {
    int nets = 0;
    try (BufferedReader table =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    getClass().getResourceAsStream("/org/relegend/circuit/demo-nets.csv")),
                StandardCharsets.UTF_8))) {
      table.readLine();
      for (String line = table.readLine(); line != null; line = table.readLine()) {
        String[] cells = line.split(",", -1);
        Shell.Run run = shell.run("joined", MAP, cells[0], "--json");
        assertThat(run.err()).isEmpty();
        Set<String> pins = new TreeSet<>();
        for (JsonNode pin : Schemas.valid("joined", run.out()).get("pins")) {
          pins.add(pin.get("part").asText() + "." + pin.get("pin").asText());
        }
        assertThat(pins).as(cells[0]).isEqualTo(new TreeSet<>(Arrays.asList(cells[4].split(" "))));
        nets++;
      }
    }
    assertThat(nets).isEqualTo(67);
  }

  @Test
  void check_hasNoError() {
    Shell.Run run = shell.run("check", MAP, "--json");
    assertThat(run.code()).isZero();
    for (JsonNode finding : Schemas.valid("check", run.out()).get("findings")) {
      assertThat(finding.get("severity").asText()).isEqualTo("information");
    }
  }

  /** Every designator of the drawn page is found, within a letter or two of where it was drawn. */
  @Test
  void names_ofTheVectorPage_areWhereTheTruthHasThem() throws IOException {
    JsonNode names =
        Schemas.valid("names", shell.run("names", MAP, "page-1", "--json").out()).get("names");
    int checked = 0;
    for (String line : Files.readAllLines(ROOT.resolve("demo-data/truth/places.csv"))) {
      String[] cells = line.split(",", -1);
      if (!cells[0].equals("page-1") || !cells[1].equals("name")) {
        continue;
      }
      boolean found = false;
      for (JsonNode name : names) {
        found |=
            name.get("designator").asText().equals(cells[2].replaceFirst("/.*", ""))
                && Math.hypot(
                        name.get("x").asDouble() - Double.parseDouble(cells[3]),
                        name.get("y").asDouble() - Double.parseDouble(cells[4]))
                    < 5;
      }
      assertThat(found).as(line).isTrue();
      checked++;
    }
    assertThat(checked).isGreaterThan(70);
  }

  @Test
  void names_ofTheScannedPage_areNone() {
    Shell.Run run = shell.run("names", MAP, "page-2", "--json");
    assertThat(run.code()).isZero();
    assertThat(Schemas.valid("names", run.out()).get("names")).isEmpty();
  }

  @Test
  void twinOfANetWithoutLabel_liesWhereItsPinsDo() {
    Shell.Run run = new Shell().run("twin", MAP.toString(), "A_MIR");
    assertThat(run.out()).contains("B_MIR", "by its pins: ").doesNotContain("not placed yet");
  }

  @Test
  void twinOfAPin_followsFromTheCircuit() {
    assertThat(new Shell().run("twin", MAP.toString(), "R112.2").out()).contains("twin R212.2");
  }
}
