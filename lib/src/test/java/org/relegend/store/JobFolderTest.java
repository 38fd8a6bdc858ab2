package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.relegend.store.MapFolderTest.names;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.map.BoardMapSamples;
import org.relegend.store.StoreException.Kind;

class JobFolderTest {
  private static final Path PATH = Path.of("job.json");
  private static final String FULL = text(JobSamples.full());
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(JobFormat.schema(), InputFormat.JSON);

  @TempDir Path temp;

  private static String text(Job job) {
    return new String(JobFormat.write(job), StandardCharsets.UTF_8);
  }

  private static Job read(String text) throws StoreException {
    return JobFormat.read(text.getBytes(StandardCharsets.UTF_8), PATH);
  }

  @Test
  void whatIsWritten_isReadBackEqual_andHoldsToTheSchema() throws StoreException {
    for (Job job : List.of(JobSamples.full(), JobSamples.blank())) {
      assertThat(read(text(job))).isEqualTo(job);
      assertThat(SCHEMA.validate(text(job), InputFormat.JSON)).isEmpty();
    }
  }

  @Test
  void schema_namesTheFieldsThatTheFullJobHas() throws Exception {
    JsonNode schema = new ObjectMapper().readTree(JobFormat.schema());
    JsonNode full = new ObjectMapper().readTree(FULL);
    assertThat(full.properties()).hasSameSizeAs(schema.get("properties").properties());
    for (String list : List.of("reading", "condition", "limit", "logEntry", "mark")) {
      String field =
          switch (list) {
            case "logEntry" -> "log";
            case "mark" -> "checklist";
            default -> list + "s";
          };
      assertThat(full.get(field).get(0).properties())
          .as(list)
          .hasSameSizeAs(schema.at("/$defs/" + list + "/properties").properties());
    }
  }

  static List<String> changes() {
    return List.of(
        "\"format\": 1 -> \"format\": 2",
        "\"digest\": \"abab -> \"digest\": \"ABAB",
        "\"customer\": \"N. N.\" -> \"colour\": \"red\"",
        "\"ohms\": 10000000 -> \"ohms\": -1",
        "\"states\": [ -> \"states\": [\"mended\", ",
        "\"quantity\": \"voltage\" -> \"quantity\": \"number\"",
        "\"value\": -0.62 -> \"value\": \"-0.62\"",
        "\"lifted\": true -> \"lifted\": \"yes\"",
        "\"power\": \"on\" -> \"power\": \"half\"",
        "\"fraction\": 0.02 -> \"fraction\": 2",
        "\"result\": \"cause\" -> \"result\": \"perhaps\"",
        "\"step\": \"rails\" -> \"step\": \"dance\"",
        "\"kind\": \"repair\" -> \"kind\": \"party\"",
        "\"onto\": \"solder-side\", ->",
        "\"taken\": \"2026-03-04T12:00:00Z\" -> \"taken\": \"yesterday\"",
        "\"id\": 1, -> \"id\": 0,");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void whatTheReaderRefuses_theSchemaRefuses(String change) {
    String[] sides = change.split(" ?->", 2);
    String changed = FULL.replace(sides[0], sides[1].strip());
    assertThat(changed).as("the change took place").isNotEqualTo(FULL);
    assertThatThrownBy(() -> read(changed))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("job.json");
    assertThat(SCHEMA.validate(changed, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void saving_keepsTheJobBefore_andReadsBack() throws Exception {
    try (JobFolder folder = JobFolder.create(temp.resolve("job"), JobSamples.blank())) {
      folder.save(JobSamples.full());
      assertThat(folder.job()).isEqualTo(JobSamples.full());
    }
    JobFolder again = JobFolder.openReadOnly(temp.resolve("job"));
    assertThat(again.job()).isEqualTo(JobSamples.full());
    assertThat(again.readOnly()).isTrue();
    assertThat(names(temp.resolve("job"))).contains("job.json", "job.json.bak");
    assertThatThrownBy(() -> again.save(JobSamples.blank())).hasMessageContaining("reading only");
  }

  @Test
  void aDamagedFile_givesTheBackup_andIsSetAsideAtTheNextSave() throws Exception {
    Path file = temp.resolve("job.json");
    try (JobFolder folder = JobFolder.create(temp, JobSamples.blank())) {
      folder.save(JobSamples.full());
    }
    Files.writeString(file, "{\"format\": 1, \"id");
    try (JobFolder folder = JobFolder.open(temp)) {
      assertThat(folder.job()).isEqualTo(JobSamples.blank());
      assertThat(folder.notices()).anyMatch(notice -> notice.contains("job.json.bak"));
      folder.save(JobSamples.full());
    }
    assertThat(names(temp)).contains("job.json.damaged-1");
    assertThat(JobFolder.openReadOnly(temp).job()).isEqualTo(JobSamples.full());
  }

  @Test
  void aSecondWindow_getsItForReadingOnly_andOthersChangesAreNotOverwritten() throws Exception {
    try (JobFolder first = JobFolder.create(temp, JobSamples.blank())) {
      try (JobFolder second = JobFolder.open(temp)) {
        assertThat(second.readOnly()).isTrue();
        assertThat(second.notices()).isNotEmpty();
      }
      Files.write(temp.resolve("job.json"), JobFormat.write(JobSamples.full()));
      StoreException refused =
          catchThrowableOfType(StoreException.class, () -> first.save(JobSamples.blank()));
      assertThat(refused.kind()).isEqualTo(Kind.CHANGED_ON_DISK);
    }
    assertThat(JobFolder.openReadOnly(temp).job()).isEqualTo(JobSamples.full());
  }

  @ParameterizedTest(name = "step {0} of writing fails")
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void save_whenAStepFails_leavesTheOldJobOrTheNew(int step) throws Exception {
    JobFolder.create(temp, JobSamples.blank()).close();
    try (JobFolder folder = JobFolder.open(temp, new FailingDisk(step, FailingDisk.FULL))) {
      StoreException failure =
          catchThrowableOfType(StoreException.class, () -> folder.save(JobSamples.full()));
      assertThat(failure.kind()).isEqualTo(step < 5 ? Kind.DISK_FULL : Kind.FAILED);
      assertThat(folder.job()).isEqualTo(JobSamples.blank());
      folder.save(JobSamples.full()); // there is room again
    }
    assertThat(JobFolder.openReadOnly(temp).job()).isEqualTo(JobSamples.full());
  }

  @Test
  void aJob_isNeverPutIntoAMapsFolder_orOverAnother() throws StoreException {
    MapFolder.create(temp.resolve("map"), BoardMapSamples.blank()).close();
    assertThatThrownBy(() -> JobFolder.create(temp.resolve("map"), JobSamples.blank()))
        .hasMessageContaining("board map");
    JobFolder.create(temp.resolve("job"), JobSamples.blank()).close();
    assertThatThrownBy(() -> JobFolder.create(temp.resolve("job"), JobSamples.full()))
        .hasMessageContaining("already");
    assertThatThrownBy(() -> JobFolder.openReadOnly(temp.resolve("map")))
        .hasMessageContaining("there is no job.json");
    assertThatThrownBy(() -> JobFolder.open(temp.resolve("nothing")))
        .hasMessageContaining("no such folder");
  }

  @Test
  void closedJob_writesNothing_whileAnotherHoldsTheLock() throws Exception {
    Path folder = temp.resolve("job");
    JobFolder closed = JobFolder.create(folder, JobSamples.full());
    closed.close();
    byte[] before = Files.readAllBytes(folder.resolve(JobFolder.JOB_FILE));
    try (JobFolder other = JobFolder.open(folder)) {
      assertThat(other.readOnly()).isFalse();
      StoreException refused =
          catchThrowableOfType(StoreException.class, () -> closed.save(JobSamples.blank()));
      assertThat(refused.kind()).isEqualTo(Kind.READ_ONLY);
      assertThat(refused).hasMessageContaining("the job was closed, and nothing was saved");
      assertThat(Files.readAllBytes(folder.resolve(JobFolder.JOB_FILE))).isEqualTo(before);
      other.save(JobSamples.blank());
    }
  }

  @Test
  void closingTwice_doesNotFreeTheLockOfAnother() throws Exception {
    Path folder = temp.resolve("job");
    JobFolder closed = JobFolder.create(folder, JobSamples.full());
    closed.close();
    try (JobFolder other = JobFolder.open(folder)) {
      closed.close();
      try (JobFolder third = JobFolder.open(folder)) {
        assertThat(other.readOnly()).isFalse();
        assertThat(third.readOnly()).isTrue();
        assertThat(third.notices()).hasSize(1).first().asString().contains("has this job open");
      }
    }
  }

  @Test
  void changedOnDisk_tellsWhatSavingWouldRefuse() throws Exception {
    Path folder = temp.resolve("job");
    try (JobFolder open = JobFolder.create(folder, JobSamples.full())) {
      assertThat(open.changedOnDisk()).isFalse();
      Files.write(folder.resolve(JobFolder.JOB_FILE), JobFormat.write(JobSamples.blank()));
      assertThat(open.changedOnDisk()).isTrue();
      assertThatThrownBy(() -> open.save(JobSamples.full()))
          .hasMessageContaining("Save your job in another folder.");
    }
  }
}
