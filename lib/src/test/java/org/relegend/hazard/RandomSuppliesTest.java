package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.Net;
import org.relegend.map.NetId;

/**
 * Random supplies against what is built. 300 of them; 10,000 with {@code
 * -Drelegend.supplies=10000}; each run prints the table of hazards.md.
 */
class RandomSuppliesTest {
  private static final int SUPPLIES = Integer.getInteger("relegend.supplies", 300);

  /** 60 V DC by IEC 61010-1, and what a solver's leaks and steps may cost. */
  private static final double HIGH = 62;

  /** What was counted of supplies told alike. */
  private static final class Tally {
    int supplies;
    int live;
    int high;
    int harmless;
    int alarmed;
    int faults;
  }

  private final Map<Supplies.Telling, Tally> text = new EnumMap<>(Supplies.Telling.class);
  private final Tally allTold = new Tally();

  @Test
  void nothingLive_isToldAsKeptAway_andNothingHighIsSilent() {
    for (long seed = 0; seed < SUPPLIES; seed++) {
      Supplies.Supply supply = Supplies.of(seed);
      Circuit circuit = Circuit.of(supply.map());
      Hazards hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
      Set<Node> kept = new HashSet<>();
      hazards.mains().barriers().stream()
          .flatMap(barrier -> barrier.far().stream())
          .forEach(pin -> kept.addAll(circuit.nodesOf(pin)));
      Tally tally = text.computeIfAbsent(supply.telling(), key -> new Tally());
      tally.supplies++;
      for (Net net : supply.map().nets()) {
        check(seed, supply, hazards, kept, net.id(), tally);
      }
    }
    text.forEach((telling, tally) -> print(telling.name(), tally));
    print("all told", allTold);
    assertThat(text.values()).allMatch(tally -> tally.live > 0 && tally.high > 0);
    assertThat(share(allTold)).as("false alarms where all is told").isLessThan(0.05);
  }

  private void check(
      long seed, Supplies.Supply supply, Hazards hazards, Set<Node> kept, NetId net, Tally tally) {
    Node node = Node.of(net);
    NodeHazard hazard = hazards.at(net);
    String text = "seed %d, %s, %s: %s".formatted(seed, supply.telling(), net, hazard);
    double peak = supply.peaks().getOrDefault(net.text(), 0.0);
    if (supply.live().contains(net.text())) {
      tally.live++;
      boolean wrong = supply.telling() == Supplies.Telling.WRONG;
      assertThat(hazard.isSuspect()).as("live, " + text).isTrue();
      assertThat(wrong || hazards.mains().has(node)).as("reached, " + text).isTrue();
      assertThat(kept).as("kept away, " + text).doesNotContain(node);
    } else if (peak > HIGH || supply.high().contains(net.text())) {
      tally.high++;
      assertThat(hazard.isSuspect()).as("%.0f V, %s", peak, text).isTrue();
      boolean figure = peak > HIGH && hazard.grade() == NodeHazard.Grade.CARRIES;
      if (figure && !hazards.mains().has(node)) {
        assertThat(hazard.volts().orElse(0)).as(text).isGreaterThan(peak * 0.97 - 1);
      }
    } else {
      count(tally, hazard);
      if (supply.complete()) {
        count(allTold, hazard);
      }
    }
  }

  private static void count(Tally tally, NodeHazard hazard) {
    tally.harmless++;
    tally.alarmed += hazard.isSuspect() ? 1 : 0;
    tally.faults += hazard.grade() == NodeHazard.Grade.FAULT ? 1 : 0;
  }

  private static double share(Tally tally) {
    return tally.harmless == 0 ? 0 : (double) tally.alarmed / tally.harmless;
  }

  private static void print(String name, Tally tally) {
    System.out.printf(
        "%-11s supplies %5d  live %6d  high %6d  else %6d  taken as high %.1f %%  in a fault %.1f %%%n",
        name,
        tally.supplies,
        tally.live,
        tally.high,
        tally.harmless,
        100 * share(tally),
        tally.harmless == 0 ? 0 : 100.0 * tally.faults / tally.harmless);
  }
}
