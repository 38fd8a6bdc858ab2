package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Pairs nets by what the pins of paired elements say of them. Where a pin was moved, the other pins
 * outvote it; what only one pin says counts if the two nets look alike.
 */
final class NetVotes {
  private final PinGraph graph;
  private final TwinAssignment pairing;

  NetVotes(TwinAssignment pairing) {
    this.graph = pairing.graph;
    this.pairing = pairing;
  }

  /** Two nets and how many pins call them twins. */
  private record Vote(int first, int second, int count, double likeness) {}

  /**
   * The one open net of the second element that a pin of the first can correspond to; none where
   * there is a choice.
   */
  int only(int first, int edge, int second) {
    int role = graph.role[edge];
    int n = graph.net[edge];
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      if (graph.role[i] == role && graph.net[i] != n && pairing.netTwin[graph.net[i]] == NONE) {
        return byLook(first, edge, second);
      }
    }
    int found = NONE;
    for (int i = graph.start[second]; i < graph.start[second + 1]; i++) {
      int candidate = graph.net[i];
      if (graph.role[i] == role && pairing.netBack[candidate] == NONE && candidate != found) {
        if (found != NONE) {
          return NONE;
        }
        found = candidate;
      }
    }
    return found;
  }

  /** Of pins in the same role: the net that alone has the same surroundings. */
  private int byLook(int first, int edge, int second) {
    long look = graph.surroundings[graph.net[edge]];
    int role = graph.role[edge];
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int other = graph.net[i];
      if (graph.role[i] == role
          && other != graph.net[edge]
          && pairing.netTwin[other] == NONE
          && graph.surroundings[other] == look) {
        return NONE;
      }
    }
    int found = NONE;
    for (int i = graph.start[second]; i < graph.start[second + 1]; i++) {
      int candidate = graph.net[i];
      if (graph.role[i] == role
          && pairing.netBack[candidate] == NONE
          && graph.surroundings[candidate] == look
          && candidate != found) {
        if (found != NONE) {
          return NONE;
        }
        found = candidate;
      }
    }
    return found;
  }

  /** Accepts the pairs of nets that most speaks for; false where nothing does. */
  boolean takeSurest(PairGrowth growth) {
    List<Vote> all = count(growth);
    if (all.isEmpty()) {
      return false;
    }
    List<Vote> clear = clear(all);
    boolean taken = false;
    for (Vote vote : clear) {
      taken |= vote.count() > 1 && growth.acceptNets(vote.first(), vote.second());
    }
    for (double least = 0.75; !taken && least >= 0.5; least -= 0.25) {
      for (Vote vote : clear) {
        taken |= vote.likeness() >= least && growth.acceptNets(vote.first(), vote.second());
      }
    }
    return taken || takeByLook(growth);
  }

  private List<Vote> count(PairGrowth growth) {
    Map<Long, Integer> counts = new HashMap<>();
    IntList unsettled = growth.unsettled;
    int kept = 0;
    boolean[] seen = new boolean[graph.elements];
    IntList rest = new IntList();
    for (int k = 0; k < unsettled.size(); k++) {
      int first = unsettled.get(k);
      int second = pairing.twin[first];
      if (second == NONE || seen[first]) {
        continue;
      }
      seen[first] = true;
      boolean open = false;
      for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
        int n = graph.net[i];
        if (pairing.netTwin[n] != NONE) {
          continue;
        }
        open = true;
        int only = only(first, i, second);
        if (only != NONE) {
          counts.merge(key(n, only), 1, Integer::sum);
        }
      }
      if (open) {
        rest.add(first);
        kept++;
      }
    }
    unsettled.clear();
    for (int i = 0; i < kept; i++) {
      unsettled.add(rest.get(i));
    }
    List<Vote> votes = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          int first = (int) (key >> 32);
          int second = key.intValue();
          votes.add(new Vote(first, second, count, likeness(first, second)));
        });
    votes.sort(
        java.util.Comparator.comparingInt(Vote::count)
            .thenComparingDouble(Vote::likeness)
            .reversed()
            .thenComparingInt(Vote::first)
            .thenComparingInt(Vote::second));
    return votes;
  }

  private static long key(int first, int second) {
    return ((long) first << 32) | second;
  }

  /** Votes that no other vote for one of the two nets comes near to. */
  private static List<Vote> clear(List<Vote> votes) {
    Map<Integer, List<Vote>> firsts = new HashMap<>();
    Map<Integer, List<Vote>> seconds = new HashMap<>();
    for (Vote vote : votes) {
      firsts.computeIfAbsent(vote.first(), n -> new ArrayList<>(1)).add(vote);
      seconds.computeIfAbsent(vote.second(), n -> new ArrayList<>(1)).add(vote);
    }
    return votes.stream()
        .filter(vote -> beats(vote, firsts.getOrDefault(vote.first(), List.of())))
        .filter(vote -> beats(vote, seconds.getOrDefault(vote.second(), List.of())))
        .toList();
  }

  private static boolean beats(Vote vote, List<Vote> rivals) {
    for (Vote rival : rivals) {
      if (!rival.equals(vote)
          && (rival.count() > vote.count()
              || rival.count() == vote.count() && rival.likeness() > vote.likeness() - 0.2)) {
        return false;
      }
    }
    return true;
  }

  /** Where two pins in one role could be exchanged: the way in which the nets look more alike. */
  private boolean takeByLook(PairGrowth growth) {
    for (int k = 0; k < growth.unsettled.size(); k++) {
      int first = growth.unsettled.get(k);
      int second = pairing.twin[first];
      for (int i = graph.start[first]; second != NONE && i < graph.start[first + 1]; i++) {
        for (int j = i + 1; j < graph.start[first + 1]; j++) {
          int[] nets = exchangeable(first, i, j, second);
          if (nets.length == 4) {
            double straight = likeness(nets[0], nets[2]) + likeness(nets[1], nets[3]);
            double crossed = likeness(nets[0], nets[3]) + likeness(nets[1], nets[2]);
            if (straight > crossed + 0.4) {
              return takeBoth(growth, nets[0], nets[2], nets[1], nets[3]);
            }
            if (crossed > straight + 0.4) {
              return takeBoth(growth, nets[0], nets[3], nets[1], nets[2]);
            }
          }
        }
      }
    }
    return false;
  }

  private static boolean takeBoth(PairGrowth growth, int a, int toA, int b, int toB) {
    boolean taken = growth.acceptNets(a, toA);
    taken |= growth.acceptNets(b, toB);
    return taken;
  }

  /** The open nets of two pins in one role, and the two of the second element; else empty. */
  int[] exchangeable(int first, int i, int j, int second) {
    int[] none = {};
    int a = graph.net[i];
    int b = graph.net[j];
    if (graph.role[i] != graph.role[j]
        || a == b
        || pairing.netTwin[a] != NONE
        || pairing.netTwin[b] != NONE) {
      return none;
    }
    int[] nets = {a, b, NONE, NONE};
    int found = 2;
    for (int k = graph.start[second]; k < graph.start[second + 1]; k++) {
      int n = graph.net[k];
      if (graph.role[k] == graph.role[i] && pairing.netBack[n] == NONE && n != nets[2]) {
        if (found == 4) {
          return none;
        }
        nets[found++] = n;
      }
    }
    return found == 4 ? nets : none;
  }

  /** The share of pins that two nets have in common by kind of element and role, 0 to 1. */
  double likeness(int first, int second) {
    int a = graph.degree(first);
    int b = graph.degree(second);
    if (a > 4 * NeighbourhoodColours.BUSY || b > 4 * NeighbourhoodColours.BUSY) {
      return a == b ? 1 : (double) Math.min(a, b) / Math.max(a, b);
    }
    boolean[] taken = new boolean[b];
    int common = 0;
    for (int i = graph.netStart[first]; i < graph.netStart[first + 1]; i++) {
      long look = look(i);
      for (int j = 0; j < b; j++) {
        if (!taken[j] && look(graph.netStart[second] + j) == look) {
          taken[j] = true;
          common++;
          break;
        }
      }
    }
    return (double) common / Math.max(a, b);
  }

  private long look(int netEdge) {
    return Hashes.mix(graph.kind[graph.element[netEdge]], graph.role[graph.elementEdge[netEdge]]);
  }
}
