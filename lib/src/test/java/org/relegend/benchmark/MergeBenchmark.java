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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.map.BoardMap;
import org.relegend.map.Part;
import org.relegend.share.Merge;
import org.relegend.share.Merged;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Merging two versions of a map of 10,000 parts, each with every hundredth part changed, against
 * reading the two from memory. Aim: no more than twice as long. Run as {@link MapOpenBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class MergeBenchmark {
  private static final int PARTS = 10_000;

  private final BoardMap base = LargeMap.of(1, PARTS);
  private final BoardMap mine = changed(0, "mine");
  private final BoardMap theirs = changed(50, "theirs");
  private final byte[] mineText = MapFormat.write(mine);
  private final byte[] theirText = MapFormat.write(theirs);

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(MergeBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  private BoardMap changed(int first, String note) {
    BoardMap map = base;
    for (int i = first; i < base.parts().size(); i += 100) {
      Part part = base.parts().at(i);
      map = map.withParts(map.parts().with(part.withNote(note)));
    }
    return map;
  }

  @Benchmark
  public Merged merge() {
    return Merge.of(base, mine, theirs);
  }

  @Benchmark
  public Merged mergeWithoutBase() {
    return Merge.of(mine, theirs);
  }

  @Benchmark
  public int readBoth() throws StoreException {
    Path path = Path.of("map.json");
    return MapFormat.read(mineText, path).parts().size()
        + MapFormat.read(theirText, path).parts().size();
  }
}
