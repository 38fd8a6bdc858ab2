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
 * All that can be concluded from a job: findings, the bracket, suspects and what to read next. From
 * the solved circuit where the map and the readings suffice, else by rules alone.
 *
 * @param suspects the likeliest first
 * @param unexplained the share of "none of these, or the map is wrong"; it is shared out among the
 *     suspects by place. 0 where the circuit wasn't solved
 * @param unsolved why the circuit wasn't solved; empty where it was
 */
public record Suspects(
    List<Suspect> suspects,
    List<RuleFinding> findings,
    FaultBracket bracket,
    Optional<NextReading> next,
    double unexplained,
    String unsolved) {
  public Suspects {
    suspects = List.copyOf(suspects);
    findings = List.copyOf(findings);
  }

  public static Suspects of(UnitReadings unit) {
    List<RuleFinding> findings = ReadingRules.inspect(unit);
    SignalPath path = SignalPath.of(unit);
    FaultBracket bracket = FaultBracket.of(unit, path);
    SuspicionModel model = new SuspicionModel(unit, findings, bracket);
    List<Suspect> byRules = byRules(unit, model);
    SolvedUnit solved = SolvedUnit.of(unit);
    if (!solved.lack().isEmpty()) {
      Optional<NextReading> next = new HalfSplit(unit, path, bracket, byRules).next();
      return new Suspects(byRules, findings, bracket, next, 0, solved.lack());
    }
    FaultPosterior posterior = new FaultPosterior(unit, solved, model::prior);
    List<Suspect> ranked = new SolvedSuspects(unit, model, posterior, byRules).ranked();
    Optional<NextReading> next = new HalfSplit(unit, path, bracket, ranked).next(posterior);
    return new Suspects(ranked, findings, bracket, next, posterior.none(), "");
  }

  /** By the rules alone. */
  static List<Suspect> byRules(UnitReadings unit, SuspicionModel model) {
    List<Suspect> weighed = new ArrayList<>();
    for (Part part : unit.map().parts()) {
      weighed.add(model.of(part));
    }
    double sum = weighed.stream().mapToDouble(Suspect::score).sum();
    return weighed.stream()
        .map(one -> new Suspect(one.part(), one.score() / sum, one.reasons()))
        .sorted(Comparator.comparingDouble(Suspect::score).reversed().thenComparing(Suspect::part))
        .toList();
  }
}
