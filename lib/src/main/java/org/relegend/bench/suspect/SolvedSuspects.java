package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.solve.Fault;
import org.relegend.solve.StrayResistance;

/**
 * Parts ranked by the solved circuit. The share of faults that the nodes read so far don't show is
 * shared out by rules and complaint; that of "none of these, or the map is wrong" by place: among
 * the parts at the node that differs most from what it should be, by what the rules make of them.
 */
final class SolvedSuspects {
  /** Parts below this share get no figures. */
  private static final double FIGURED = 0.005;

  /** Two faults this many standard deviations apart or less are told apart by nobody. */
  private static final double ALIKE = 1.5;

  /** Shares of the parts at other bad nodes, and of those anywhere. */
  private static final double AT_BAD = 0.2;

  private static final double ELSEWHERE = 0.01;

  private final UnitReadings unit;
  private final SuspicionModel model;
  private final FaultPosterior posterior;
  private final Map<PartId, Double> byRules = new HashMap<>();

  SolvedSuspects(
      UnitReadings unit, SuspicionModel model, FaultPosterior posterior, List<Suspect> byRules) {
    this.unit = unit;
    this.model = model;
    this.posterior = posterior;
    byRules.forEach(one -> this.byRules.put(one.part(), one.score()));
  }

  /** All parts, the likeliest first. */
  List<Suspect> ranked() {
    Map<PartId, Double> solved = posterior.parts();
    Map<PartId, Double> silent = posterior.silent();
    double unseen = silent.values().stream().mapToDouble(v -> v).sum();
    Map<PartId, Double> placed = placed();
    double sum = placed.values().stream().mapToDouble(v -> v).sum();
    List<Suspect> all = new ArrayList<>();
    for (Part part : unit.map().parts()) {
      double shown =
          Math.max(0, solved.getOrDefault(part.id(), 0.0) - silent.getOrDefault(part.id(), 0.0));
      double score =
          shown
              + unseen * byRules.getOrDefault(part.id(), 0.0)
              + posterior.none() * placed.getOrDefault(part.id(), 0.0) / sum;
      all.add(suspect(part, shown, score, solved));
    }
    all.sort(Comparator.comparingDouble(Suspect::score).reversed().thenComparing(Suspect::part));
    return all;
  }

  private Suspect suspect(Part part, double share, double score, Map<PartId, Double> solved) {
    List<String> reasons = new ArrayList<>();
    Optional<FaultPosterior.Weighed> best = posterior.best(part.id());
    if (share < FIGURED || best.isEmpty()) {
      if (score >= FIGURED) {
        reasons.add(
            "direct voltages read so far don't show a fault of it; by rules and place alone");
      }
      reasons.addAll(model.reasons(part));
      return new Suspect(part.id(), score, reasons);
    }
    List<NodeFigure> figures = posterior.figures(best.get());
    List<PartId> alike = alike(best.get(), solved);
    reasons.add(text(best.get().fault(), figures));
    if (!alike.isEmpty()) {
      reasons.add(
          "what was read doesn't tell it from "
              + String.join(", ", alike.stream().map(unit::name).toList()));
    }
    reasons.addAll(model.reasons(part));
    return new Suspect(part.id(), score, reasons, figures, alike);
  }

  private List<PartId> alike(FaultPosterior.Weighed fault, Map<PartId, Double> solved) {
    List<PartId> alike = new ArrayList<>();
    for (Map.Entry<PartId, Double> other : solved.entrySet()) {
      if (other.getValue() >= FIGURED && !other.getKey().equals(fault.part())) {
        posterior
            .best(other.getKey())
            .filter(one -> posterior.apart(fault, one) <= ALIKE)
            .ifPresent(one -> alike.add(one.part()));
      }
    }
    return alike;
  }

  private String text(Fault fault, List<NodeFigure> figures) {
    String what =
        fault instanceof StrayResistance stray && stray.ohms() >= 100
            ? "%s, as %s".formatted(fault.text(), NetVoltage.resistance(stray.ohms()))
            : fault.text();
    if (figures.isEmpty()) {
      return "if %s: direct voltages read so far don't show it".formatted(what);
    }
    return "if %s: ".formatted(what)
        + String.join(
            ", ",
            figures.stream()
                .map(
                    one ->
                        "%s %s (read %s, healthy %s)"
                            .formatted(
                                unit.name(one.net()),
                                NetVoltage.text(one.predicted()),
                                NetVoltage.text(one.read()),
                                NetVoltage.text(one.healthy())))
                .toList());
  }

  private Map<PartId, Double> placed() {
    List<NetId> worst = worst();
    Map<PartId, Double> placed = new HashMap<>();
    for (Part part : unit.map().parts()) {
      placed.put(part.id(), byRules.getOrDefault(part.id(), 0.0) * ELSEWHERE);
    }
    for (int k = worst.size() - 1; k >= 0; k--) {
      for (PartId part : parts(worst.get(k))) {
        placed.put(part, byRules.getOrDefault(part, 0.0) * (k == 0 ? 1 : AT_BAD));
      }
    }
    return placed;
  }

  /** Nodes that are bad, the one farthest off in volts first. */
  private List<NetId> worst() {
    return unit.netsRead().stream()
        .filter(net -> unit.isBad(net) && !unit.isRail(net))
        .sorted(
            Comparator.comparingDouble((NetId net) -> Math.abs(unit.difference(net).orElse(0)))
                .reversed())
        .toList();
  }

  private Set<PartId> parts(NetId net) {
    Set<PartId> parts = new LinkedHashSet<>();
    unit.pins(net).stream().map(PinRef::part).forEach(parts::add);
    return parts;
  }
}
