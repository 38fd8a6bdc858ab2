package org.relegend.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/** The demo's map, and jobs over it. */
public final class DemoUnit {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  private static final Circuit CIRCUIT = Circuit.of(load());

  private DemoUnit() {}

  private static BoardMap load() {
    try {
      return MapFolder.openReadOnly(ROOT.resolve("demo-data/map")).map();
    } catch (StoreException e) {
      throw new AssertionError(e);
    }
  }

  public static Circuit circuit() {
    return CIRCUIT;
  }

  /** A reading at a net, in volts, with a meter of 10 megohms. */
  public static Job read(Job job, String net, double volts) {
    return read(job, net, volts, MeasurementSetup.with(Instrument.DIGITAL_METER));
  }

  public static Job read(Job job, String net, double volts, MeasurementSetup setting) {
    Reading reading =
        new Reading(
            job.nextReading(),
            Subject.of(new NetId(net)),
            new Amount(Quantity.VOLTAGE, volts),
            setting,
            "",
            JobSamples.NOON);
    return job.with(JobTable.READINGS, job.readings().with(reading));
  }

  public static Job with(Map<String, Double> volts) {
    Job job = JobSamples.blank();
    for (Map.Entry<String, Double> entry : volts.entrySet()) {
      job = read(job, entry.getKey(), entry.getValue());
    }
    return job;
  }

  public static UnitReadings unit(Job job) {
    return UnitReadings.of(job, CIRCUIT);
  }

  /**
   * The rows of the table of hypotheses that the demo's independent solver wrote: name, then volts
   * by net.
   */
  public static Map<String, Map<String, Double>> hypotheses() {
    Map<String, Map<String, Double>> rows = new LinkedHashMap<>();
    List<String> lines = lines("hypotheses.csv");
    String[] heads = lines.get(0).split(",");
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",");
      Map<String, Double> volts = new LinkedHashMap<>();
      for (int i = 1; i < heads.length; i++) {
        volts.put(heads[i], Double.valueOf(cells[i]));
      }
      rows.put(cells[0], volts);
    }
    return rows;
  }

  /** Lines of a test resource beside this class. */
  public static List<String> lines(String name) {
    try (InputStream in = DemoUnit.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new ArrayList<>(text.lines().filter(line -> !line.isBlank()).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
