package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;

/**
 * A net and its twin, both read.
 *
 * @param difference the first less the second, in volts
 * @param limit how large it may be
 */
public record TwinComparison(
    NetId net, double volts, NetId twin, double twinVolts, double difference, double limit) {
  public boolean flagged() {
    return Math.abs(difference) > limit;
  }

  /** All twins that were both read, those of one channel first named, by size of difference. */
  public static List<TwinComparison> bySize(UnitReadings unit) {
    List<TwinComparison> all = new ArrayList<>(of(unit));
    all.sort(Comparator.comparingDouble((TwinComparison c) -> Math.abs(c.difference())).reversed());
    return List.copyOf(all);
  }

  /** The same in the order of the signal. */
  public static List<TwinComparison> inOrder(UnitReadings unit, SignalPath path) {
    List<TwinComparison> all = new ArrayList<>(of(unit));
    all.sort(
        Comparator.comparingInt((TwinComparison c) -> path.depth(c.net()))
            .thenComparing(TwinComparison::net));
    return List.copyOf(all);
  }

  private static List<TwinComparison> of(UnitReadings unit) {
    List<TwinComparison> all = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      Optional<NetId> twin = unit.twins().net(net);
      Optional<NetVoltage> other = unit.twin(net);
      if (twin.isPresent() && other.isPresent() && net.compareTo(twin.get()) < 0) {
        double here = unit.volts(net).orElseThrow().value();
        double there = other.get().value();
        double limit = unit.job().limit(org.relegend.map.Subject.of(net)).at(there);
        all.add(new TwinComparison(net, here, twin.get(), there, here - there, limit));
      }
    }
    return all;
  }
}
