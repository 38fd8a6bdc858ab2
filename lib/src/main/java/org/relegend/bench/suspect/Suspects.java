package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.rule.ReadingRules;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.Part;

/**
 * All that can be concluded from a job: findings, the bracket, suspects and what to read next.
 *
 * @param suspects the likeliest first
 */
public record Suspects(
    List<Suspect> suspects,
    List<RuleFinding> findings,
    FaultBracket bracket,
    Optional<NextReading> next) {
  public Suspects {
    suspects = List.copyOf(suspects);
    findings = List.copyOf(findings);
  }

  public static Suspects of(UnitReadings unit) {
    List<RuleFinding> findings = ReadingRules.inspect(unit);
    SignalPath path = SignalPath.of(unit);
    FaultBracket bracket = FaultBracket.of(unit, path);
    SuspicionModel suspicion = new SuspicionModel(unit, findings, bracket);
    List<Suspect> weighed = new ArrayList<>();
    for (Part part : unit.map().parts()) {
      weighed.add(suspicion.of(part));
    }
    double sum = weighed.stream().mapToDouble(Suspect::score).sum();
    List<Suspect> ranked =
        weighed.stream()
            .map(one -> new Suspect(one.part(), one.score() / sum, one.reasons()))
            .sorted(
                Comparator.comparingDouble(Suspect::score).reversed().thenComparing(Suspect::part))
            .toList();
    Optional<NextReading> next = new HalfSplit(unit, path, bracket, ranked).next();
    return new Suspects(ranked, findings, bracket, next);
  }
}
