package org.relegend.benchmark;

import java.util.Comparator;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jgrapht.Graph;
import org.jgrapht.alg.isomorphism.VF2GraphIsomorphismInspector;
import org.jgrapht.graph.DefaultEdge;
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
import org.relegend.twin.RandomCircuit;

/**
 * Twins between a random circuit and its shuffled copy, without a seed, against the exact matcher
 * (VF2) of the graph library on the same circuits in the same run. The matcher is given up after 20
 * s, so that figure is a lower bound. A word after the class name runs only what has it in its
 * name, as {@code twins_10000}. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.TwinBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class TwinBenchmark {
  private static final long GIVEN_UP_AFTER = 20;

  private final RandomCircuit thousand = RandomCircuit.of(1000, 20, 0, 1);
  private final RandomCircuit ofThreeKinds = RandomCircuit.of(5000, 3, 0, 2);
  private final RandomCircuit interchangeable = RandomCircuit.of(100, 5, 12, 3);
  private final RandomCircuit tenThousand = RandomCircuit.of(10_000, 20, 0, 4);
  private final RandomCircuit hundredThousand = RandomCircuit.of(100_000, 20, 0, 5);

  public static void main(String[] args) throws RunnerException {
    String which = args.length > 0 ? args[0] : "";
    new Runner(
            new OptionsBuilder()
                .include(TwinBenchmark.class.getSimpleName() + "\\..*" + which)
                .build())
        .run();
  }

  @Benchmark
  public int twins_1000() {
    return thousand.match(false);
  }

  @Benchmark
  public boolean exactMatcher_1000() throws InterruptedException {
    return exact(thousand, false);
  }

  @Benchmark
  public int twins_5000_ofThreeKinds() {
    return ofThreeKinds.match(false);
  }

  @Benchmark
  public boolean exactMatcher_5000_ofThreeKinds() throws InterruptedException {
    return exact(ofThreeKinds, false);
  }

  @Benchmark
  public int twins_100_and12Interchangeable_oneDifference() {
    return interchangeable.match(true);
  }

  @Benchmark
  public boolean exactMatcher_100_and12Interchangeable_oneDifference() throws InterruptedException {
    return exact(interchangeable, true);
  }

  @Benchmark
  public int twins_10000() {
    return tenThousand.match(false);
  }

  @Benchmark
  public int twins_100000() {
    return hundredThousand.match(false);
  }

  /** What the library takes to build the graphs of both sides. */
  @Benchmark
  public int libraryBuildsTheGraphs_100000() {
    return hundredThousand.graph(false, false).edgeSet().size()
        + hundredThousand.graph(true, false).edgeSet().size();
  }

  private static boolean exact(RandomCircuit circuit, boolean changed) throws InterruptedException {
    ExecutorService thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread made = new Thread(work);
              made.setDaemon(true);
              return made;
            });
    Future<Boolean> answer = thread.submit(() -> isomorphic(circuit, changed));
    try {
      return answer.get(GIVEN_UP_AFTER, TimeUnit.SECONDS);
    } catch (TimeoutException | ExecutionException gaveUp) {
      return false;
    } finally {
      thread.shutdownNow();
    }
  }

  private static boolean isomorphic(RandomCircuit circuit, boolean changed) {
    Graph<RandomCircuit.Node, DefaultEdge> first = circuit.graph(false, false);
    Graph<RandomCircuit.Node, DefaultEdge> second = circuit.graph(true, changed);
    Comparator<RandomCircuit.Node> kinds = Comparator.comparingInt(RandomCircuit.Node::kind);
    return new VF2GraphIsomorphismInspector<>(
            first, second, kinds, Comparator.comparing(edge -> edge.getClass().getName()))
        .isomorphismExists();
  }
}
