package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.rule.ReadingRules;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * One unit at the bench: ten first readings as a technician takes them (rails, outputs, then stage
 * outputs of both channels), then what is proposed, four times.
 */
final class FaultTrial {
  private static final int FIRST_READINGS = 10;
  private static final int PROPOSALS = 4;

  private final Circuit circuit;
  private final Map<String, Double> volts;
  private final Set<String> truth;
  private Job job = JobSamples.blank();

  /**
   * @param volts of all nodes, as the meter shows them
   * @param truth the part at fault; empty for a healthy unit
   */
  FaultTrial(Circuit circuit, Map<String, Double> volts, String truth) {
    this.circuit = circuit;
    this.volts = volts;
    this.truth = truth.isEmpty() ? Set.of() : Set.of(truth);
  }

  void readFirst() {
    Set<NetId> nets = new LinkedHashSet<>();
    UnitReadings blank = unit();
    SignalPath path = SignalPath.of(blank);
    circuit.map().nets().stream()
        .map(Net::id)
        .filter(net -> blank.isRail(net) && !blank.isReference(net))
        .forEach(nets::add);
    List<NetId> stages = new ArrayList<>(path.sinks());
    path.nets().stream()
        .filter(net -> driven(blank, net))
        .sorted(Comparator.comparingInt(path::depth).reversed())
        .forEach(stages::add);
    circuit.map().nets().stream()
        .map(Net::id)
        .filter(net -> driven(blank, net))
        .forEach(stages::add);
    circuit.map().nets().stream().map(Net::id).forEach(stages::add);
    for (NetId stage : stages) {
      if (nets.size() < FIRST_READINGS && !blank.isReference(stage)) {
        nets.add(stage);
        blank.twins().net(stage).filter(twin -> nets.size() < FIRST_READINGS).ifPresent(nets::add);
      }
    }
    nets.forEach(this::read);
  }

  private static boolean driven(UnitReadings unit, NetId net) {
    return unit.pins(net).stream()
        .flatMap(pin -> unit.terminals(pin).stream())
        .anyMatch(
            terminal -> Set.of("out", "collector", "drain", "anode").contains(terminal.role()));
  }

  private void read(NetId net) {
    Double value = volts.get(net.text());
    if (value != null) {
      job = DemoUnit.read(job, net.text(), value);
    }
  }

  UnitReadings unit() {
    return UnitReadings.of(job, circuit);
  }

  Suspects suspects() {
    return Suspects.of(unit());
  }

  /** Does what is proposed. False where that was done before. */
  boolean follow(Suspects now) {
    Optional<NextReading> next = now.next();
    if (next.isEmpty()) {
      return true;
    }
    if (next.get().at() instanceof Subject.OfNet net) {
      boolean again = unit().reading(net.net()).isPresent();
      read(net.net());
      return !again;
    }
    return next.get().at() instanceof Subject.OfPart part && test(part.part());
  }

  private boolean test(PartId part) {
    boolean again = job.hypotheses().stream().anyMatch(one -> one.parts().contains(part));
    Hypothesis.Result result =
        truth.contains(part.text()) ? Hypothesis.Result.CAUSE : Hypothesis.Result.DISPROVED;
    Hypothesis tested =
        new Hypothesis(
            job.nextHypothesis(),
            List.of(part),
            "",
            "",
            "lifted and measured",
            result,
            "",
            "",
            JobSamples.NOON);
    job = job.with(JobTable.HYPOTHESES, job.hypotheses().with(tested));
    return !again;
  }

  /** Follows four proposals; how many of them had been made before. */
  int followAll() {
    int repeated = 0;
    for (int k = 0; k < PROPOSALS; k++) {
      repeated += follow(suspects()) ? 0 : 1;
    }
    return repeated;
  }

  static boolean amongFirst(List<PartId> ranked, String part) {
    return ranked.stream().limit(3).anyMatch(one -> one.text().equals(part));
  }

  static List<PartId> parts(List<Suspect> ranked) {
    return ranked.stream().map(Suspect::part).toList();
  }

  /** By the rules alone, which take no solution of the circuit. */
  List<PartId> byRules() {
    UnitReadings unit = unit();
    List<RuleFinding> findings = ReadingRules.inspect(unit);
    FaultBracket bracket = FaultBracket.of(unit, SignalPath.of(unit));
    return parts(Suspects.byRules(unit, new SuspicionModel(unit, findings, bracket)));
  }

  /** The parts at the node that differs most from its twin, in the order of the map. */
  List<PartId> byTwins() {
    UnitReadings unit = unit();
    Set<PartId> parts = new LinkedHashSet<>();
    TwinComparison.bySize(unit).stream()
        .limit(1)
        .forEach(
            one -> {
              unit.pins(one.net()).stream().map(PinRef::part).forEach(parts::add);
              unit.pins(one.twin()).stream().map(PinRef::part).forEach(parts::add);
            });
    return List.copyOf(parts);
  }
}
