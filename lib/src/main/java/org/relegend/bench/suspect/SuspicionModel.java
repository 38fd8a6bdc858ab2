package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.Condition;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.PartState;
import org.relegend.bench.rule.LikelihoodRatio;
import org.relegend.bench.rule.NodeVerdict;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;

/**
 * The model by which parts are ranked. One fault is assumed, and a part's suspicion is a product:
 * how often its kind fails, times how much likelier each observation is if it is this part. The
 * factors for rework, damage, place and hypotheses are our judgement, kept to a few round figures:
 *
 * <ul>
 *   <li>kind: failures per million hours, {@link FailureRates}
 *   <li>replaced 3, re-soldered 5, socketed 2, damaged 10, missing 1000
 *   <li>each rule's finding: its {@link LikelihoodRatio} factors; of several by one rule the
 *       strongest counts
 *   <li>passed by the signal in the bracket 1, joined there 0.7, elsewhere 0.02, unless a rule
 *       accuses it
 *   <li>all its nets read good: 0.1, capacitors 0.5 since direct voltages tell little of them
 *   <li>a hypothesis disproved 0.05, found a fault 20
 * </ul>
 */
final class SuspicionModel {
  private static final double ELSEWHERE = 0.02;
  private static final double JOINED = 0.7;

  /** Lower rates are told apart by nobody. */
  private static final double LEAST_RATE = 0.002;

  private static final double RATE_POWER = 0.25;
  private static final double OTHER_CHANNEL = 0.3;

  /** A part that was measured out of circuit and is as marked. */
  private static final double CLEARED = 0.02;

  /** Rules that speak of a part itself and not of voltages, which the solved circuit weighs. */
  private static final Set<String> OF_PARTS =
      Set.of("value", "later-date", "twin-replaced", "touch");

  /** A factor with its reason; sorted by how much it moves the rank. */
  private record Weight(double factor, String reason) {
    double size() {
      return Math.abs(Math.log(factor));
    }
  }

  private final UnitReadings unit;
  private final FaultBracket bracket;
  private final boolean anyRead;
  private final String onlyChannel;
  private final Map<PartId, List<Weight>> accused = new HashMap<>();
  private final Map<PartId, List<Weight>> apart = new HashMap<>();

  SuspicionModel(UnitReadings unit, List<RuleFinding> findings, FaultBracket bracket) {
    this.unit = unit;
    this.bracket = bracket;
    this.anyRead = !unit.netsRead().isEmpty();
    Set<String> channels =
        unit.netsRead().stream()
            .map(unit::channel)
            .filter(channel -> !channel.isEmpty())
            .collect(java.util.stream.Collectors.toSet());
    this.onlyChannel = channels.size() == 1 ? channels.iterator().next() : "";
    Map<PartId, Map<String, Weight>> byRule = new HashMap<>();
    for (RuleFinding finding : findings) {
      if (OF_PARTS.contains(finding.code())) {
        finding
            .blames()
            .forEach(
                blame ->
                    apart
                        .computeIfAbsent(blame.part(), part -> new ArrayList<>())
                        .add(new Weight(blame.factor(), blame.reason())));
      }
      for (LikelihoodRatio blame : finding.blames()) {
        byRule
            .computeIfAbsent(blame.part(), part -> new HashMap<>())
            .merge(
                finding.code(),
                new Weight(blame.factor(), blame.reason()),
                (a, b) -> a.size() >= b.size() ? a : b);
      }
    }
    byRule.forEach(
        (part, weights) ->
            accused.put(
                part,
                weights.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(Map.Entry::getValue)
                    .toList()));
  }

  /** A part with its suspicion, not yet as a share of all. */
  Suspect of(Part part) {
    FailureRates.Rate rate = FailureRates.of(unit.circuit(), part);
    List<Weight> weights = new ArrayList<>(accused.getOrDefault(part.id(), List.of()));
    boolean ruled = weights.stream().anyMatch(weight -> weight.factor() >= LikelihoodRatio.MEDIUM);
    unit.job().condition(part.id()).ifPresent(condition -> add(weights, condition));
    if (anyRead) {
      place(part, ruled).ifPresent(weights::add);
    }
    hypotheses(part.id()).forEach(weights::add);
    if (MeasuredParts.isGood(unit, part.id())) {
      weights.add(new Weight(CLEARED, "measured out of circuit and as marked"));
    }
    double score = rate.perMillionHours();
    for (Weight weight : weights) {
      score *= weight.factor();
    }
    weights.sort(Comparator.comparingDouble(Weight::size).reversed());
    List<String> reasons = new ArrayList<>(weights.stream().map(Weight::reason).toList());
    reasons.add(text(rate));
    return new Suspect(part.id(), score, reasons);
  }

  /**
   * How likely a part is at fault before any voltage is weighed, up to a factor that is the same
   * for all: the fourth root of its kind's failure rate, since rates of handbooks differ by orders
   * from what benches see, times the factors of its condition, of values and dates, and of
   * hypotheses. What rules on voltages say counts by its cube root, as the readings count anyway.
   * While one channel alone was read, shared parts and the other channel's are less likely: the
   * complaint is of one.
   */
  double prior(PartId id) {
    Optional<Part> part = unit.map().part(id);
    if (part.isEmpty()) {
      return Math.pow(LEAST_RATE, RATE_POWER);
    }
    double rate = FailureRates.of(unit.circuit(), part.get()).perMillionHours();
    double prior = Math.pow(Math.max(rate, LEAST_RATE), RATE_POWER);
    List<Weight> weights = new ArrayList<>(apart.getOrDefault(id, List.of()));
    unit.job().condition(id).ifPresent(condition -> add(weights, condition));
    weights.addAll(hypotheses(id));
    for (Weight weight : weights) {
      prior *= weight.factor();
    }
    double accusation =
        accused.getOrDefault(id, List.of()).stream()
            .mapToDouble(Weight::factor)
            .filter(factor -> factor > 1)
            .max()
            .orElse(1);
    prior *= Math.cbrt(accusation);
    if (!onlyChannel.isEmpty() && !part.get().channel().equals(onlyChannel)) {
      prior *= OTHER_CHANNEL;
    }
    return MeasuredParts.isGood(unit, id) ? prior * CLEARED : prior;
  }

  /** What of the rules speaks for a part, the weightiest first, and how often its kind fails. */
  List<String> reasons(Part part) {
    List<Weight> weights = new ArrayList<>(accused.getOrDefault(part.id(), List.of()));
    unit.job().condition(part.id()).ifPresent(condition -> add(weights, condition));
    place(part, true).ifPresent(weights::add);
    weights.addAll(hypotheses(part.id()));
    weights.removeIf(weight -> weight.factor() < JOINED);
    weights.sort(Comparator.comparingDouble(Weight::size).reversed());
    List<String> reasons = new ArrayList<>(weights.stream().map(Weight::reason).toList());
    reasons.add(text(FailureRates.of(unit.circuit(), part)));
    return reasons;
  }

  private static String text(FailureRates.Rate rate) {
    return rate.published()
        ? "its kind (%s) fails %s times in a million hours (%s)"
            .formatted(rate.name(), rate.perMillionHours(), FailureRates.SOURCE)
        : "its kind (%s) is taken to fail %s times in a million hours"
            .formatted(rate.name(), rate.perMillionHours());
  }

  private static void add(List<Weight> weights, Condition condition) {
    for (PartState state : condition.states()) {
      double factor =
          switch (state) {
            case REPLACED -> 3;
            case RESOLDERED -> 5;
            case SOCKETED -> 2;
            case DAMAGED -> 10;
            case MISSING -> 1000;
            case ORIGINAL, UNKNOWN -> 1;
          };
      if (factor != 1) {
        String note =
            condition.note().isEmpty() ? "" : " (" + condition.note().replace('\n', ' ') + ")";
        weights.add(new Weight(factor, "is " + state.word() + note));
      }
    }
  }

  private Optional<Weight> place(Part part, boolean ruled) {
    if (bracket.passed().contains(part.id())) {
      return Optional.of(new Weight(1, "lies between " + ends()));
    }
    if (bracket.joined().contains(part.id())) {
      return Optional.of(new Weight(JOINED, "is joined to a node between " + ends()));
    }
    if (ruled) {
      return Optional.empty();
    }
    if (bracket.passed().isEmpty()) {
      return verified(part);
    }
    return Optional.of(new Weight(ELSEWHERE, "lies outside of what is between " + ends()));
  }

  private String ends() {
    String good =
        bracket.lastGood().isEmpty()
            ? "the input"
            : "the last good node (%s)".formatted(names(bracket.lastGood()));
    return bracket.byComplaint()
        ? "%s and the output, of which the complaint is".formatted(good)
        : "%s and the first bad one (%s)".formatted(good, names(bracket.firstBad()));
  }

  private String names(List<NetId> nets) {
    return String.join(", ", nets.stream().map(unit::name).toList());
  }

  private Optional<Weight> verified(Part part) {
    List<NetId> nets =
        unit.circuit().netsOf(part.id()).stream().filter(net -> !unit.isRail(net)).toList();
    boolean all =
        !nets.isEmpty() && nets.stream().allMatch(net -> unit.verdict(net) == NodeVerdict.GOOD);
    return all
        ? Optional.of(
            unit.isFamily(part.id(), "capacitor")
                ? new Weight(0.5, "its nodes read well, which tells little of a capacitor")
                : new Weight(0.1, "all its nodes read well"))
        : Optional.empty();
  }

  private List<Weight> hypotheses(PartId part) {
    List<Weight> weights = new ArrayList<>();
    for (Hypothesis hypothesis : unit.job().hypotheses()) {
      if (hypothesis.parts().contains(part)) {
        switch (hypothesis.result()) {
          case DISPROVED ->
              weights.add(
                  new Weight(0.05, "hypothesis %s is disproved".formatted(hypothesis.id())));
          case FOUND, CAUSE ->
              weights.add(
                  new Weight(20, "hypothesis %s found it at fault".formatted(hypothesis.id())));
          case OPEN -> {
            // a thought alone weighs nothing
          }
        }
      }
    }
    return weights;
  }
}
