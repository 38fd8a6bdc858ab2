package org.relegend.circuit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Turns the ways between roles that a kind has into ways between the pins of one part. */
final class PathFinder {
  private PathFinder() {}

  /** All ways, each once; grows with the square of the pins where any pin leads to any. */
  static List<PinPath> paths(Kind kind, List<Terminal> terminals) {
    Set<PinPath> found = new LinkedHashSet<>();
    for (String pin : numbers(terminals)) {
      for (PinPath path : pathsAt(kind, terminals, pin)) {
        if (!found.contains(path.turned())) {
          found.add(path);
        }
      }
    }
    return new ArrayList<>(found);
  }

  /** The ways that begin or end at this pin. */
  static List<PinPath> pathsAt(Kind kind, List<Terminal> terminals, String pin) {
    Set<PinPath> found = new LinkedHashSet<>();
    for (RolePath path : kind.paths()) {
      for (Terminal mine : terminals) {
        if (!mine.number().equals(pin)) {
          continue;
        }
        for (Terminal other : terminals) {
          if (joins(path, mine, other)) {
            found.add(
                new PinPath(mine.number(), other.number(), path.conduction(), path.position()));
          } else if (joins(path, other, mine)) {
            found.add(
                new PinPath(other.number(), mine.number(), path.conduction(), path.position()));
          }
        }
      }
    }
    if (!kind.paths().isEmpty()) {
      addUnknown(kind, terminals, pin, found);
    }
    return new ArrayList<>(found);
  }

  /** A pin of which the kind knows nothing may lead to any other. */
  private static void addUnknown(
      Kind kind, List<Terminal> terminals, String pin, Set<PinPath> found) {
    boolean known = terminals.stream().anyMatch(t -> t.number().equals(pin) && isKnown(kind, t));
    for (Terminal other : terminals) {
      if (!other.number().equals(pin) && !(known && isKnown(kind, other))) {
        found.add(unknown(pin, other.number()));
      }
    }
  }

  /** A kind of open pinout knows any role only if it has a way for any role. */
  private static boolean isKnown(Kind kind, Terminal terminal) {
    return kind.role(terminal.role()).isPresent()
        || kind.has(Kind.Trait.OPEN) && kind.paths().stream().anyMatch(RolePath::isOfAll);
  }

  /** The ways at a pin of a part of unknown kind: to any other pin. */
  static List<PinPath> unknownAt(List<String> numbers, String pin) {
    return numbers.stream()
        .filter(number -> !number.equals(pin))
        .map(number -> unknown(pin, number))
        .toList();
  }

  private static PinPath unknown(String from, String to) {
    return new PinPath(from, to, Conduction.UNKNOWN, "");
  }

  private static Set<String> numbers(List<Terminal> terminals) {
    Set<String> numbers = new LinkedHashSet<>();
    terminals.forEach(terminal -> numbers.add(terminal.number()));
    return numbers;
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

  /** Whether the pin's side of the barrier is known. */
  static boolean hasSide(Kind kind, List<Terminal> terminals, String pin) {
    return !groups(kind, terminals, pin).isEmpty();
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

  /**
   * The side a terminal is on: primary, secondary, a screen. Windings of one side count as one,
   * since two halves of a primary are both on the mains.
   */
  private static Optional<String> group(Kind kind, Terminal terminal) {
    String section = terminal.section();
    String side =
        section.isEmpty() ? terminal.role() : RoleReader.template(kind, section).orElse(section);
    return Optional.of(side).filter(kind.barrier()::contains);
  }
}
