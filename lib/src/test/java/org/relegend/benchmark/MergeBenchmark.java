package org.relegend.benchmark;

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
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.share.Merge;
import org.relegend.share.MergeResult;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Merging two versions of a map of 10,000 parts, each with every hundredth part changed, against
 * reading the two from memory. All three maps were read, so that none shares anything with another.
 * Aim: no more than twice as long. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.MergeBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class MergeBenchmark {
  private static final int PARTS = 10_000;

  private static final Path NOWHERE = Path.of("map.json");

  private final byte[] mineText = MapFormat.write(changed(0, "mine"));
  private final byte[] theirText = MapFormat.write(changed(50, "theirs"));
  private BoardMap base = BoardMap.empty("none", MapInfo.titled("none"));
  private BoardMap mine = base;
  private BoardMap theirs = base;

  /** Reads the three. */
  @Setup
  public void read() throws StoreException {
    base = MapFormat.read(MapFormat.write(LargeMap.of(1, PARTS)), NOWHERE);
    mine = MapFormat.read(mineText, NOWHERE);
    theirs = MapFormat.read(theirText, NOWHERE);
  }

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(MergeBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  private static BoardMap changed(int first, String note) {
    BoardMap map = LargeMap.of(1, PARTS);
    for (int i = first; i < map.parts().size(); i += 100) {
      Part part = map.parts().at(i);
      map = map.with(MapTables.PARTS, map.parts().with(part.withNote(note)));
    }
    return map;
  }

  @Benchmark
  public MergeResult merge() {
    return Merge.of(base, mine, theirs);
  }

  @Benchmark
  public MergeResult mergeWithoutBase() {
    return Merge.of(mine, theirs);
  }

  @Benchmark
  public int readBoth() throws StoreException {
    return MapFormat.read(mineText, NOWHERE).parts().size()
        + MapFormat.read(theirText, NOWHERE).parts().size();
  }
}
