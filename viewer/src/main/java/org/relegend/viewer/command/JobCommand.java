package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Condition;
import org.relegend.bench.Instrument;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.MapLink;
import org.relegend.bench.entry.JobTables;
import org.relegend.bench.entry.TypedSetup;
import org.relegend.bench.entry.WrittenTables;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.store.JobFolder;
import org.relegend.store.Json;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;
import org.relegend.store.WholeFile;
import org.relegend.table.TableException;
import org.relegend.table.TableSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code job FOLDER --map MAP [--readings r.csv] [--conditions c.csv] [--not-original]}. */
@Command(
    name = "job",
    description = {
      "Makes a bench job over a map, or extends one: readings and conditions of one unit.",
      "A job is private and is kept beside the map, never in it. Tables with an error change",
      "nothing, and tables read a second time change nothing either."
    })
final class JobCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--map",
      paramLabel = "MAP",
      description = "the folder of the map; needed to make a job, and where the map has moved")
  private @Nullable Path map;

  @Option(
      names = "--readings",
      paramLabel = "FILE",
      description =
          "at,quantity,value,unit,conditions; conditions like: power on; against VN; meter 10M;"
              + " lifted; limit 5 mV")
  private @Nullable Path readings;

  @Option(
      names = "--conditions",
      paramLabel = "FILE",
      description = "part,condition,date_code,note")
  private @Nullable Path conditions;

  @Option(
      names = "--not-original",
      description = "lists the parts that are replaced, re-soldered, socketed, damaged or missing")
  private boolean notOriginal;

  @Option(
      names = "--readings-out",
      paramLabel = "FILE",
      description = "writes all readings as a table that --readings takes")
  private @Nullable Path readingsOut;

  @Option(
      names = "--conditions-out",
      paramLabel = "FILE",
      description = "writes all conditions as a table that --conditions takes")
  private @Nullable Path conditionsOut;

  @Option(names = "--complaint", paramLabel = "TEXT", description = "in the owner's own words")
  private String complaint = "";

  @Option(names = "--customer", paramLabel = "NAME", description = "stays in the job")
  private String customer = "";

  @Option(names = "--serial", paramLabel = "NUMBER", description = "stays in the job")
  private String serial = "";

  @Option(
      names = "--meter",
      paramLabel = "OHMS",
      description = "input resistance of the usual meter, like 10M")
  private String meter = "";

  @Mixin private AuthorOption author = new AuthorOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    try {
      requireFree(readingsOut);
      requireFree(conditionsOut);
      return JobFolder.isJob(folder) ? extended() : made();
    } catch (TableException wrong) {
      throw new CommandFailure(wrong.inOneLine());
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private CommandResult made()
      throws CommandFailure, StoreException, EditRefusedException, TableException {
    if (map == null) {
      throw new CommandFailure(
          "there is no job in %s: to make one, name the map it lies over with --map"
              .formatted(folder));
    }
    BoardMap under = openToRead(map).map();
    Instant now = Clock.systemUTC().instant();
    String id =
        "job-"
            + DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC).format(now);
    Contents filling = new Contents(Job.empty(id, link(under, map)), under, now, true);
    Job job = filling.filled();
    JobFolder.create(folder, job).close();
    filling.written();
    return filling.result();
  }

  private CommandResult extended()
      throws CommandFailure, StoreException, EditRefusedException, TableException {
    try (JobFolder opened = JobFolder.open(folder)) {
      if (opened.readOnly()) {
        throw new CommandFailure(String.join(" ", opened.notices()));
      }
      Path place = map == null ? opened.mapPlace() : map;
      BoardMap under = openToRead(place).map();
      Job job = opened.job();
      if (!job.map().id().equals(under.id())) {
        throw new CommandFailure(
            "the job in %s lies over the map \"%s\", and %s holds another, \"%s\""
                .formatted(folder, job.map().title(), place, under.info().title()));
      }
      Contents filling =
          new Contents(job.withMap(link(under, place)), under, Clock.systemUTC().instant(), false);
      if (!job.map().digest().equals(MapFormat.digest(under))) {
        filling.warnings.add(
            "The map has changed since this job last saw it; the job now lies over the map as it"
                + " is.");
      }
      Job changed = filling.filled();
      filling.changed = !changed.equals(job);
      if (filling.changed) {
        opened.save(changed);
      }
      filling.written();
      return filling.result();
    }
  }

  /** A table is written where there is none yet, so that a wrong name costs nobody a file. */
  private static void requireFree(@Nullable Path file) throws CommandFailure {
    if (file != null && Files.exists(file)) {
      throw new CommandFailure(
          "there is a file %s already, and it was left alone: choose another name".formatted(file));
    }
  }

  private MapLink link(BoardMap under, Path place) {
    return new MapLink(
        under.id(), MapFormat.digest(under), under.info().title(), JobFolder.place(folder, place));
  }

  /** One run: the job as it is filled, and what there is to tell of it. */
  private final class Contents {
    private final Circuit circuit;
    private final Instant now;
    private final boolean created;
    private final List<String> warnings = new ArrayList<>();
    private Job job;
    private boolean changed;
    private Json readingCounts = counts(0, 0);
    private Json conditionCounts = counts(0, 0);

    Contents(Job job, BoardMap under, Instant now, boolean created) {
      this.job = job;
      this.circuit = Circuit.of(under);
      this.now = now;
      this.created = created;
    }

    Job filled() throws TableException, EditRefusedException {
      intake();
      if (conditions != null) {
        JobTables.Plan plan =
            JobTables.conditions(job, circuit, TableSource.of(conditions), author.author(), now);
        conditionCounts = taken(plan);
      }
      if (readings != null) {
        JobTables.Plan plan =
            JobTables.readings(job, circuit, TableSource.of(readings), author.author(), now);
        readingCounts = taken(plan);
      }
      return job;
    }

    private void intake() throws EditRefusedException {
      if (!complaint.isEmpty() || !customer.isEmpty() || !serial.isEmpty()) {
        IntakeRecord old = job.intake();
        IntakeRecord changed =
            new IntakeRecord(
                complaint.isEmpty() ? old.complaint() : complaint,
                customer.isEmpty() ? old.customer() : customer,
                serial.isEmpty() ? old.serial() : serial,
                old.accessories(),
                old.history(),
                author.author().isEmpty() ? old.receivedBy() : author.author(),
                old.at().equals(Instant.EPOCH) ? now : old.at());
        job = new JobEdit.ChangeIntake(changed).applyTo(job);
      }
      if (!meter.isEmpty()) {
        double ohms = TypedSetup.inputOhms(meter);
        job = new JobEdit.ChangeInstrument(new Instrument("", ohms, 0)).applyTo(job);
      }
    }

    void written() throws StoreException {
      if (readingsOut != null) {
        write(readingsOut, WrittenTables.readings(job, circuit.map()));
      }
      if (conditionsOut != null) {
        write(conditionsOut, WrittenTables.conditions(job, circuit.map()));
      }
    }

    private void write(Path file, String text) throws StoreException {
      WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private Json listed() {
      return Json.array(
          job.conditions().stream().filter(Condition::notOriginal).toList(),
          condition ->
              Json.object()
                  .put("part", circuit.map().nameOf(condition.part()))
                  .put("condition", condition.text())
                  .put("date_code", condition.dateCode())
                  .put("value", condition.fitted())
                  .put("note", condition.note()));
    }

    private void list(PrintWriter out) {
      TextTable table = new TextTable();
      job.conditions().stream()
          .filter(Condition::notOriginal)
          .forEach(
              condition ->
                  table.row(
                      circuit.map().nameOf(condition.part()),
                      condition.text(),
                      condition.fitted(),
                      condition.dateCode(),
                      condition.note()));
      out.println(
          table.isEmpty() ? "No part is known to be other than original." : "Not original:");
      table.print(out, "  ");
    }

    private Json taken(JobTables.Plan plan) throws EditRefusedException {
      job = plan.edit().applyTo(job);
      warnings.addAll(plan.warnings());
      return counts(plan.count(), plan.same());
    }

    private Json counts(int added, int same) {
      return Json.object().put("added", added).put("same", same);
    }

    CommandResult result() {
      return CommandResult.ok(
          () ->
              Json.object()
                  .put("job", job.id())
                  .put("map", job.map().id())
                  .put("created", created)
                  .put("readings", readingCounts)
                  .put("conditions", conditionCounts)
                  .put("not_original", listed())
                  .put("warnings", Json.texts(warnings)),
          out -> {
            warnings.forEach(warning -> out.println("note: " + warning));
            out.println(
                "%s in %s over \"%s\": %s, %s."
                    .formatted(
                        created ? "Made the job" : changed ? "Extended the job" : "The job",
                        folder,
                        job.map().title(),
                        counted(job.readings().size(), "reading"),
                        counted(job.conditions().size(), "condition")));
            if (notOriginal) {
              list(out);
            }
          });
    }

    private static String counted(int count, String thing) {
      return count + " " + thing + (count == 1 ? "" : "s");
    }
  }
}
