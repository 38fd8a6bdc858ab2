package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Table;
import org.relegend.store.MapFolder;

/** Twins on the demo map as it is shipped; the truth is its designators, A 1xx and B 2xx. */
class TwinsCommandTest {
  private static final Path DEMO =
      Path.of(System.getProperty("relegend.root", "..")).resolve("demo-data/map");

  private final Shell shell = new Shell();
  @TempDir private Path temp = Path.of("");

  /** The demo's map without pictures and without twins, to be written to. */
  private Path copy() throws Exception {
    Path folder = Files.createDirectory(temp.resolve("map"));
    Files.copy(DEMO.resolve("map.json"), folder.resolve("map.json"));
    try (MapFolder opened = MapFolder.open(folder)) {
      opened.save(opened.map().with(MapTables.TWINS, Table.empty()));
    }
    return folder;
  }

  private static Map<String, String> parts(JsonNode json) {
    Map<String, String> pairs = new TreeMap<>();
    for (JsonNode pair : json.get("pairs")) {
      if (pair.get("kind").asText().equals("part")) {
        pairs.put(pair.get("a").asText(), pair.get("b").asText());
      }
    }
    return pairs;
  }

  private static void assertWholeChannel(Map<String, String> parts) {
    assertThat(parts).hasSize(39);
    parts.forEach((a, b) -> assertThat(b).isEqualTo(a.replaceFirst("1", "2")));
  }

  @Test
  void oneSeed_givesTheDemosChannels_andTheirOneDifference() {
    Shell.Run run = shell.run("twins", DEMO, "--seed", "R101=R201", "--json");
    assertThat(run.code()).isZero();
    JsonNode json = Schemas.valid("twins", run.out());
    assertWholeChannel(parts(json));
    assertThat(json.get("differences")).hasSize(1);
    assertThat(json.get("differences").get(0).get("b").toString()).isEqualTo("[\"R225\",\"J203\"]");
    assertThat(json.get("contradictions")).isEmpty();
    assertThat(json.get("groups")).isEmpty();
    Shell.Run text = shell.run("twins", DEMO, "--seed", "R101=R201");
    assertThat(text.out())
        .contains("differs (missing): R225, J203 on B_E3 have no counterpart on A_E3")
        .contains("common to both: 0V, THR, VN, VP");
  }

  @Test
  void withNothingKnown_theChannelsAreFound() throws Exception {
    JsonNode json = Schemas.valid("twins", shell.run("twins", copy(), "--json").out());
    assertWholeChannel(parts(json));
  }

  @Test
  void accept_keepsThem_andTwinTellsThem() throws Exception {
    Path map = copy();
    Shell.Run run = shell.run("twins", map, "--seed", "R101=R201", "--accept", "--author", "kim");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("71 twins accepted");
    try (MapFolder opened = MapFolder.openReadOnly(map)) {
      BoardMap kept = opened.map();
      assertThat(kept.twins()).hasSize(71);
      assertThat(kept.twins().at(0).evidence().get(0).author()).isEqualTo("kim");
    }
    for (String[] pair :
        new String[][] {
          {"R116", "R216"}, {"U102/Y", "U202/Y"}, {"A_VC1", "B_VC1"}, {"R116.1", "R216.1"}
        }) {
      JsonNode json = Schemas.valid("twin", shell.run("twin", map, pair[0], "--json").out());
      assertThat(json.get("twins")).as(pair[0]).hasSize(1);
      assertThat(json.get("twins").get(0).get("subject").asText()).isEqualTo(pair[1]);
    }
    assertThat(shell.run("twins", map, "--accept").out()).doesNotContain("accepted");
  }

  @Test
  void aMark_isKept_andTold() throws Exception {
    Path map = copy();
    for (String[] bad :
        new String[][] {
          {"R225=whim", "\"whim\" is no cause: it is one of design, fault, repair"},
          {"R225", "write it as PLACE=CAUSE"},
          {"R101=fault", "the channels were not found to differ there"}
        }) {
      Shell.Run run = shell.run("twins", map, "--seed", "R101=R201", "--mark", bad[0]);
      assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
      assertThat(run.err()).contains(bad[1]);
    }
    shell.run("twins", map, "--seed", "R101=R201", "--mark", "R225=design");
    Shell.Run again = shell.run("twins", map, "--seed", "R101=R201", "--json");
    JsonNode difference = Schemas.valid("twins", again.out()).get("differences").get(0);
    assertThat(difference.get("cause").asText()).isEqualTo("design");
  }

  @Test
  void wrongSeeds_areContradictions_andNothingIsAccepted() throws Exception {
    Path map = copy();
    byte[] before = Files.readAllBytes(map.resolve("map.json"));
    Shell.Run run = shell.run("twins", map, "--seed", "R110=R211", "--json");
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    JsonNode first = Schemas.valid("twins", run.out()).get("contradictions").get(0);
    assertThat(first.get("pairs")).hasSize(1);
    assertThat(first.get("reason").asText()).startsWith("R110 fits R210 much better");
    Shell.Run accept = shell.run("twins", map, "--seed", "R110=R211", "--accept");
    assertThat(accept.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(accept.err()).contains("nothing was accepted, since R110=R211 can't be right");
    assertThat(Files.readAllBytes(map.resolve("map.json"))).isEqualTo(before);
  }

  @Test
  void badSeeds_areRefusedInOneLine() throws IOException {
    for (String[] bad :
        new String[][] {
          {"R101", "is no pair: write it as A=B"},
          {"R101=", "is no pair"},
          {"R101=R999", "R999"},
          {"R101=net:VP", "a part has a part"},
          {"R101=R101", "can't be its own twin"}
        }) {
      Shell.Run run = shell.run("twins", DEMO, "--seed", bad[0]);
      assertThat(run.code()).as(bad[0]).isEqualTo(ExitCode.REFUSED);
      assertThat(run.err().strip().lines()).hasSize(1);
      assertThat(run.err()).contains(bad[1]);
      assertThat(run.out()).isEmpty();
    }
  }
}
