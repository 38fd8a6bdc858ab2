package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;

/** {@code job} and {@code suspects}, on the demo's map and job as they are shipped. */
class JobCommandsTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  private static final Path MAP = ROOT.resolve("demo-data/map");
  private static final Path JOB = ROOT.resolve("demo-data/job");

  private final Shell shell = new Shell();

  @TempDir Path temp;

  private Path table(String name, String... lines) throws IOException {
    return Files.writeString(temp.resolve(name), String.join("\n", lines) + "\n");
  }

  private static List<String> texts(JsonNode list, String field) {
    List<String> texts = new ArrayList<>();
    list.forEach(entry -> texts.add(field.isEmpty() ? entry.asText() : entry.get(field).asText()));
    return texts;
  }

  @Test
  void suspects_ofTheDemosJob_nameTheFaultFirst() {
    Shell.Run run = shell.run("suspects", JOB, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode answer = Schemas.valid("suspects", run.out());
    JsonNode first = answer.get("suspects").get(0);
    assertThat(first.get("part").asText()).isEqualTo("C102");
    assertThat(texts(first.get("reasons"), ""))
        .anyMatch(reason -> reason.contains("33 k\u03a9"))
        .anyMatch(reason -> reason.contains("last good node (A_C1)"));
    assertThat(texts(answer.get("findings"), "code"))
        .contains("capacitor-passes-direct-current", "output-at-rail");
    assertThat(answer.get("next").get("at").asText()).isNotEmpty();
    assertThat(texts(answer.get("cautions"), "title"))
        .containsExactlyElementsOf(Cautions.all().stream().map(Caution::title).toList());
    assertThat(texts(answer.get("bracket").get("parts"), "")).containsExactly("C102");
    int flagged = 0;
    for (JsonNode compared : answer.get("compared")) {
      flagged += compared.get("flagged").asBoolean() ? 1 : 0;
    }
    assertThat(flagged).isEqualTo(8);
  }

  @Test
  void suspects_forPeople_tellSuspectsFindingsNextAndCautions() {
    String out = shell.run("suspects", JOB).out();
    assertThat(out).contains("C102").contains("What the readings say:").contains("Next: ");
    String flat = out.replaceAll("\\s+", " ");
    for (Caution caution : Cautions.all()) {
      assertThat(flat.split(Pattern.quote(caution.title() + ". " + caution.text()), -1))
          .as(caution.title())
          .hasSize(2);
    }
  }

  @Test
  void job_fromTheDemosTables_givesTheSameSuspects() {
    Path job = temp.resolve("job");
    Shell.Run made =
        shell.run(
            "job",
            job,
            "--map",
            MAP,
            "--readings",
            JOB.resolve("readings.csv"),
            "--conditions",
            JOB.resolve("conditions.csv"),
            "--complaint",
            "A faint",
            "--serial",
            "0042",
            "--json");
    assertThat(made.code()).as(made.err()).isZero();
    JsonNode answer = Schemas.valid("job", made.out());
    assertThat(answer.get("created").asBoolean()).isTrue();
    assertThat(answer.get("readings").get("added").asInt()).isEqualTo(47);
    assertThat(answer.get("conditions").get("added").asInt()).isEqualTo(8);
    JsonNode suspects =
        Schemas.valid("suspects", shell.run("suspects", job, "--json").out()).get("suspects");
    assertThat(suspects.get(0).get("part").asText()).isEqualTo("C102");
  }

  /** Practice, story 8: what isn't original, and the date code in what is written out. */
  @Test
  void job_listsWhatIsNotOriginal_andWritesItsTables_whichGiveTheSameJobAgain() throws IOException {
    Path job = Files.createDirectories(temp.resolve("job"));
    Path readings = temp.resolve("readings.csv");
    Path conditions = temp.resolve("conditions.csv");
    Files.copy(JOB.resolve("job.json"), job.resolve("job.json"));
    Shell.Run run =
        shell.run(
            "job",
            job,
            "--map",
            MAP,
            "--readings-out",
            readings,
            "--conditions-out",
            conditions,
            "--json");
    assertThat(run.code()).as(run.err()).isZero();
    JsonNode answer = Schemas.valid("job", run.out());
    assertThat(texts(answer.get("not_original"), "part"))
        .containsExactlyInAnyOrder("U102", "U101", "C202", "C2", "Q101", "R4");
    String listed = shell.run("job", job, "--not-original").out();
    assertThat(listed.lines().filter(line -> line.startsWith("  ")).map(String::strip))
        .map(line -> line.split(" ")[0])
        .containsExactlyInAnyOrder("U102", "U101", "C202", "C2", "Q101", "R4");
    assertThat(listed).contains("9114");
    assertThat(Files.readString(conditions)).contains("U102,replaced + socketed,9114,");

    Path again = temp.resolve("again");
    Shell.Run made =
        shell.run("job", again, "--map", MAP, "--readings", readings, "--conditions", conditions);
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(suspectsOf(again)).isEqualTo(suspectsOf(job));
    Shell.Run twice = shell.run("job", job, "--readings-out", readings);
    assertThat(twice.code()).isEqualTo(2);
    assertThat(twice.err()).contains("left alone").hasLineCount(1);
  }

  /** A photo of the unit is lined up by itself with the map's, which is never written to. */
  @Test
  void add_toAJob_takesItsOwnPhoto_andTheRecordPrintsIt() throws IOException {
    byte[] before = Files.readAllBytes(MAP.resolve("map.json"));
    Path job = temp.resolve("job");
    shell.run("job", job, "--map", MAP, "--conditions", JOB.resolve("conditions.csv"));
    Path photo = ROOT.resolve("demo-data/other-unit/component.jpg");
    Shell.Run added =
        shell.run("add", job, photo, "--photo", "top", "--side", "component", "--json");
    assertThat(added.code()).as(added.err()).isZero();
    assertThat(Schemas.valid("add", added.out()).get("onto").asText()).isEqualTo("component");
    Shell.Run near =
        shell.run(
            "add", job, photo, "--photo", "near", "--side", "component", "--shows", "C102,R106");
    assertThat(near.out()).contains("close-up");
    Shell.Run wrong =
        shell.run("add", job, photo, "--photo", "x", "--side", "component", "--shows", "C999");
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err()).contains("C999").hasLineCount(1);
    assertThat(shell.run("sheet", job, temp.resolve("shop.pdf")).code()).isZero();
    assertThat(Files.size(temp.resolve("shop.pdf"))).isGreaterThan(50_000);
    assertThat(Files.readAllBytes(MAP.resolve("map.json"))).isEqualTo(before);
  }

  private String suspectsOf(Path job) {
    return Schemas.valid("suspects", shell.run("suspects", job, "--json").out())
        .get("suspects")
        .toString();
  }

  @Test
  void job_extended_addsWhatIsNew_andNothingTwice() throws IOException {
    Path job = temp.resolve("job");
    Path readings = table("r.csv", "at,quantity,value,unit,conditions", "A_C1,voltage,9.01,V,");
    assertThat(shell.run("job", job, "--map", MAP, "--readings", readings).code()).isZero();
    byte[] before = Files.readAllBytes(job.resolve("job.json"));
    JsonNode again =
        Schemas.valid("job", shell.run("job", job, "--readings", readings, "--json").out());
    assertThat(again.get("created").asBoolean()).isFalse();
    assertThat(again.get("readings").get("same").asInt()).isEqualTo(1);
    assertThat(Files.readAllBytes(job.resolve("job.json"))).isEqualTo(before);
    Path more = table("more.csv", "at,value,unit", "A_ATT,5.34,V");
    JsonNode added =
        Schemas.valid("job", shell.run("job", job, "--readings", more, "--json").out());
    assertThat(added.get("readings").get("added").asInt()).isEqualTo(1);
  }

  /** The map is never written to, and a job is never put into it. */
  @Test
  void job_leavesTheMapAlone() throws IOException {
    byte[] before = Files.readAllBytes(MAP.resolve("map.json"));
    assertThat(shell.run("job", temp.resolve("job"), "--map", MAP).code()).isZero();
    assertThat(Files.readAllBytes(MAP.resolve("map.json"))).isEqualTo(before);
    Shell.Run inside = shell.run("job", MAP, "--map", MAP);
    assertThat(inside.code()).isEqualTo(2);
    assertThat(inside.err()).contains("board map").hasLineCount(1);
    Path below = temp.resolve("m/jobs/j2");
    shell.run("new", temp.resolve("m"), "--title", "T");
    Shell.Run deep = shell.run("job", below, "--map", temp.resolve("m"));
    assertThat(deep.code()).isEqualTo(2);
    assertThat(deep.err()).contains("beside it").hasLineCount(1);
    assertThat(Files.exists(below.getParent())).isFalse();
    assertThat(MAP.resolve("job.json")).doesNotExist();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'A_C1,voltage,5,ohm,', 'line 2, column value'",
    "'A_C1,voltage,five,V,', 'line 2, column value'",
    "'A_TIME,voltage,-12,V,', 'which meter'",
    "'A_C1,voltage,5,V,against NOWHERE', 'no such net'",
    "'A_C1,voltage,5', '3 cells'"
  })
  void badReadings_areOneClearLine_andNothingIsMade(String row, String text) throws IOException {
    Path readings = table("r.csv", "at,quantity,value,unit,conditions", row);
    Path job = temp.resolve("job");
    Shell.Run run = shell.run("job", job, "--map", MAP, "--readings", readings);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(text).hasLineCount(1);
    assertThat(job).doesNotExist();
  }

  @Test
  void badReadings_leaveAJobAsItWas() throws IOException {
    Path job = temp.resolve("job");
    shell.run("job", job, "--map", MAP);
    byte[] before = Files.readAllBytes(job.resolve("job.json"));
    Path readings = table("r.csv", "at,value,unit", "A_C1,9.01,V", "A_ATT,5,bananas", "A_VB1,x,V");
    Shell.Run run = shell.run("job", job, "--readings", readings);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("1 more problem", "at r.csv, line 4, column value")
        .hasLineCount(1);
    assertThat(Files.readAllBytes(job.resolve("job.json"))).isEqualTo(before);
  }

  @Test
  void aPartThatIsNotInTheMap_isKeptAndFlagged() throws IOException {
    Path job = temp.resolve("job");
    Path readings = table("r.csv", "at,value,unit", "R999,4.7,kohm");
    JsonNode made =
        Schemas.valid(
            "job", shell.run("job", job, "--map", MAP, "--readings", readings, "--json").out());
    assertThat(texts(made.get("warnings"), "")).anyMatch(warning -> warning.contains("R999"));
    JsonNode answer = Schemas.valid("suspects", shell.run("suspects", job, "--json").out());
    assertThat(texts(answer.get("findings"), "code")).contains("not-in-the-map");
  }

  @Test
  void aMapChangedSince_isTold_andAnotherMapRefused() throws IOException {
    Path map = temp.resolve("map");
    Files.createDirectories(map);
    String text = Files.readString(MAP.resolve("map.json"));
    Files.writeString(map.resolve("map.json"), text);
    Path job = temp.resolve("job");
    assertThat(shell.run("job", job, "--map", map).code()).isZero();
    Files.writeString(
        map.resolve("map.json"), text.replace("\"issue\": \"ISS 3\"", "\"issue\": \"ISS 4\""));
    Shell.Run suspects = shell.run("suspects", job, "--json");
    assertThat(suspects.code()).isZero();
    assertThat(suspects.err()).contains("map has changed").hasLineCount(1);
    JsonNode extended =
        Schemas.valid("job", shell.run("job", job, "--meter", "11M", "--json").out());
    assertThat(texts(extended.get("warnings"), "")).anyMatch(w -> w.contains("has changed"));
    assertThat(shell.run("suspects", job).err()).isEmpty();

    Path other = temp.resolve("other");
    shell.run("new", other, "--title", "Another");
    Shell.Run wrong = shell.run("suspects", job, "--map", other);
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err()).contains("holds another").hasLineCount(1);
    Files.move(map, temp.resolve("moved"));
    Shell.Run gone = shell.run("suspects", job);
    assertThat(gone.code()).isEqualTo(2);
    assertThat(gone.err()).contains("--map").hasLineCount(1);
    assertThat(shell.run("suspects", job, "--map", temp.resolve("moved")).code()).isZero();
  }

  @Test
  void wrongFolders_areToldInOneLine() {
    for (Shell.Run run :
        List.of(
            shell.run("suspects", temp.resolve("nothing")),
            shell.run("suspects", MAP),
            shell.run("suspects", temp),
            shell.run("job", temp.resolve("job")),
            shell.run("job", temp.resolve("job"), "--map", temp.resolve("nothing")),
            shell.run("job", temp.resolve("job"), "--map", MAP, "--meter", "lots"),
            shell.run("job", temp.resolve("job"), "--map", MAP, "--meter", "10m"),
            shell.run("job", temp.resolve("job"), "--map", MAP, "--readings", "none.csv"))) {
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).hasLineCount(1);
    }
    assertThat(temp.resolve("job")).doesNotExist();
  }
}
