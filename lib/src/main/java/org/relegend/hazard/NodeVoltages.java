package org.relegend.hazard;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.Net;
import org.relegend.map.Potential;

/** What voltages stand between nodes, as far as nets tell. */
record NodeVoltages(Circuit circuit, MainsReach mains) {
  /**
   * The voltage of one node against the reference.
   *
   * @param dc direct part
   * @param peak peak of the alternating part
   * @param fromMains whether that is mains
   */
  record Level(double dc, double peak, boolean fromMains) {}

  /** Of nodes that are one by wire, the highest told of any; empty where nothing is known. */
  Optional<Level> of(Collection<Node> nodes) {
    Optional<Level> declared =
        nodes.stream()
            .map(this::declared)
            .flatMap(Optional::stream)
            .max(Comparator.comparingDouble(level -> Math.abs(level.dc()) + level.peak()));
    boolean live = nodes.stream().anyMatch(mains::has);
    return declared.isEmpty() && live ? Optional.of(mains(0)) : declared;
  }

  private Optional<Level> declared(Node node) {
    if (!(node instanceof Node.OfNet net)) {
      return Optional.empty();
    }
    Potential potential =
        circuit.map().net(net.net()).map(Net::potential).orElse(Potential.UNKNOWN);
    double volts = potential.volts();
    return switch (potential.nature()) {
      case MAINS -> Optional.of(mains(volts));
      case EARTH, REFERENCE -> Optional.of(new Level(0, 0, false));
      case DC -> volts == 0 ? Optional.empty() : Optional.of(new Level(volts, 0, false));
      case AC -> volts == 0 ? Optional.empty() : Optional.of(new Level(0, peak(volts), false));
      case UNKNOWN -> Optional.empty();
    };
  }

  /** Whether nothing alternates there, so that what is told is the most. */
  boolean isPlain(Level level) {
    return level.peak() == 0;
  }

  private static Level mains(double volts) {
    return new Level(0, peak(volts == 0 ? MainsFinder.VOLTS : volts), true);
  }

  private static double peak(double rms) {
    return Math.abs(rms) * Math.sqrt(2);
  }

  /** The most that can stand between two: peaks may meet, but both mains lines are one source. */
  static double between(Level a, Level b) {
    double peaks =
        a.fromMains() && b.fromMains() ? Math.max(a.peak(), b.peak()) : a.peak() + b.peak();
    return Math.abs(a.dc() - b.dc()) + peaks;
  }
}
