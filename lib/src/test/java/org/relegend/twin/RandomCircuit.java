package org.relegend.twin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * A random circuit and a shuffled copy of it, as numbers for the search and as graphs for the
 * library: n parts of two to four pins on 0.8 n nets, every net with a pin, all in one piece.
 */
public final class RandomCircuit {
  /** A part (its kind counts from 1) or a net (kind 0) in the library's graph. */
  public record Node(int kind, int number) {
    /** No two nodes of a graph share a number: the library's maps get good hashes. */
    @Override
    public int hashCode() {
      return number;
    }
  }

  private final int[] kinds;
  private final int[][] pins;
  private final int nets;

  /** The first parts, which are interchangeable. */
  private final int alike;

  private final int[] partOrder;
  private final int[] netOrder;

  private RandomCircuit(int[] kinds, int[][] pins, int nets, int alike, Random random) {
    this.alike = alike;
    this.kinds = kinds;
    this.pins = pins;
    this.nets = nets;
    partOrder = shuffled(kinds.length, random);
    netOrder = shuffled(nets, random);
  }

  /**
   * Makes one.
   *
   * @param alike so many further parts of one kind side by side on the same two nets
   */
  public static RandomCircuit of(int parts, int kindCount, int alike, long seed) {
    Random random = new Random(seed);
    int nets = Math.max(2, (int) (0.8 * parts));
    int[] kinds = new int[parts + alike];
    int[][] pins = new int[parts + alike][];
    for (int p = 0; p < alike; p++) {
      kinds[p] = kindCount + 1;
      pins[p] = new int[] {0, 1};
    }
    for (int p = 0; p < parts; p++) {
      kinds[alike + p] = 1 + random.nextInt(kindCount);
      Set<Integer> on = new HashSet<>();
      // every net gets a pin, and each part hangs on an earlier part's net
      on.add(p < nets ? p : random.nextInt(nets));
      if (p > 0) {
        on.add(random.nextInt(Math.min(p, nets)));
      }
      int count = 2 + random.nextInt(3);
      while (on.size() < Math.min(count, nets)) {
        on.add(random.nextInt(nets));
      }
      pins[alike + p] = on.stream().mapToInt(Integer::intValue).toArray();
    }
    return new RandomCircuit(kinds, pins, nets, alike, random);
  }

  private static int[] shuffled(int size, Random random) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      order.add(i);
    }
    Collections.shuffle(order, random);
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  public int parts() {
    return kinds.length;
  }

  /** The pins of a part; in the changed circuit its first is exchanged for another part's first. */
  private int[] pins(int part, boolean changed) {
    int other = partner();
    if (!changed || part != alike && part != other) {
      return pins[part];
    }
    int[] mine = pins[part].clone();
    mine[0] = pins[part == alike ? other : alike][0];
    return mine;
  }

  /** The first part of its kind with which the first ordinary part can exchange a pin. */
  private int partner() {
    for (int p = kinds.length / 2; p < kinds.length; p++) {
      boolean kin = kinds[p] == kinds[alike] && pins[p].length == pins[alike].length;
      if (kin && !has(pins[alike], pins[p][0]) && !has(pins[p], pins[alike][0])) {
        return p;
      }
    }
    throw new IllegalStateException("no two parts can exchange pins");
  }

  private static boolean has(int[] nets, int net) {
    for (int n : nets) {
      if (n == net) {
        return true;
      }
    }
    return false;
  }

  /** Both circuits in one, the second perhaps with two pins exchanged. */
  PinGraph sideBySide(boolean changed) {
    PinGraph.Builder builder = new PinGraph.Builder();
    for (int n = 0; n < nets; n++) {
      builder.net(PinGraph.FIRST);
    }
    for (int n = 0; n < nets; n++) {
      builder.net(PinGraph.SECOND);
    }
    for (int p = 0; p < kinds.length; p++) {
      builder.element(Hashes.mix(kinds[p]), 0, PinGraph.FIRST);
      for (int net : pins[p]) {
        builder.pin(net, 1);
      }
    }
    for (int p : partOrder) {
      builder.element(Hashes.mix(kinds[p]), 0, PinGraph.SECOND);
      for (int net : pins(p, changed)) {
        builder.pin(nets + netOrder[net], 1);
      }
    }
    return builder.build();
  }

  /** Pairs found between the circuit and its copy; for benchmarks. */
  public int match(boolean changed) {
    TwinAssignment pairing = WholeMatch.of(sideBySide(changed));
    int pairs = 0;
    for (int e = 0; e < kinds.length; e++) {
      pairs += pairing.twin[e] == TwinAssignment.NONE ? 0 : 1;
    }
    return pairs;
  }

  /** The circuit, or its shuffled copy, as a graph of the library. */
  public Graph<Node, DefaultEdge> graph(boolean copy, boolean changed) {
    Graph<Node, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    Node[] netNodes = new Node[nets];
    for (int n = 0; n < nets; n++) {
      netNodes[n] = new Node(0, copy ? netOrder[n] : n);
      graph.addVertex(netNodes[n]);
    }
    for (int i = 0; i < kinds.length; i++) {
      int p = copy ? partOrder[i] : i;
      Node part = new Node(kinds[p], nets + i);
      graph.addVertex(part);
      for (int net : pins(p, changed)) {
        graph.addEdge(part, netNodes[net]);
      }
    }
    return graph;
  }
}
