package org.relegend.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.map.BoardMap;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Opening a map of 10,000 parts (checked, strict, with its digest), against the JSON library
 * reading the same file to a bare tree. Aim: no more than twice as long. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.MapOpenBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 3, jvmArgs = "-Xmx2g")
public class MapOpenBenchmark {
  private static final int PARTS = 10_000;

  private final ObjectMapper mapper = new ObjectMapper();
  private final BoardMap map = LargeMap.of(1, PARTS);
  private Path folder = Path.of("");

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(MapOpenBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  /** Makes the map's folder. */
  @Setup
  public void save() throws IOException, StoreException {
    folder = Files.createTempDirectory("map-open").resolve("map");
    MapFolder.create(folder, map).close();
  }

  /** Removes what was made. */
  @TearDown
  public void remove() throws IOException {
    Files.delete(folder.resolve(MapFolder.MAP_FILE));
    Files.delete(folder.resolve(MapFolder.LOCK_FILE));
    Files.delete(folder);
    Files.delete(folder.getParent());
  }

  @Benchmark
  public BoardMap open() throws StoreException {
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      return opened.map();
    }
  }

  @Benchmark
  public JsonNode openBareTree() throws IOException {
    return mapper.readTree(folder.resolve(MapFolder.MAP_FILE).toFile());
  }

  @Benchmark
  public byte[] write() {
    return MapFormat.write(map);
  }
}
