package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.FourBitAdder;
import org.relegend.circuit.OtherDecks;
import org.relegend.map.BoardMap;
import org.relegend.map.Subject;

/**
 * The tables of the README, measured on two published circuits (reference notes on standards,
 * section 9); prints them. One command for all: {@code mvn -q -pl lib test -Dtest=TwinTablesTest
 * -Drelegend.runs=20}.
 */
@Tag("long")
class TwinTablesTest {
  private static final double[] SHARES = {0, 0.01, 0.05, 0.1, 0.2};

  /** In the README's table 20; each takes half a second. */
  private static final int RUNS = Integer.getInteger("relegend.runs", 6);

  private static final BoardMap ADDER = FourBitAdder.map();

  /** From every part of the cell as the one seed. */
  @Test
  void adder_everyChoiceOfCells_fromEverySeed() {
    MapGraph graph = new MapGraph(Circuit.of(ADDER));
    List<long[]> rings = PinGraphSearch.rings(graph.graph, true);
    StringBuilder table =
        new StringBuilder(
            "adder: from cell to cell | seeds | pairs asked | right | one of several");
    table.append(" | missed | wrong\n");
    for (List<String> cells : FourBitAdderTwinsTest.choices()) {
      int[] counts = new int[5];
      for (String seed : FourBitAdderTwinsTest.inner()) {
        PinGraphSearch search = new PinGraphSearch(graph.graph, rings);
        search.seed(number(graph, cells.get(0) + seed), number(graph, cells.get(1) + seed));
        search.run();
        count(graph, search.pairing(), cells, counts);
      }
      table.append(
          String.format(
              Locale.ROOT,
              "%s to %s | 108 | %d | %d | %d | %d | %d%n",
              cells.get(0),
              cells.get(1),
              counts[0],
              counts[1],
              counts[2],
              counts[3],
              counts[4]));
      assertThat(counts[4]).as("wrong pairs from %s", cells).isZero();
      assertThat(counts[3]).as("missed from %s", cells).isZero();
      // by the counts of ExchangeableTest: 40, 39, 38, 14 or 12 of 108 by where the seed is
      assertThat(counts[2]).as("one of several from %s", cells).isEqualTo(3518);
    }
    print(table.toString());
  }

  private static void count(
      MapGraph graph, TwinAssignment pairing, List<String> cells, int[] counts) {
    for (String inner : FourBitAdderTwinsTest.inner()) {
      int first = number(graph, cells.get(0) + inner);
      int truth = number(graph, cells.get(1) + inner);
      int found = pairing.twin[first];
      counts[0]++;
      if (found == TwinAssignment.NONE) {
        counts[3]++;
      } else if (pairing.basis[first] == TwinBasis.ONE_OF_SEVERAL) {
        TwinAssignment.Several several = pairing.several.get(first);
        boolean held = several != null && several.seconds().contains(truth);
        counts[held ? 2 : 4]++;
      } else {
        counts[found == truth ? 1 : 4]++;
      }
    }
  }

  private static int number(MapGraph graph, String path) {
    return graph.element(FourBitAdderTwinsTest.part(path)).orElseThrow();
  }

  /** Three channels on one input: from any part of one to its twin in either of the others. */
  @Test
  void filter_everyChoiceOfChannels_fromEveryPart() {
    BoardMap map = OtherDecks.threeFiltersMap();
    TwinSearch search = TwinSearch.of(Circuit.of(map));
    int asked = 0;
    int right = 0;
    int several = 0;
    for (String[] channels :
        new String[][] {
          {"X1", "X2"}, {"X1", "X3"}, {"X2", "X1"}, {"X2", "X3"}, {"X3", "X1"}, {"X3", "X2"}
        }) {
      Map<Subject, Subject> truth = new Damage(map, channels[0], channels[1]).truth();
      assertThat(truth).hasSize(16);
      for (Map.Entry<Subject, Subject> seed : truth.entrySet()) {
        TwinResult twins = search.from(List.of(new TwinSeed(seed.getKey(), seed.getValue())));
        assertThat(twins.contradictions()).isEmpty();
        Map<Subject, ProposedTwin> found = new TreeMap<>();
        twins.pairs().forEach(pair -> found.put(pair.a(), pair));
        for (Map.Entry<Subject, Subject> pair : truth.entrySet()) {
          ProposedTwin result = found.get(pair.getKey());
          asked++;
          assertThat(result).as("%s from %s", pair, seed).isNotNull();
          boolean equal = result.b().equals(pair.getValue());
          right += equal && result.basis() != TwinBasis.ONE_OF_SEVERAL ? 1 : 0;
          several += result.basis() == TwinBasis.ONE_OF_SEVERAL ? 1 : 0;
          assertThat(equal || result.basis() == TwinBasis.ONE_OF_SEVERAL)
              .as("%s told for %s from %s", result, pair, seed)
              .isTrue();
        }
      }
    }
    print(
        "filter: pairs asked %d | right %d | one of several %d | missed 0 | wrong 0"
            .formatted(asked, right, several));
  }

  /** Recall and precision over random damages of each share. */
  @Test
  void damage_onBothCircuits() {
    StringBuilder table =
        new StringBuilder("damaged | adder recall % (in groups) | precision % | ");
    table.append("filter recall % (in groups) | precision %\n");
    Map<Double, List<Damage.Outcome>> results = new TreeMap<>();
    Damage adder = new Damage(ADDER, "X1.X1.X2", "X1.X2.X1");
    Damage filter = new Damage(OtherDecks.threeFiltersMap(), "X1", "X2");
    for (double share : SHARES) {
      Damage.Outcome ofAdder = adder.runs(share, share == 0 ? 3 : RUNS);
      Damage.Outcome ofFilter = filter.runs(share, share == 0 ? 3 : RUNS);
      table.append(
          String.format(
              Locale.ROOT,
              "%.0f %% | %.1f (%.0f) | %.1f | %.1f (%.0f) | %.1f%n",
              100 * share,
              ofAdder.recall(),
              ofAdder.inGroups(),
              ofAdder.precision(),
              ofFilter.recall(),
              ofFilter.inGroups(),
              ofFilter.precision()));
      results.put(share, List.of(ofAdder, ofFilter));
    }
    print(table.toString());
    for (Damage.Outcome at5 : results.getOrDefault(0.05, List.of())) {
      assertThat(at5.recall()).isGreaterThanOrEqualTo(95);
      assertThat(at5.precision()).isGreaterThanOrEqualTo(99.5);
    }
  }

  /** To the console, which is where the command shows it; reports of tests go to files. */
  private static void print(String table) {
    System.out.println(table);
  }
}
