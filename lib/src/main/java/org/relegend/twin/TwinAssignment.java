package org.relegend.twin;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What has been paired so far: one to one, elements with elements and nets with nets. */
final class TwinAssignment {
  static final int NONE = -1;

  final PinGraph graph;
  final int[] twin;
  final int[] back;
  final int[] netTwin;
  final int[] netBack;

  /** How each pair of elements came about, by its first. */
  final TwinBasis[] basis;

  /** Elements of either side that the circuit can't tell apart, by each first of them. */
  final Map<Integer, Several> several;

  /** The first elements of all pairs, in the order they were found. */
  final IntList order;

  TwinAssignment(PinGraph graph) {
    this(
        graph,
        none(graph.elements),
        none(graph.elements),
        none(graph.nets),
        none(graph.nets),
        new TwinBasis[graph.elements],
        new TreeMap<>(),
        new IntList());
  }

  private TwinAssignment(
      PinGraph graph,
      int[] twin,
      int[] back,
      int[] netTwin,
      int[] netBack,
      TwinBasis[] basis,
      Map<Integer, Several> several,
      IntList order) {
    this.graph = graph;
    this.twin = twin;
    this.back = back;
    this.netTwin = netTwin;
    this.netBack = netBack;
    this.basis = basis;
    this.several = several;
    this.order = order;
  }

  private static int[] none(int size) {
    int[] all = new int[size];
    Arrays.fill(all, NONE);
    return all;
  }

  TwinAssignment copy() {
    return new TwinAssignment(
        graph,
        twin.clone(),
        back.clone(),
        netTwin.clone(),
        netBack.clone(),
        basis.clone(),
        new TreeMap<>(several),
        order.copy());
  }

  /** Whether the element is still to be paired as a first. */
  boolean openFirst(int e) {
    return twin[e] == NONE && graph.first(e);
  }

  boolean openSecond(int e) {
    return back[e] == NONE && graph.second(e);
  }

  void put(int first, int second, TwinBasis how) {
    twin[first] = second;
    back[second] = first;
    basis[first] = how;
    order.add(first);
  }

  /** Notes that any of these firsts could have any of these seconds. */
  void interchangeable(List<Integer> firsts, List<Integer> seconds) {
    Several group = new Several(firsts, seconds);
    group.firsts().forEach(first -> several.put(first, group));
  }

  /** What the twin of a first may be. */
  List<Integer> seconds(int first) {
    Several group = several.get(first);
    if (twin[first] == NONE) {
      return List.of();
    }
    return basis[first] == TwinBasis.ONE_OF_SEVERAL && group != null
        ? group.seconds()
        : List.of(twin[first]);
  }

  /** What a second may be the twin of. */
  List<Integer> firsts(int second) {
    if (back[second] == NONE) {
      return List.of();
    }
    Several group = several.get(back[second]);
    return basis[back[second]] == TwinBasis.ONE_OF_SEVERAL && group != null
        ? group.firsts()
        : List.of(back[second]);
  }

  /** What can't be told apart. */
  record Several(List<Integer> firsts, List<Integer> seconds) {
    Several {
      firsts = List.copyOf(firsts);
      seconds = List.copyOf(seconds);
    }
  }

  void drop(int first) {
    back[twin[first]] = NONE;
    twin[first] = NONE;
  }

  void putNets(int first, int second) {
    netTwin[first] = second;
    netBack[second] = first;
  }

  void dropNet(int first) {
    netBack[netTwin[first]] = NONE;
    netTwin[first] = NONE;
  }

  /** Whether both sides have this very net, as a supply. */
  boolean shared(int n) {
    return netTwin[n] == n;
  }

  /** How the pins of two elements stand to each other under the pairs of nets. */
  Agreement agreement(int first, int second) {
    int own = 0;
    int common = 0;
    int against = 0;
    int open = 0;
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int n = graph.net[i];
      int wanted = netTwin[n];
      int role = graph.role[i];
      if (wanted != NONE && has(second, role, wanted)) {
        if (wanted == n) {
          common++;
        } else {
          own++;
        }
      } else if (wanted != NONE || allTaken(second, role)) {
        against++;
      } else {
        open++;
      }
    }
    return new Agreement(own, common, against, open);
  }

  boolean has(int e, int role, int onNet) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (graph.role[i] == role && graph.net[i] == onNet) {
        return true;
      }
    }
    return false;
  }

  /** Whether every pin of this role is on a net that has its counterpart already. */
  private boolean allTaken(int e, int role) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (graph.role[i] == role && netBack[graph.net[i]] == NONE) {
        return false;
      }
    }
    return true;
  }

  /**
   * Pins of a pair, counted.
   *
   * @param own on nets that are twins
   * @param common on one and the same net
   * @param against on nets that are not twins, though one of them has a twin
   * @param open on nets of which nothing is known yet
   */
  record Agreement(int own, int common, int against, int open) {
    /** How much speaks for the pair, in half pins: common nets tell less. */
    int score() {
      return 2 * own + common - 3 * against;
    }
  }
}
