package org.relegend.benchmark;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.table.ImportOptions;
import org.relegend.table.TableException;
import org.relegend.table.TableImport;
import org.relegend.table.TableSort;
import org.relegend.table.TableSource;

/**
 * Import of two tables into an empty map, against splitting the same tables into cells with the
 * bare library. Ten times as many pins should take ten times as long. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.ImportBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 2, jvmArgs = "-Xmx2g")
public class ImportBenchmark {
  private static final BoardMap EMPTY = BoardMap.empty("bench", MapInfo.titled("Benchmark"));

  /** Two for each part. */
  @Param({"10000", "100000"})
  public int pins;

  private String partsTable = "";
  private String pinsTable = "";
  private Map<TableSort, TableSource> sources = Map.of();

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(ImportBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  /** Writes the tables. */
  @Setup
  public void write() {
    StringBuilder parts = new StringBuilder("designator,kind,value\n");
    StringBuilder joined = new StringBuilder("net,part,pin\n");
    for (int i = 0; i < pins / 2; i++) {
      parts.append('R').append(i).append(",resistor,4k7\n");
      joined.append('N').append(i / 2).append(",R").append(i).append(",1\n");
      joined.append('M').append(i / 3).append(",R").append(i).append(",2\n");
    }
    partsTable = parts.toString();
    pinsTable = joined.toString();
    sources =
        Map.of(
            TableSort.PARTS, source("parts.csv", partsTable),
            TableSort.PINS, source("pins.csv", pinsTable));
  }

  private static TableSource source(String name, String text) {
    return new TableSource(name, text.getBytes(StandardCharsets.UTF_8));
  }

  @Benchmark
  public BoardMap importTables() throws TableException, EditRefusedException {
    ImportOptions options = new ImportOptions("ann", Instant.EPOCH, false);
    return TableImport.plan(EMPTY, sources, options).edit().applyTo(EMPTY);
  }

  @Benchmark
  public void bareCells(Blackhole hole) throws IOException {
    for (String table : List.of(partsTable, pinsTable)) {
      for (CSVRecord record : CSVFormat.RFC4180.parse(new StringReader(table))) {
        hole.consume(record.values());
      }
    }
  }
}
