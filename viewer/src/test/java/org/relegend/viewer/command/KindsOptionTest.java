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
  private static final String PARTS =
      "designator,kind,value\nU1,twin-gain,\nR1,resistor,10k\nR2,resistor,10k\nR3,resistor,10k\n"
          + "R11,resistor,10k\nR12,resistor,10k\nR13,resistor,10k\n";
  private static final String PINS =
      "net,part,pin\nINL,R1,1\nL1,R1,2\nL1,U1,2\nL2,R2,1\nL2,U1,3\nCTL,R2,2\nL3,U1,1\nL3,R3,1\n"
          + "OUTL,R3,2\nINR,R11,1\nK1,R11,2\nK1,U1,13\nK2,R12,1\nK2,U1,12\nCTL,R12,2\nK3,U1,14\n"
          + "K3,R13,1\nOUTR,R13,2\nVM,U1,7\nVP,U1,11\n";

  private final Shell shell = new Shell();

  @TempDir private Path temp = Path.of("");
  private Path map = Path.of("");
  private Path kinds = Path.of("");

  @BeforeEach
  void tables() throws IOException {
    map = temp.resolve("map");
    kinds = file("own.csv", TWIN_GAIN);
    file("parts.csv", PARTS);
    file("pins.csv", PINS);
    assertThat(shell.run("new", map, "--title", "Two channels").code()).isZero();
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(temp.resolve(name), text, StandardCharsets.UTF_8);
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
    assertThat(pairs("--kinds", kinds)).containsExactly("R1=R11", "R2=R12", "R3=R13", "U1/A=U1/B");
  }

  @Test
  void import_withAFileOfKinds_writesItsSectionsIntoTheMap() {
    assertThat(imported("--kinds", kinds).code()).isZero();
    assertThat(pairs()).containsExactly("R1=R11", "R2=R12", "R3=R13", "U1/A=U1/B");
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
        Schemas.valid(
            "joined", shell.run("joined", map, "L1", "--kinds", kinds, "--json").out());
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
        assertThat(run.code()).as("%s", one[0]).isEqualTo(Commands.REFUSED);
        assertThat(run.err().strip()).contains("--kinds ", one[1].toString()).doesNotContain("\n");
        assertThat(run.out()).isEmpty();
      }
    }
    assertThat(Files.readAllBytes(map.resolve("map.json"))).isEqualTo(before);
  }
}
