package org.relegend.circuit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Turns the ways between roles that a kind has into ways between the pins of one part. */
final class PathFinder {
  private PathFinder() {}

  static List<PinPath> paths(Kind kind, List<Terminal> terminals) {
    Set<PinPath> found = new LinkedHashSet<>();
    for (RolePath path : kind.paths()) {
      for (Terminal from : terminals) {
        for (Terminal to : terminals) {
          if (joins(path, from, to) && !found.contains(turned(path, from, to))) {
            found.add(new PinPath(from.number(), to.number(), path.conduction(), path.position()));
          }
        }
      }
    }
    return new ArrayList<>(found);
  }

  private static PinPath turned(RolePath path, Terminal from, Terminal to) {
    boolean oneWay = path.conduction() == Conduction.JUNCTION && !path.from().equals(path.to());
    return oneWay
        ? new PinPath("", "", path.conduction(), "")
        : new PinPath(to.number(), from.number(), path.conduction(), path.position());
  }

  private static boolean joins(RolePath path, Terminal from, Terminal to) {
    boolean near =
        path.conduction() == Conduction.INTERNAL
            || from.section().equals(to.section())
            || from.section().isEmpty()
            || to.section().isEmpty();
    return near && !from.number().equals(to.number()) && path.joins(from.role(), to.role());
  }

  static boolean isolates(Kind kind, List<Terminal> terminals, String pin, String other) {
    Set<String> mine = groups(kind, terminals, pin);
    Set<String> others = groups(kind, terminals, other);
    return !mine.isEmpty() && !others.isEmpty() && mine.stream().noneMatch(others::contains);
  }

  private static Set<String> groups(Kind kind, List<Terminal> terminals, String pin) {
    Set<String> groups = new LinkedHashSet<>();
    for (Terminal terminal : terminals) {
      if (terminal.number().equals(pin)) {
        group(kind, terminal).ifPresent(groups::add);
      }
    }
    return groups;
  }

  /** The winding or side a terminal belongs to: its section as the part calls it, else its role. */
  private static Optional<String> group(Kind kind, Terminal terminal) {
    String section = terminal.section();
    if (!section.isEmpty()) {
      String template = RoleReader.template(kind, section).orElse(section);
      return kind.barrier().contains(template) ? Optional.of(section) : Optional.empty();
    }
    return kind.barrier().contains(terminal.role())
        ? Optional.of(terminal.role())
        : Optional.empty();
  }
}
