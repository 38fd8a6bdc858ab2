package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Tells a finished pairing in the words of the map. */
final class TwinReport {
  private final MapGraph map;
  private final PinGraph graph;
  private final TwinAssignment pairing;
  private final boolean[] kept;
  private final double credit;

  /** Alike at the same nets, but more on one side: which has no twin can't be told. */
  private final List<TwinAssignment.Several> surplus;

  /**
   * @param credit 0 to 1: how far the seeds are believed
   */
  TwinReport(MapGraph map, TwinAssignment pairing, boolean[] kept, double credit) {
    this.map = map;
    this.graph = map.graph;
    this.pairing = pairing;
    this.kept = kept;
    this.credit = credit;
    surplus =
        new NetSetMatch(pairing)
            .surplus().stream().filter(several -> besideKept(several.firsts().get(0))).toList();
  }

  TwinResult twins(List<ProposedTwin> more, List<SeedContradiction> contradictions) {
    List<ProposedTwin> elements = new ArrayList<>();
    for (int e = 0; e < graph.elements; e++) {
      if (kept[e]) {
        elements.add(element(e));
      }
    }
    elements.addAll(more);
    Collection<ProposedTwin> nets = nets().values();
    List<ProposedTwin> pairs = new ArrayList<>(parts(elements));
    pairs.addAll(elements);
    pairs.addAll(nets);
    return new TwinResult(
        sorted(pairs),
        sorted(pins()),
        groups(),
        new TwinDifferences(map, pairing, kept, surplus).all(),
        contradictions,
        common());
  }

  private static List<ProposedTwin> sorted(Collection<ProposedTwin> pairs) {
    return pairs.stream()
        .sorted(
            java.util.Comparator.comparing((ProposedTwin pair) -> pair.a() instanceof Subject.OfNet)
                .thenComparing(ProposedTwin::a)
                .thenComparing(ProposedTwin::b))
        .toList();
  }

  private ProposedTwin element(int e) {
    return new ProposedTwin(
        graph.subjects.get(e), graph.subjects.get(pairing.twin[e]), pairing.basis[e], trust(e));
  }

  /** How well the pins agree, how much else has to be overlooked, and how the choice came about. */
  private double trust(int e) {
    int second = pairing.twin[e];
    TwinAssignment.Agreement agreement = pairing.agreement(e, second);
    double pro = agreement.own() + 0.5 * agreement.common();
    double trust = pro / (pro + agreement.against() + 0.25 * agreement.open() + 0.1);
    trust *= graph.kind[e] == graph.kind[second] ? 1 : 0.6;
    trust *= graph.value[e] == graph.value[second] ? 1 : 0.8;
    if (pairing.basis[e] == TwinBasis.ONE_OF_SEVERAL) {
      TwinAssignment.Several several = pairing.several.get(e);
      trust /= several == null ? 2 : Math.max(1, several.seconds().size());
    }
    return rounded(trust * credit);
  }

  static double rounded(double trust) {
    return Math.round(trust * 100) / 100.0;
  }

  /** Parts whose sections all have their twins in one other part. */
  private List<ProposedTwin> parts(List<ProposedTwin> elements) {
    Map<PartId, Map<PartId, List<ProposedTwin>>> sections = new TreeMap<>();
    for (ProposedTwin pair : elements) {
      if (pair.a() instanceof Subject.OfSection a && pair.b() instanceof Subject.OfSection b) {
        sections
            .computeIfAbsent(a.part(), part -> new TreeMap<>())
            .computeIfAbsent(b.part(), part -> new ArrayList<>())
            .add(pair);
      }
    }
    List<ProposedTwin> parts = new ArrayList<>();
    sections.forEach(
        (part, others) -> {
          PartId other = others.keySet().iterator().next();
          if (others.size() == 1 && !other.equals(part)) {
            List<ProposedTwin> its = others.getOrDefault(other, List.of());
            ProposedTwin weakest =
                its.stream()
                    .min(java.util.Comparator.comparingDouble(ProposedTwin::trust))
                    .orElseThrow();
            parts.add(
                new ProposedTwin(
                    Subject.of(part), Subject.of(other), weakest.basis(), weakest.trust()));
          }
        });
    return parts;
  }

  /** The nets of kept pairs, common ones left out. */
  private Map<Integer, ProposedTwin> nets() {
    Map<Integer, ProposedTwin> nets = new LinkedHashMap<>();
    for (int e = 0; e < graph.elements; e++) {
      for (int i = graph.start[e]; kept[e] && i < graph.start[e + 1]; i++) {
        int n = graph.net[i];
        int other = pairing.netTwin[n];
        if (other != NONE && other != n && pairing.has(pairing.twin[e], graph.role[i], other)) {
          nets.computeIfAbsent(n, key -> net(n, other));
        }
      }
    }
    return nets;
  }

  private ProposedTwin net(int n, int other) {
    int pro = 0;
    int against = 0;
    boolean certain = false;
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int e = graph.element[i];
      if (kept[e]) {
        boolean holds = pairing.has(pairing.twin[e], graph.role[graph.elementEdge[i]], other);
        pro += holds ? 1 : 0;
        against += holds ? 0 : 1;
        certain |= holds && pairing.basis[e] != TwinBasis.ONE_OF_SEVERAL;
      }
    }
    TwinBasis basis = certain ? TwinBasis.STRUCTURE : TwinBasis.ONE_OF_SEVERAL;
    double trust = pro / (pro + against + 0.25) * (certain ? 1 : 0.5);
    return new ProposedTwin(
        graph.netSubjects.get(n), graph.netSubjects.get(other), basis, rounded(trust * credit));
  }

  private List<ProposedTwin> pins() {
    List<ProposedTwin> pins = new ArrayList<>();
    Set<PinRef> done = new HashSet<>();
    for (int e = 0; e < graph.elements; e++) {
      for (int i = graph.start[e]; kept[e] && i < graph.start[e + 1]; i++) {
        PinRef pin = map.pins.get(i);
        int edge = counterpart(i, pairing.twin[e]);
        if (edge != NONE && done.add(pin)) {
          pins.add(
              new ProposedTwin(
                  Subject.of(pin), Subject.of(map.pins.get(edge)), pairing.basis[e], trust(e)));
        }
      }
    }
    return pins;
  }

  /** The second's pin on the twin of this pin's net, else the only one in its role. */
  private int counterpart(int edge, int second) {
    int only = NONE;
    int count = 0;
    for (int j = graph.start[second]; j < graph.start[second + 1]; j++) {
      if (graph.role[j] == graph.role[edge]) {
        if (pairing.netTwin[graph.net[edge]] == graph.net[j]) {
          return j;
        }
        only = j;
        count++;
      }
    }
    return count == 1 ? only : NONE;
  }

  private List<TwinGroup> groups() {
    Set<TwinGroup> groups = new LinkedHashSet<>();
    pairing.several.forEach(
        (e, several) -> {
          if (kept[e]) {
            groups.add(new TwinGroup(subjects(several.firsts()), subjects(several.seconds())));
          }
        });
    for (TwinAssignment.Several several : surplus) {
      groups.add(new TwinGroup(subjects(several.firsts()), subjects(several.seconds())));
    }
    return List.copyOf(groups);
  }

  /** Whether a kept pair stands on one of its nets, common ones left out. */
  private boolean besideKept(int e) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      int n = graph.net[i];
      for (int j = graph.netStart[n]; !pairing.shared(n) && j < graph.netStart[n + 1]; j++) {
        if (kept[graph.element[j]]) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Subject> subjects(List<Integer> elements) {
    return elements.stream().map(graph.subjects::get).sorted().toList();
  }

  private List<Subject> common() {
    Set<Subject> common = new java.util.TreeSet<>();
    for (int e = 0; e < graph.elements; e++) {
      for (int i = graph.start[e]; kept[e] && i < graph.start[e + 1]; i++) {
        if (pairing.shared(graph.net[i])) {
          common.add(graph.netSubjects.get(graph.net[i]));
        }
      }
    }
    return List.copyOf(common);
  }
}
