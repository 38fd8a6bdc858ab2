package org.relegend.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Multigraph;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.PassageOptions;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/**
 * Joined lists on a generated map of 100,000 pins, against listing the neighbours of the same net
 * in a bare graph of the same library. Aim: no more than 1.5 times as long. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.JoinedBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 3, jvmArgs = "-Xmx2g")
public class JoinedBenchmark {
  private static final int ASKED = 10_000;

  private final BoardMap map = BoardMapSamples.generated(1, 50_000, 2);
  private final List<NetId> nets = new ArrayList<>();
  private Circuit circuit = Circuit.of(map);
  private Graph<Object, DefaultEdge> bare = bareGraph();

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(JoinedBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  /** Draws the nets to ask for, the same in each run. */
  @Setup
  public void drawNets() {
    Random random = new Random(2);
    for (int i = 0; i < ASKED; i++) {
      nets.add(map.nets().at(random.nextInt(map.nets().size())).id());
    }
  }

  private Graph<Object, DefaultEdge> bareGraph() {
    Graph<Object, DefaultEdge> graph = new Multigraph<>(DefaultEdge.class);
    map.parts().forEach(part -> graph.addVertex(part.id()));
    for (Net net : map.nets()) {
      graph.addVertex(net.id());
      for (PinRef pin : net.pins()) {
        graph.addEdge(net.id(), pin.part());
      }
    }
    return graph;
  }

  @Benchmark
  @OperationsPerInvocation(ASKED)
  public void joined(Blackhole hole) {
    for (NetId net : nets) {
      hole.consume(circuit.joined(net));
    }
  }

  @Benchmark
  @OperationsPerInvocation(ASKED)
  public void joinedThroughAll(Blackhole hole) {
    for (NetId net : nets) {
      hole.consume(circuit.joined(net, PassageOptions.ALL));
    }
  }

  @Benchmark
  @OperationsPerInvocation(ASKED)
  public void joinedBareNeighbours(Blackhole hole) {
    for (NetId net : nets) {
      hole.consume(Graphs.neighborListOf(bare, net));
    }
  }

  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Circuit build() {
    circuit = Circuit.of(map);
    return circuit;
  }

  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Graph<Object, DefaultEdge> buildBareGraph() {
    bare = bareGraph();
    return bare;
  }
}
