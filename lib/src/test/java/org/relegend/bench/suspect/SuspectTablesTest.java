package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.solve.ChannelCircuit;
import org.relegend.solve.Fault;
import org.relegend.solve.Netlist;
import org.relegend.solve.OperatingPoint;
import org.relegend.solve.SampleCircuits;
import org.relegend.solve.UsualFailures;

/**
 * Faults on units that differ from the models: is the true part among the first three? {@code mvn
 * -B -q -pl lib test -Dtest=SuspectTablesTest -Drelegend.faults=60} prints the table of
 * lib/docs/suspects.md; without the property a sample is run.
 */
class SuspectTablesTest {
  private static final int FAULTS = Integer.getInteger("relegend.faults", 1);
  private static final int HEALTHY = Math.min(30, FAULTS);

  /** A fault shows where it moves a node by so much. */
  private static final double SHOWS_VOLTS = 0.05;

  private static final double SHOWS_FRACTION = 0.05;

  /** All of them in the long run, two that are quick in the sample. */
  static List<ChannelCircuit> circuits() {
    return Integer.getInteger("relegend.faults") != null
        ? SampleCircuits.all()
        : List.of(SampleCircuits.OPAMP_STAGES, SampleCircuits.SUPPLY);
  }

  /** Counts of one row of the table. */
  private static final class Row {
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    void count(String what, boolean yes) {
      counts.merge(what, yes ? 1 : 0, Integer::sum);
    }

    int of(String what) {
      return counts.getOrDefault(what, 0);
    }

    @Override
    public String toString() {
      return counts.toString();
    }
  }

  private static List<Fault> showing(Netlist model, long seed) {
    List<Fault> faults = new ArrayList<>();
    OperatingPoint healthy = OperatingPoint.of(model);
    List<Fault> all = new ArrayList<>(UsualFailures.of(model));
    java.util.Collections.shuffle(all, new Random(seed));
    for (Fault fault : all) {
      if (faults.size() == FAULTS) {
        break;
      }
      OperatingPoint faulty = healthy.changedTo(fault.appliedTo(model));
      boolean shows =
          faulty.solved()
              && model.nodes().stream()
                  .anyMatch(
                      node -> {
                        double was = healthy.volts(node).orElse(0);
                        double change = Math.abs(faulty.volts(node).orElse(0) - was);
                        return change >= Math.max(SHOWS_VOLTS, SHOWS_FRACTION * Math.abs(was));
                      });
      if (shows) {
        faults.add(fault);
      }
    }
    return faults;
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void theTruePart_isAmongTheFirstThree(ChannelCircuit sample) {
    Circuit circuit = Circuit.of(sample.map());
    Netlist model = sample.mapped().netlist();
    Row row = new Row();
    List<Fault> faults = showing(model, sample.name().hashCode());
    for (int k = 0; k < faults.size(); k++) {
      Fault fault = faults.get(k);
      Netlist unit = RandomUnit.of(model, 1000L + k);
      Map<String, Double> volts = RandomUnit.shown(unit, fault);
      if (!volts.isEmpty()) {
        run(circuit, volts, fault, row);
      }
    }
    System.out.printf(Locale.ROOT, "| %s | %s |%n", sample.name(), row);
    assertThat(row.of("repeated")).isZero();
    assertThat(row.of("four more")).isGreaterThanOrEqualTo(row.of("twin"));
  }

  private static void run(Circuit circuit, Map<String, Double> volts, Fault fault, Row row) {
    FaultTrial trial = new FaultTrial(circuit, volts, fault.part());
    trial.readFirst();
    Suspects first = countFirst(trial, fault, row);
    int repeated = trial.followAll();
    for (int k = 0; k < repeated; k++) {
      row.count("repeated", true);
    }
    List<PartId> last = FaultTrial.parts(trial.suspects().suspects());
    boolean after = FaultTrial.amongFirst(last, fault.part());
    row.count("four more", after);
    if (!after && Boolean.getBoolean("relegend.misses")) {
      System.out.printf(
          "missed %s %s: %s then %s%n",
          fault.part(),
          fault.text(),
          FaultTrial.parts(first.suspects()).stream().limit(3).toList(),
          last.stream().limit(3).toList());
    }
  }

  private static Suspects countFirst(FaultTrial trial, Fault fault, Row row) {
    row.count("faults", true);
    row.count("twin", FaultTrial.amongFirst(trial.byTwins(), fault.part()));
    row.count("rules", FaultTrial.amongFirst(trial.byRules(), fault.part()));
    Suspects first = trial.suspects();
    row.count("ten", FaultTrial.amongFirst(FaultTrial.parts(first.suspects()), fault.part()));
    if (first.suspects().get(0).score() >= 0.8) {
      row.count("sure", true);
      row.count("sure and right", first.suspects().get(0).part().text().equals(fault.part()));
    }
    return first;
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void ofHealthyUnits_noErrorIsTold(ChannelCircuit sample) {
    Circuit circuit = Circuit.of(sample.map());
    Netlist model = sample.mapped().netlist();
    List<String> errors = new ArrayList<>();
    for (int k = 0; k < HEALTHY; k++) {
      Netlist unit = RandomUnit.of(model, 5000L + k);
      FaultTrial trial = new FaultTrial(circuit, RandomUnit.shown(OperatingPoint.of(unit)), "");
      trial.readFirst();
      trial.suspects().findings().stream()
          .filter(finding -> finding.severity() == Severity.ERROR)
          .filter(finding -> !finding.code().equals("high-voltage-read")) // which is true there
          .forEach(finding -> errors.add(finding.message()));
    }
    assertThat(errors).isEmpty();
  }

  @Test
  void ofMapsThatLackParts_asManyAreFoundAsByTwins() {
    Row all = new Row();
    circuits().forEach(sample -> thin(sample, all));
    System.out.printf(Locale.ROOT, "| all thin maps | %s |%n", all);
    assertThat(all.of("ten")).isGreaterThanOrEqualTo(all.of("twin"));
  }

  private static void thin(ChannelCircuit sample, Row all) {
    Netlist model = sample.mapped().netlist();
    for (double share : new double[] {0.25, 0.5}) {
      Row row = new Row();
      List<Fault> faults = showing(model, 7);
      for (int k = 0; k < faults.size(); k++) {
        Fault fault = faults.get(k);
        Map<String, Double> volts = RandomUnit.shown(RandomUnit.of(model, 9000L + k), fault);
        if (!volts.isEmpty()) {
          Circuit thin = Circuit.of(without(sample.map(), share, fault.part(), k));
          FaultTrial trial = new FaultTrial(thin, volts, fault.part());
          trial.readFirst();
          countFirst(trial, fault, row);
          countFirst(trial, fault, all);
        }
      }
      System.out.printf(Locale.ROOT, "| %s without %.2f | %s |%n", sample.name(), share, row);
    }
  }

  private static BoardMap without(BoardMap map, double share, String kept, long seed) {
    Random random = new Random(seed);
    BoardMap thin = map;
    for (var part : map.parts()) {
      if (random.nextDouble() < share && !part.id().text().equals(kept)) {
        thin = thin.with(MapTables.PARTS, thin.parts().without(part.id()));
        for (var net : thin.nets()) {
          List<org.relegend.map.Net.Member> left =
              net.members().stream()
                  .filter(member -> !member.pin().part().equals(part.id()))
                  .toList();
          if (left.size() < net.members().size()) {
            thin =
                thin.with(
                    MapTables.NETS,
                    thin.nets()
                        .with(
                            new org.relegend.map.Net(
                                net.id(),
                                net.name(),
                                net.channel(),
                                net.potential(),
                                left,
                                net.note())));
          }
        }
      }
    }
    return thin;
  }
}
