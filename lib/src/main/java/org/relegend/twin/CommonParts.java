package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/**
 * Parts with all pins on nets that both channels share, as capacitors between supplies. The circuit
 * can't tell whose they are; the map's channels do, or a step that the designators of nearly all
 * other pairs follow (R101 and R201). Where neither does, they are left alone.
 */
final class CommonParts {
  private static final Pattern NUMBERED = Pattern.compile("(\\D+)(\\d{1,8})");

  /** The share of all pairs that must follow one step. */
  private static final double NEARLY_ALL = 0.8;

  private static final int FEWEST = 4;

  private final MapGraph map;
  private final PinGraph graph;
  private final TwinAssignment pairing;
  private final boolean[] kept;
  private final double trust;

  CommonParts(MapGraph map, TwinAssignment pairing, boolean[] kept, double credit) {
    this.map = map;
    this.graph = map.graph;
    this.pairing = pairing;
    this.kept = kept;
    this.trust = TwinReport.rounded(0.7 * credit);
  }

  List<ProposedTwin> pairs() {
    Map<Long, List<Integer>> places = new HashMap<>();
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.openFirst(e) && pairing.openSecond(e) && common(e)) {
        places.computeIfAbsent(key(e), k -> new ArrayList<>()).add(e);
      }
    }
    List<ProposedTwin> pairs = new ArrayList<>();
    int step = step();
    for (List<Integer> alike : places.values()) {
      for (int first : alike) {
        for (int second : alike) {
          if (first != second && twins(first, second, step)) {
            TwinBasis basis = alike.size() == 2 ? TwinBasis.STRUCTURE : TwinBasis.ONE_OF_SEVERAL;
            pairs.add(
                new ProposedTwin(
                    graph.subjects.get(first), graph.subjects.get(second), basis, trust));
          }
        }
      }
    }
    return pairs;
  }

  private boolean common(int e) {
    boolean several = false;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (!pairing.shared(graph.net[i])) {
        return false;
      }
      several |= graph.net[i] != graph.net[graph.start[e]];
    }
    return several;
  }

  private long key(int e) {
    long sum = 0;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      sum += Hashes.mix(graph.net[i], graph.role[i]);
    }
    return Hashes.mix(sum, graph.kind[e] ^ graph.value[e]);
  }

  private boolean twins(int first, int second, int step) {
    Part a = part(first);
    Part b = part(second);
    if (step != 0) {
      return step(a, b) == step && (a.channel().isEmpty() || !a.channel().equals(b.channel()));
    }
    String[] channels = channels();
    return a.channel().equals(channels[0])
        && b.channel().equals(channels[1])
        && !channels[0].isEmpty()
        && !channels[1].isEmpty();
  }

  /** The channels of the two sides, where all kept pairs agree on them. */
  private String[] channels() {
    String[] found = {"", ""};
    for (int e = 0; e < graph.elements; e++) {
      if (kept[e]) {
        found[0] = part(e).channel();
        found[1] = part(pairing.twin[e]).channel();
        break;
      }
    }
    return found[0].equals(found[1]) ? new String[] {"", ""} : found;
  }

  /** What nearly all pairs' designators differ by; 0 where nothing is. */
  private int step() {
    Map<Integer, Integer> steps = new HashMap<>();
    int all = 0;
    for (int e = 0; e < graph.elements; e++) {
      if (kept[e] && pairing.twin[e] != NONE) {
        steps.merge(step(part(e), part(pairing.twin[e])), 1, Integer::sum);
        all++;
      }
    }
    for (Map.Entry<Integer, Integer> step : steps.entrySet()) {
      if (all >= FEWEST && step.getValue() >= NEARLY_ALL * all) {
        return step.getKey();
      }
    }
    return 0;
  }

  private static int step(Part a, Part b) {
    Matcher first = NUMBERED.matcher(a.designator().text());
    Matcher second = NUMBERED.matcher(b.designator().text());
    return first.matches() && second.matches() && first.group(1).equals(second.group(1))
        ? Integer.parseInt(second.group(2)) - Integer.parseInt(first.group(2))
        : 0;
  }

  private Part part(int e) {
    Subject subject = graph.subjects.get(e);
    return map.circuit
        .map()
        .part(
            subject instanceof Subject.OfSection section
                ? section.part()
                : ((Subject.OfPart) subject).part())
        .orElseThrow();
  }
}
