package org.relegend.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.relegend.bench.Instrument;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.MapLink;
import org.relegend.bench.entry.JobTables;
import org.relegend.circuit.Circuit;
import org.relegend.demo.design.Tables;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.store.JobFormat;
import org.relegend.store.MapFormat;
import org.relegend.table.TableException;
import org.relegend.table.TableSource;

/** A bench job over the demo map: one unit with a fault in channel A, as read and looked at. */
final class DemoJob {
  private static final Instant TAKEN = Instant.parse("2026-03-09T10:00:00Z");
  private static final String AUTHOR = "mk";
  private static final String METER = "power on; meter 10M; no signal";
  private static final Pattern CODE = Pattern.compile("code ([0-9]{4})");

  private final BoardMap map;

  DemoJob(BoardMap map) {
    this.map = map;
  }

  /** The job's files by their paths in the demo folder. */
  Map<String, byte[]> files() {
    byte[] readings = readings().getBytes(StandardCharsets.UTF_8);
    byte[] conditions = conditions().getBytes(StandardCharsets.UTF_8);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("job/readings.csv", readings);
    files.put("job/conditions.csv", conditions);
    files.put("job/job.json", JobFormat.write(job(readings, conditions)));
    return files;
  }

  private Job job(byte[] readings, byte[] conditions) {
    MapLink link = new MapLink(map.id(), MapFormat.digest(map), map.info().title(), "../map");
    Circuit circuit = Circuit.of(map);
    Job job =
        Job.empty("quillmarsh-unit-1", link)
            .withInstrument(Instrument.DIGITAL_METER)
            .withIntake(
                new IntakeRecord(
                    "Channel A faint and badly distorted, channel B fine.",
                    "",
                    "",
                    "",
                    "Somebody worked on it before.",
                    AUTHOR,
                    TAKEN));
    try {
      job =
          apply(
              job,
              JobTables.conditions(
                  job, circuit, source("conditions.csv", conditions), AUTHOR, TAKEN));
      return apply(
          job, JobTables.readings(job, circuit, source("readings.csv", readings), AUTHOR, TAKEN));
    } catch (TableException | EditRefusedException broken) {
      throw new IllegalStateException("the demo's own tables don't fit its map", broken);
    }
  }

  private static Job apply(Job job, JobTables.Plan plan) throws EditRefusedException {
    JobEdit edit = plan.edit();
    if (!plan.warnings().isEmpty()) {
      throw new IllegalStateException("the demo's own tables: " + plan.warnings());
    }
    return edit.applyTo(job);
  }

  private static TableSource source(String name, byte[] bytes) {
    return new TableSource(name, bytes);
  }

  /** Supplies first, then both channels node by node, in the order of the signal. */
  private static String readings() {
    StringBuilder text = new StringBuilder("at,quantity,value,unit,conditions\n");
    for (CSVRecord row : Tables.rows("readings_supply.csv")) {
      reading(text, row.get("node"), row.get("measured"));
    }
    for (CSVRecord row : Tables.rows("readings.csv")) {
      reading(text, "A_" + row.get("node"), row.get("channel A measured (fault)"));
      reading(text, "B_" + row.get("node"), row.get("channel B measured (good)"));
    }
    return text.toString();
  }

  private static void reading(StringBuilder text, String net, String measured) {
    int gap = measured.indexOf(' ');
    text.append(
        "%s,voltage,%s,%s,%s\n"
            .formatted(net, measured.substring(0, gap), measured.substring(gap + 1), METER));
  }

  /** What was seen, without what came out later. */
  private static String conditions() {
    StringBuilder text = new StringBuilder("part,condition,date_code,note\n");
    for (CSVRecord row : Tables.rows("condition.csv")) {
      String seen = row.get("evidence seen");
      Matcher code = CODE.matcher(seen);
      text.append(
          "%s,%s,%s,\"%s\"\n"
              .formatted(
                  row.get("designator"),
                  row.get("state"),
                  code.find() ? code.group(1) : "",
                  seen.replace("\"", "\"\"")));
    }
    return text.toString();
  }
}
