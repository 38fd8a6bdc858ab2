package org.relegend.bench.suspect;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.bench.rule.FollowerNets;
import org.relegend.bench.rule.NodeVerdict;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * What lies between the last good points and the first bad ones. While nothing bad was read the
 * complaint itself counts: then the outputs are the first bad points.
 *
 * @param firstBad nets read bad that no bad net lies before; or the outputs
 * @param lastGood nets read good that the way back from there ends at
 * @param passed parts that the signal passes between the two
 * @param joined parts that hang on the nets in between, and those of a loop that leads back there
 * @param open nets in between that were not read, in the order of the signal
 * @param byComplaint whether the outputs stand in for a bad reading
 */
public record FaultBracket(
    List<NetId> firstBad,
    List<NetId> lastGood,
    Set<PartId> passed,
    Set<PartId> joined,
    List<NetId> open,
    boolean byComplaint) {
  public FaultBracket {
    firstBad = List.copyOf(firstBad);
    lastGood = List.copyOf(lastGood);
    passed = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(passed));
    joined = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(joined));
    open = List.copyOf(open);
  }

  public static FaultBracket of(UnitReadings unit, SignalPath path) {
    return new Search(unit, path).bracket();
  }

  private static final class Search {
    private final UnitReadings unit;
    private final SignalPath path;
    private final Set<NetId> good = new LinkedHashSet<>();
    private final Set<NetId> between = new LinkedHashSet<>();
    private final Set<PartId> passed = new LinkedHashSet<>();
    private final Set<PartId> joined = new LinkedHashSet<>();

    Search(UnitReadings unit, SignalPath path) {
      this.unit = unit;
      this.path = path;
    }

    FaultBracket bracket() {
      List<NetId> bad = firstBad();
      boolean byComplaint = bad.isEmpty();
      List<NetId> ends = byComplaint ? outputs() : bad;
      ends.forEach(this::walkBack);
      if (!byComplaint) {
        ends.forEach(this::closeLoops);
      }
      between.forEach(this::addJoined);
      joined.removeAll(passed);
      List<NetId> open =
          path.nets().stream()
              .filter(net -> between.contains(net) && unit.reading(net).isEmpty())
              .toList();
      return new FaultBracket(ends, List.copyOf(good), passed, joined, open, byComplaint);
    }

    private List<NetId> firstBad() {
      Set<NetId> bad =
          unit.netsRead().stream()
              .filter(net -> path.has(net) && unit.isBad(net))
              .map(this::leader)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      return bad.stream()
          .filter(net -> path.upstream(net).stream().noneMatch(bad::contains))
          .toList();
    }

    /** A net that only follows another through a resistor without current: then that one. */
    private NetId leader(NetId net) {
      Optional<NetId> followed = FollowerNets.of(unit, net);
      return followed.isPresent() && path.has(followed.get()) && unit.isBad(followed.get())
          ? followed.get()
          : net;
    }

    /** The outputs of the channels that were read, as far as none of them reads good. */
    private List<NetId> outputs() {
      Set<String> channels =
          unit.netsRead().stream().map(unit::channel).collect(Collectors.toSet());
      channels.remove("");
      return path.sinks().stream()
          .filter(net -> channels.isEmpty() || channels.contains(unit.channel(net)))
          .filter(net -> unit.verdict(net) != NodeVerdict.GOOD)
          .toList();
    }

    private void walkBack(NetId end) {
      goOn(end);
      for (NetId net : path.upstream(end, this::isGood)) {
        if (isGood(net)) {
          good.add(net);
        } else {
          goOn(net);
        }
      }
    }

    private void goOn(NetId net) {
      between.add(net);
      path.into(net).stream().map(SignalPath.Edge::part).forEach(passed::add);
    }

    private boolean isGood(NetId net) {
      return unit.verdict(net) == NodeVerdict.GOOD;
    }

    /** Where feedback from a bad net leads to a first bad one, all of that loop is in question. */
    private void closeLoops(NetId net) {
      for (SignalPath.Edge edge : path.feedback()) {
        if (edge.to().equals(net) && unit.isBad(edge.from())) {
          joined.add(edge.part());
          joined.addAll(path.between(net, edge.from()));
        }
      }
    }

    private void addJoined(NetId net) {
      unit.pins(net).stream().map(PinRef::part).forEach(joined::add);
    }
  }
}
