package org.relegend.bench.suspect;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.bench.Instrument;
import org.relegend.bench.rule.ProbeLoad;
import org.relegend.bench.rule.UnitHazards;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * The next best reading: the one that halves the suspicion in the bracket (US Army IT0338, frame
 * 10), easy places before hard ones of nearly the same use, and never in a hazard zone. Where no
 * net in the bracket is left, one that is joined to a suspect; then the proof of the first suspect.
 */
final class HalfSplit {
  /** How far from the half a reading may be to be preferred for being easier. */
  private static final double EASE = 0.04;

  /** So many of the first suspects are worth a reading at their nets. */
  private static final int NEAR = 3;

  /** Below this share a suspect isn't worth a reading; above the other one it is to be proved. */
  private static final double WORTH = 0.05;

  private static final double LIKELY = 0.5;

  private final UnitReadings unit;
  private final SignalPath path;
  private final FaultBracket bracket;
  private final List<Suspect> ranked;
  private final Map<PartId, Double> scores = new HashMap<>();
  private final ProbePoints places;

  HalfSplit(UnitReadings unit, SignalPath path, FaultBracket bracket, List<Suspect> ranked) {
    this.unit = unit;
    this.path = path;
    this.bracket = bracket;
    this.ranked = ranked;
    this.places = new ProbePoints(unit);
    ranked.forEach(suspect -> scores.put(suspect.part(), suspect.score()));
  }

  Optional<NextReading> next() {
    return halving().or(this::nearSuspect).or(this::proof);
  }

  /** The reading that tells most of what the solved circuit leaves open, else a part's proof. */
  Optional<NextReading> next(FaultPosterior posterior) {
    return InformativeReading.of(unit, posterior, places)
        .map(one -> reading(one.net(), one.pin(), one.why()))
        .or(this::proof);
  }

  private record Choice(NetId net, PinRef pin, double share, double cost) {}

  private Optional<NextReading> halving() {
    double all = mass(bracket.passed());
    Choice best = null;
    for (NetId net : bracket.open()) {
      Optional<PinRef> pin = places.pin(net);
      if (pin.isPresent() && all > 0 && !bracket.firstBad().contains(net)) {
        double share = mass(before(net)) / all;
        double cost = Math.abs(share - 0.5) + (hard(net, pin.get()) ? EASE : 0);
        if (share > 0 && share < 1 && (best == null || cost < best.cost() - 1e-9)) {
          best = new Choice(net, pin.get(), share, cost);
        }
      }
    }
    return Optional.ofNullable(best).map(this::nextReading);
  }

  private NextReading nextReading(Choice choice) {
    String why =
        String.format(
            Locale.ROOT,
            "halves what is left: %.0f %% of the suspicion in the bracket lies before %s, %.0f %%"
                + " behind it",
            100 * choice.share(),
            unit.name(choice.net()),
            100 * (1 - choice.share()));
    return reading(choice.net(), choice.pin(), why);
  }

  private NextReading reading(NetId net, PinRef pin, String why) {
    Instrument instrument =
        unit.job().instrument().known() ? unit.job().instrument() : Instrument.DIGITAL_METER;
    String warning =
        ProbeLoad.of(unit, net).warning(unit, instrument).map(text -> ". " + text).orElse("");
    String slip =
        places.closePitched(pin)
            ? ". Its pins stand close: power off, clip on, power on, for a slip can end a board"
            : "";
    return new NextReading(Subject.of(net), unit.name(pin), why + slip + warning);
  }

  /** The parts of the bracket that the signal passes before it is at a net. */
  private Set<PartId> before(NetId net) {
    Set<NetId> nets = new HashSet<>(path.upstream(net));
    nets.add(net);
    Set<PartId> parts = new HashSet<>();
    for (NetId one : nets) {
      path.into(one).stream().map(SignalPath.Edge::part).forEach(parts::add);
    }
    parts.retainAll(bracket.passed());
    return parts;
  }

  private double mass(Set<PartId> parts) {
    return parts.stream().mapToDouble(part -> scores.getOrDefault(part, 0.0)).sum();
  }

  private boolean hard(NetId net, PinRef pin) {
    return places.hard(pin) || ProbeLoad.of(unit, net).fragileFor(Instrument.DIGITAL_METER);
  }

  /** A net of one of the first suspects, or its proof where all its nets are read. */
  private Optional<NextReading> nearSuspect() {
    for (Suspect suspect : ranked.subList(0, Math.min(NEAR, ranked.size()))) {
      Optional<NextReading> near = unread(suspect);
      if (suspect.score() < WORTH || near.isPresent() || suspect.score() > LIKELY) {
        return suspect.score() < WORTH ? Optional.empty() : near;
      }
    }
    return Optional.empty();
  }

  /** The net of a suspect that was not read and lies nearest to the first bad one. */
  private Optional<NextReading> unread(Suspect suspect) {
    return unit.circuit().netsOf(suspect.part()).stream()
        .filter(net -> !unit.isRail(net) && unit.reading(net).isEmpty())
        .filter(net -> places.pin(net).isPresent())
        .min(Comparator.comparing(this::distance))
        .map(
            net ->
                reading(
                    net,
                    places.pin(net).orElseThrow(),
                    "not read yet, and %s hangs on it".formatted(unit.name(suspect.part()))));
  }

  private int distance(NetId net) {
    return bracket.firstBad().stream()
        .mapToInt(bad -> Math.abs(path.depth(bad) - path.depth(net)))
        .min()
        .orElse(path.depth(net));
  }

  private Optional<NextReading> proof() {
    for (Suspect suspect : ranked) {
      Optional<Part> part = unit.map().part(suspect.part());
      boolean open = !MeasuredParts.isSettled(unit, suspect.part());
      if (open && part.isPresent() && places.mayTouch(part.get())) {
        String name = unit.name(suspect.part());
        String proof =
            part.get().pins().size() > 3
                ? "beep each leg of %s to the part it leads to, and only then try a good one in its"
                    + " place"
                : "lift one leg of %s, measure it, and read its nodes again";
        return Optional.of(
            new NextReading(
                Subject.of(suspect.part()),
                name,
                around(suspect.part())
                    + places
                        .dischargeFirst(part.get())
                        .map(how -> "%s: %s. ".formatted(name, how))
                        .orElse("")
                    + UnitHazards.BEFORE_TOUCHING
                    + proof.formatted(name)));
      }
    }
    return Optional.empty();
  }

  private String around(PartId part) {
    boolean all =
        unit.circuit().netsOf(part).stream()
            .allMatch(net -> unit.isRail(net) || unit.reading(net).isPresent());
    return all
        ? "all nodes around it are read. "
        : "no further node around it may be proposed for a reading. ";
  }
}
