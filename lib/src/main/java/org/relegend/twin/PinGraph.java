package org.relegend.twin;

import java.util.Arrays;
import java.util.List;
import org.relegend.map.Subject;

/**
 * Elements (sections, and parts that have none) and nets as plain numbers, with an edge for each
 * pin of an element on a net. Made once, read by many.
 */
final class PinGraph {
  /** May be on the first side of a pair, on the second, or on both. */
  static final byte FIRST = 1;

  static final byte SECOND = 2;
  static final byte BOTH = FIRST | SECOND;

  final int elements;
  final int nets;

  /** Edges of element e: from {@code start[e]} up to {@code start[e + 1]}. */
  final int[] start;

  final int[] net;
  final int[] role;

  /** Edges of net n: from {@code netStart[n]} up to {@code netStart[n + 1]}. */
  final int[] netStart;

  /** The element at an edge of a net, and the element's own edge that it is. */
  final int[] element;

  final int[] elementEdge;
  final long[] kind;
  final long[] value;

  /** The same number for all sections of a part. */
  final int[] part;

  final byte[] side;
  final byte[] netSide;

  /** Sum over the pins on a net of what element they are of and in what role. */
  final long[] surroundings;

  /** What the numbers stand for; empty where only numbers are compared. */
  final List<Subject> subjects;

  final List<Subject> netSubjects;

  private PinGraph(Builder from) {
    elements = from.elements;
    nets = from.nets;
    kind = Arrays.copyOf(from.kind, elements);
    value = Arrays.copyOf(from.value, elements);
    part = Arrays.copyOf(from.part, elements);
    side = Arrays.copyOf(from.side, elements);
    netSide = Arrays.copyOf(from.netSide, nets);
    subjects = List.copyOf(from.subjects);
    netSubjects = List.copyOf(from.netSubjects);
    start = Arrays.copyOf(from.start, elements + 1);
    start[elements] = from.edges;
    net = Arrays.copyOf(from.net, from.edges);
    role = Arrays.copyOf(from.role, from.edges);
    netStart = new int[nets + 1];
    element = new int[net.length];
    elementEdge = new int[net.length];
    surroundings = new long[nets];
    fill();
  }

  private void fill() {
    for (int n : net) {
      netStart[n + 1]++;
    }
    for (int n = 0; n < nets; n++) {
      netStart[n + 1] += netStart[n];
    }
    int[] next = Arrays.copyOf(netStart, nets);
    for (int e = 0; e < elements; e++) {
      for (int i = start[e]; i < start[e + 1]; i++) {
        int at = next[net[i]]++;
        element[at] = e;
        elementEdge[at] = i;
        surroundings[net[i]] += Hashes.mix(kind[e], role[i]);
      }
    }
  }

  int degree(int n) {
    return netStart[n + 1] - netStart[n];
  }

  int pins(int e) {
    return start[e + 1] - start[e];
  }

  /** The sections of e's part stand together: from here up to {@link #endOfPart}. */
  int firstOfPart(int e) {
    int at = e;
    while (at > 0 && part[at - 1] == part[e]) {
      at--;
    }
    return at;
  }

  int endOfPart(int e) {
    int at = e + 1;
    while (at < elements && part[at] == part[e]) {
      at++;
    }
    return at;
  }

  /**
   * Whether two are on the same nets in the same roles, so that to exchange them changes nothing.
   */
  boolean sideBySide(int e, int other) {
    for (int i = start[e]; i < start[e + 1]; i++) {
      boolean there = false;
      for (int j = start[other]; j < start[other + 1]; j++) {
        there |= net[i] == net[j] && role[i] == role[j];
      }
      if (!there) {
        return false;
      }
    }
    return pins(e) == pins(other);
  }

  boolean first(int e) {
    return (side[e] & FIRST) != 0;
  }

  boolean second(int e) {
    return (side[e] & SECOND) != 0;
  }

  /** Takes elements one after the other, each followed by its pins. */
  static final class Builder {
    private int elements;
    private int nets;
    private int edges;
    private long[] kind = new long[16];
    private long[] value = new long[16];
    private int[] part = new int[16];
    private byte[] side = new byte[16];
    private byte[] netSide = new byte[16];
    private int[] start = new int[17];
    private int[] net = new int[64];
    private int[] role = new int[64];
    private final java.util.ArrayList<Subject> subjects = new java.util.ArrayList<>();
    private final java.util.ArrayList<Subject> netSubjects = new java.util.ArrayList<>();

    int net(byte sides) {
      if (nets == netSide.length) {
        netSide = Arrays.copyOf(netSide, 2 * nets);
      }
      netSide[nets] = sides;
      return nets++;
    }

    int net(Subject subject, byte sides) {
      netSubjects.add(subject);
      return net(sides);
    }

    int element(long kindHash, long valueHash, byte sides) {
      if (elements == kind.length) {
        kind = Arrays.copyOf(kind, 2 * elements);
        value = Arrays.copyOf(value, 2 * elements);
        part = Arrays.copyOf(part, 2 * elements);
        side = Arrays.copyOf(side, 2 * elements);
        start = Arrays.copyOf(start, 2 * elements + 1);
      }
      kind[elements] = kindHash;
      value[elements] = valueHash;
      part[elements] = elements;
      side[elements] = sides;
      start[elements] = edges;
      return elements++;
    }

    int element(Subject subject, long kindHash, long valueHash, byte sides) {
      subjects.add(subject);
      int added = element(kindHash, valueHash, sides);
      if (added > 0 && samePart(subjects.get(added - 1), subject)) {
        part[added] = part[added - 1];
      }
      return added;
    }

    private static boolean samePart(Subject before, Subject subject) {
      return before instanceof Subject.OfSection a
          && subject instanceof Subject.OfSection b
          && a.part().equals(b.part());
    }

    /** A pin of the latest element. */
    void pin(int onNet, int inRole) {
      if (edges == net.length) {
        net = Arrays.copyOf(net, 2 * edges);
        role = Arrays.copyOf(role, 2 * edges);
      }
      net[edges] = onNet;
      role[edges] = inRole;
      edges++;
    }

    PinGraph build() {
      return new PinGraph(this);
    }
  }
}
