package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.PartId;
import org.relegend.store.MapFolder;

/** Merging as a shell sees it, on the demo map. */
class MergeCommandTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));

  private final Shell shell = new Shell();

  @TempDir private Path temp;

  @BeforeEach
  void copies() throws IOException {
    String map = Files.readString(ROOT.resolve("demo-data/map/map.json"));
    write("base", map);
    write("mine", map);
    String part =
        "\"id\": \"R116\",\n      \"designator\": \"R116\",\n      \"kind\": \"resistor\",\n";
    assertThat(map).contains(part);
    int at = map.indexOf("\"value\"", map.indexOf(part));
    assertThat(map.substring(at)).startsWith("\"value\": \"330k");
    write("theirs", map.substring(0, at) + map.substring(at).replaceFirst("330k", "390k"));
    write("bent", map.substring(0, at) + map.substring(at).replaceFirst("330k", "270k"));
  }

  private void write(String name, String map) throws IOException {
    Files.createDirectories(temp.resolve(name));
    Files.writeString(temp.resolve(name).resolve("map.json"), map, StandardCharsets.UTF_8);
  }

  private String value(String folder) throws Exception {
    try (MapFolder opened = MapFolder.openReadOnly(temp.resolve(folder))) {
      return opened.map().part(new PartId("R116")).orElseThrow().value();
    }
  }

  /** Story 12: a colleague's 390k against my 330k is one conflict, and mine is not overwritten. */
  @Test
  void aColleaguesValue_withoutABase_isOneClash_andNothingIsOverwritten() throws Exception {
    Shell.Run run =
        shell.run(
            "merge",
            "-",
            temp.resolve("mine"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out"),
            "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    JsonNode clashes = Schemas.valid("merge", run.out()).get("clashes");
    assertThat(clashes).hasSize(1);
    assertThat(clashes.get(0).get("about").asText()).isEqualTo("value of R116");
    assertThat(clashes.get(0).get("mine").asText()).startsWith("330k");
    assertThat(clashes.get(0).get("theirs").asText()).startsWith("390k");
    assertThat(value("out")).startsWith("330k");
  }

  @Test
  void withTheBase_whatOneChangedIsTaken() throws Exception {
    Shell.Run run =
        shell.run(
            "merge",
            temp.resolve("base"),
            temp.resolve("mine"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("No clash is left.");
    assertThat(value("out")).startsWith("390k");
  }

  @Test
  void clashes_areDecidedAtOnceOrLater() throws Exception {
    Shell.Run run =
        shell.run(
            "merge",
            temp.resolve("base"),
            temp.resolve("bent"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out"));
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out()).contains("1. value of R116", "mine:   270k", "theirs: 390k");
    assertThat(shell.run("merge", temp.resolve("out")).out()).contains("1. value of R116");
    assertThat(shell.run("merge", temp.resolve("out"), "--theirs", "1").code()).isZero();
    assertThat(value("out")).startsWith("390k");
    Shell.Run decided =
        shell.run(
            "merge",
            temp.resolve("base"),
            temp.resolve("bent"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("second"),
            "--mine",
            "value of R116");
    assertThat(decided.code()).isZero();
    assertThat(value("second")).startsWith("270k");
  }

  @Test
  void wrongUse_isOneClearLine_andNothingIsWritten() throws IOException {
    Path full = Files.createDirectories(temp.resolve("full"));
    Files.writeString(full.resolve("notes.txt"), "mine");
    for (Object[] words :
        new Object[][] {
          {"merge", temp.resolve("base"), temp.resolve("mine")},
          {
            "merge",
            temp.resolve("gone"),
            temp.resolve("mine"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out")
          },
          {"merge", "-", temp.resolve("mine"), temp.resolve("theirs"), "--out", full},
          {
            "merge",
            "-",
            temp.resolve("mine"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out"),
            "--mine",
            "7"
          },
          {
            "merge",
            "-",
            temp.resolve("mine"),
            temp.resolve("theirs"),
            "--out",
            temp.resolve("out"),
            "--mine",
            "1",
            "--theirs",
            "1"
          },
        }) {
      Shell.Run run = shell.run(words);
      assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
      assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n");
      assertThat(temp.resolve("out")).doesNotExist();
    }
    assertThat(full).isDirectoryContaining("glob:**notes.txt");
    try (var list = Files.list(temp)) {
      assertThat(list.map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("base", "mine", "theirs", "bent", "full");
    }
  }
}
