package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation.Aspect;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** What a pairing leaves over, and in what its pairs differ. */
final class TwinDifferences {
  /** So many parts that hang together without twins are told as one difference. */
  private static final int TOGETHER = 12;

  private final MapGraph map;
  private final PinGraph graph;
  private final TwinAssignment pairing;
  private final boolean[] kept;
  private final BoardMap board;
  private final List<TwinAssignment.Several> surplus;
  private final Set<Integer> inSurplus = new HashSet<>();

  /**
   * @param surplus alike at the same nets, but more on one side
   */
  TwinDifferences(
      MapGraph map, TwinAssignment pairing, boolean[] kept, List<TwinAssignment.Several> surplus) {
    this.map = map;
    this.graph = map.graph;
    this.pairing = pairing;
    this.kept = kept;
    this.board = map.circuit.map();
    this.surplus = surplus;
    surplus.forEach(
        several -> {
          inSurplus.addAll(several.firsts());
          inSurplus.addAll(several.seconds());
        });
  }

  List<TwinDifference> all() {
    List<TwinDifference> all = new ArrayList<>();
    Set<List<Subject>> stated = new HashSet<>();
    for (int e = 0; e < graph.elements; e++) {
      if (kept[e]) {
        int second = pairing.twin[e];
        if (stated.add(List.of(part(e), part(second)))) {
          kindOrValue(e, second, all);
        }
        connections(e, second, all);
      }
    }
    surplus.forEach(several -> all.add(tooMany(several)));
    missing(true, all);
    missing(false, all);
    return all;
  }

  private Subject part(int e) {
    return graph.subjects.get(e) instanceof Subject.OfSection section
        ? Subject.of(section.part())
        : graph.subjects.get(e);
  }

  private Part partOf(int e) {
    PartId id = ((Subject.OfPart) part(e)).part();
    return board.part(id).orElseThrow();
  }

  private void kindOrValue(int e, int second, List<TwinDifference> all) {
    Part a = partOf(e);
    Part b = partOf(second);
    if (graph.kind[e] != graph.kind[second]) {
      all.add(
          difference(
              Aspect.KIND, part(e), part(second), word(a, a.kind()) + ", " + word(b, b.kind())));
    } else if (graph.value[e] != graph.value[second]) {
      all.add(
          difference(
              Aspect.VALUE, part(e), part(second), word(a, a.value()) + ", " + word(b, b.value())));
    }
  }

  private static String word(Part part, String word) {
    return part.designator() + " is " + (word.isEmpty() ? "not said" : word);
  }

  private static TwinDifference difference(Aspect aspect, Subject a, Subject b, String text) {
    return new TwinDifference(aspect, List.of(a), List.of(b), text);
  }

  private void connections(int e, int second, List<TwinDifference> all) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      int n = graph.net[i];
      int wanted = pairing.netTwin[n];
      if (wanted != NONE && pairing.has(second, graph.role[i], wanted)) {
        continue;
      }
      int edge = free(second, graph.role[i]);
      if (edge == NONE) {
        continue;
      }
      int found = graph.net[edge];
      if (wanted != NONE || pairing.netBack[found] != NONE) {
        PinRef a = map.pins.get(i);
        PinRef b = map.pins.get(edge);
        String text =
            "%s is on %s, %s on %s"
                .formatted(name(Subject.of(a)), net(n), name(Subject.of(b)), net(found));
        all.add(difference(Aspect.CONNECTION, Subject.of(a), Subject.of(b), text));
      }
    }
  }

  /** The second's pin in this role that has no counterpart. */
  private int free(int second, int role) {
    int first = pairing.back[second];
    for (int j = graph.start[second]; j < graph.start[second + 1]; j++) {
      int back = pairing.netBack[graph.net[j]];
      if (graph.role[j] == role && (back == NONE || !pairing.has(first, role, back))) {
        return j;
      }
    }
    return NONE;
  }

  private String name(Subject subject) {
    return board.nameOf(subject);
  }

  private String net(int n) {
    return name(graph.netSubjects.get(n));
  }

  /** What hangs on the nets of one channel and has no twin. */
  private void missing(boolean first, List<TwinDifference> all) {
    boolean[] done = new boolean[graph.elements];
    for (int n = 0; n < graph.nets; n++) {
      if (!ofChannel(n, first)) {
        continue;
      }
      for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
        int e = graph.element[i];
        if (!done[e] && single(e)) {
          missing(e, n, first, done, all);
        }
      }
    }
  }

  private TwinDifference tooMany(TwinAssignment.Several several) {
    boolean first = several.firsts().size() > several.seconds().size();
    List<Integer> more = first ? several.firsts() : several.seconds();
    int count = Math.abs(several.firsts().size() - several.seconds().size());
    List<Subject> parts = more.stream().map(this::part).distinct().toList();
    String names = parts.stream().map(this::name).collect(Collectors.joining(", "));
    String text =
        "%d of %s %s no counterpart; which can't be told"
            .formatted(count, names, count == 1 ? "has" : "have");
    return new TwinDifference(
        Aspect.MISSING, first ? parts : List.of(), first ? List.of() : parts, text);
  }

  private void missing(int e, int n, boolean first, boolean[] done, List<TwinDifference> all) {
    List<Subject> parts = together(e, done);
    int other = first ? pairing.netTwin[n] : pairing.netBack[n];
    String names = parts.stream().map(this::name).collect(Collectors.joining(", "));
    String text =
        "%s on %s %s no counterpart on %s"
            .formatted(names, net(n), parts.size() == 1 ? "has" : "have", net(other));
    all.add(
        new TwinDifference(
            Aspect.MISSING, first ? parts : List.of(), first ? List.of() : parts, text));
  }

  /** In no pair at all, also not in one that was left out for belonging to a third channel. */
  private boolean single(int e) {
    return pairing.twin[e] == NONE && pairing.back[e] == NONE && !inSurplus.contains(e);
  }

  /** Whether a kept pair is on this net and on its twin. */
  private boolean ofChannel(int n, boolean first) {
    int other = first ? pairing.netTwin[n] : pairing.netBack[n];
    if (other == NONE || other == n) {
      return false;
    }
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int e = first ? graph.element[i] : pairing.back[graph.element[i]];
      if (e != NONE && kept[e]) {
        return true;
      }
    }
    return false;
  }

  /** The parts without twins that hang together over nets without twins, this one first. */
  private List<Subject> together(int from, boolean[] done) {
    List<Subject> parts = new ArrayList<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(from));
    done[from] = true;
    Set<Subject> seen = new TreeSet<>();
    while (!next.isEmpty()) {
      int e = next.remove();
      if (seen.add(part(e))) {
        parts.add(part(e));
      }
      for (int i = graph.start[e]; i < graph.start[e + 1] && parts.size() < TOGETHER; i++) {
        int n = graph.net[i];
        if (pairing.netTwin[n] != NONE
            || pairing.netBack[n] != NONE
            || graph.degree(n) > NeighbourhoodColours.BUSY) {
          continue;
        }
        for (int j = graph.netStart[n]; j < graph.netStart[n + 1]; j++) {
          int other = graph.element[j];
          if (!done[other] && single(other)) {
            done[other] = true;
            next.add(other);
          }
        }
      }
    }
    return parts;
  }
}
