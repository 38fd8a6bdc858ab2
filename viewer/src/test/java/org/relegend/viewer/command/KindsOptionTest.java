package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part that the program doesn't know, whose halves serve two channels: its pins from a file. */
class KindsOptionTest {
  private static final String HEAD =
      "kind,aliases,family,letters,quantity,through,polarity,traits,rest,package,pins,paths,barrier"
          + ",source\n";
  private static final String TWIN_GAIN =
      HEAD
          + "twin-gain,,ic,U,none,,,,,DIP-14,A[2=in 3=control 1=out] B[13=in 12=control 14=out]"
          + " 7=V- 11=V+,*~* internal,,our own\n";
  private static final List<String> PARTS_OF_BOTH =
      List.of("R1=R11", "R2=R12", "R3=R13", "R4=R14", "R5=R15", "R6=R16", "U1/A=U1/B");

  private final Shell shell = new Shell();

  @TempDir private Path temp = Path.of("");
  private Path map = Path.of("");
  private Path kinds = Path.of("");

  @BeforeEach
  void tables() throws IOException {
    map = temp.resolve("map");
    kinds = file("own.csv", TWIN_GAIN);
    StringBuilder parts = new StringBuilder("designator,kind,value\nU1,twin-gain,\n");
    StringBuilder pins = new StringBuilder("net,part,pin\nVM,U1,7\nVP,U1,11\n");
    channel("L", 0, List.of("2", "3", "1"), parts, pins);
    channel("R", 10, List.of("13", "12", "14"), parts, pins);
    file("parts.csv", parts.toString());
    file("pins.csv", pins.toString());
    assertThat(shell.run("new", map, "--title", "Two channels").code()).isZero();
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(temp.resolve(name), text, StandardCharsets.UTF_8);
  }

  /** R1 into the half, R2 to its control, and R3 to R6 in a row behind it. */
  private static void channel(
      String name, int from, List<String> half, StringBuilder parts, StringBuilder pins) {
    for (int i = 1; i <= 6; i++) {
      parts.append("R%d,resistor,%dk\n".formatted(from + i, i));
    }
    pins.append("IN_%1$s,R%2$d,1\nG_%1$s,R%2$d,2\n".formatted(name, from + 1));
    pins.append("G_%1$s,U1,%2$s\n".formatted(name, half.get(0)));
    pins.append("C_%1$s,R%2$d,1\nCTL,R%2$d,2\n".formatted(name, from + 2));
    pins.append("C_%1$s,U1,%2$s\nO3_%1$s,U1,%3$s\n".formatted(name, half.get(1), half.get(2)));
    for (int i = 3; i <= 6; i++) {
      pins.append("O%d_%s,R%d,1\n".formatted(i, name, from + i));
      pins.append("O%d_%s,R%d,2\n".formatted(i + 1, name, from + i));
    }
  }

  private Shell.Run imported(Object... more) {
    List<Object> words =
        new java.util.ArrayList<>(
            List.of(
                "import",
                map,
                "--parts",
                temp.resolve("parts.csv"),
                "--pins",
                temp.resolve("pins.csv")));
    words.addAll(List.of(more));
    return shell.run(words.toArray());
  }

  private Set<String> pairs(Object... more) {
    List<Object> words =
        new java.util.ArrayList<>(List.of("twins", map, "--seed", "R1=R11", "--json"));
    words.addAll(List.of(more));
    Set<String> pairs = new TreeSet<>();
    for (JsonNode pair : Schemas.valid("twins", shell.run(words.toArray()).out()).get("pairs")) {
      if (!pair.get("kind").asText().equals("net")) {
        pairs.add(pair.get("a").asText() + "=" + pair.get("b").asText());
      }
    }
    return pairs;
  }

  @Test
  void twins_withAFileOfKinds_goThroughThePart() {
    assertThat(imported().code()).isZero();
    assertThat(pairs()).doesNotContain("R3=R13");
    assertThat(pairs("--kinds", kinds)).containsExactlyElementsOf(PARTS_OF_BOTH);
  }

  @Test
  void import_withAFileOfKinds_writesItsSectionsIntoTheMap() {
    assertThat(imported("--kinds", kinds).code()).isZero();
    assertThat(pairs()).containsExactlyElementsOf(PARTS_OF_BOTH);
    shell.run("twins", map, "--seed", "R1=R11", "--accept", "--author", "kim");
    JsonNode twin =
        Schemas.valid("twin", shell.run("twin", map, "R3", "--kinds", kinds, "--json").out());
    assertThat(twin.get("twins").get(0).get("subject").asText()).isEqualTo("R13");
  }

  @Test
  void check_withAFileOfKinds_knowsThem() {
    assertThat(imported().code()).isZero();
    assertThat(shell.run("check", map).out()).contains("twin-gain");
    assertThat(shell.run("check", map, "--kinds", kinds).out()).doesNotContain("twin-gain");
    JsonNode joined =
        Schemas.valid("joined", shell.run("joined", map, "G_L", "--kinds", kinds, "--json").out());
    assertThat(joined.get("pins").toString()).contains("\"section\":\"A\"", "\"role\":\"in\"");
    assertThat(shell.run("hazards", map, "--kinds", kinds).err()).isEmpty();
  }

  @Test
  void aBadFile_isOneLine_andNothingIsWritten() throws IOException {
    byte[] before = Files.readAllBytes(map.resolve("map.json"));
    Path latin = temp.resolve("latin.csv");
    Files.write(latin, (TWIN_GAIN + "caf\u00e9").getBytes(StandardCharsets.ISO_8859_1));
    Object[][] bad = {
      {file("a.csv", HEAD + "x,,ic,U,farads,,,,,,1=in,,,\n"), "a.csv, line 2, column \"quantity\""},
      {file("b.csv", "kind,pins\nx,1=in\n"), "b.csv: the first line must name the columns"},
      {file("c.csv", "\"kind"), "c.csv"},
      {file("d.csv", HEAD + "npn2,npn,ic,U,none,,,,,,1=in,,,\n"), "\"npn\" is a word both for"},
      {latin, "latin.csv is not in UTF-8"},
      {temp.resolve("none.csv"), "none.csv is not there: give a table of kinds of part"},
      {temp, "can't be read"}
    };
    for (Object[] one : bad) {
      for (Shell.Run run :
          List.of(
              imported("--kinds", one[0]),
              shell.run("twins", map, "--seed", "R1=R11", "--kinds", one[0]),
              shell.run("twin", map, "R1", "--kinds", one[0]),
              shell.run("check", map, "--kinds", one[0]))) {
        assertThat(run.code()).as("%s", one[0]).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err().strip()).contains("--kinds ", one[1].toString()).doesNotContain("\n");
        assertThat(run.out()).isEmpty();
      }
    }
    assertThat(Files.readAllBytes(map.resolve("map.json"))).isEqualTo(before);
  }
}
