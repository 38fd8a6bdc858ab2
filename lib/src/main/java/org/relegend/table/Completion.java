package org.relegend.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.circuit.Pinout;
import org.relegend.circuit.Terminal;
import org.relegend.map.Names;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Section;

/**
 * Adds to a part what its kind tells: pins that no table listed, roles and sections. Adds only what
 * is certain: where several pinouts of the kind fit the pins that are known, and no package tells
 * which, or where no pin is known, there is nothing to add. What people said stays.
 */
final class Completion {
  /** All that the answer rests on; a board has hundreds of parts of one shape. */
  private record Shape(
      String kind, String casing, List<Pin> pins, List<Section> sections, boolean grown) {}

  private final Kinds kinds;
  private final Map<Shape, Part> completed = new HashMap<>();

  Completion(Kinds kinds) {
    this.kinds = kinds;
  }

  /**
   * The part completed, and where it has more pins than before, with its pins in the order of their
   * numbers, or else of its kind.
   *
   * @param pinsBefore how many pins it had
   */
  Part complete(Part part, int pinsBefore) {
    boolean grown = part.pins().size() > pinsBefore;
    Shape shape = new Shape(part.kind(), part.casing(), part.pins(), part.sections(), grown);
    Part like = completed.computeIfAbsent(shape, s -> completed(part, grown));
    return part.withPins(like.pins(), like.sections());
  }

  private Part completed(Part part, boolean grown) {
    Part whole =
        kinds
            .of(part)
            .filter(kind -> !part.pins().isEmpty() && !kind.has(Kind.Trait.OPEN))
            .map(kind -> withSections(withPins(part, kind), kind))
            .orElse(part);
    return grown || whole.pins().size() > part.pins().size() ? ordered(whole) : whole;
  }

  private Part ordered(Part part) {
    List<Pin> pins = new ArrayList<>(part.pins());
    if (pins.stream().allMatch(pin -> pin.number().chars().allMatch(Character::isDigit))) {
      pins.sort(Comparator.comparing(Pin::number, Names.NATURAL));
      return part.withPins(pins, part.sections());
    }
    return kinds
        .of(part)
        .flatMap(kind -> kind.pinoutFor(pins, part.casing()))
        .map(pinout -> ordered(part, pins, List.copyOf(pinout.numbers())))
        .orElse(part);
  }

  private static Part ordered(Part part, List<Pin> pins, List<String> order) {
    if (pins.stream().allMatch(pin -> order.contains(pin.number()))) {
      pins.sort(Comparator.comparing(pin -> order.indexOf(pin.number())));
    }
    return part.withPins(pins, part.sections());
  }

  private static Part withPins(Part part, Kind kind) {
    List<Pinout> fitting = fitting(part, kind);
    return fitting.size() == 1 ? withPins(part, fitting.get(0)) : part;
  }

  /** The pinouts that have all pins of the part: that of its package alone, where it fits. */
  private static List<Pinout> fitting(Part part, Kind kind) {
    Set<String> numbers = part.pins().stream().map(Pin::number).collect(Collectors.toSet());
    List<Pinout> fitting =
        kind.pinouts().stream().filter(pinout -> pinout.covers(numbers)).toList();
    return fitting.stream()
        .filter(pinout -> !part.casing().isEmpty())
        .filter(pinout -> pinout.casing().equalsIgnoreCase(part.casing()))
        .findFirst()
        .map(List::of)
        .orElse(fitting);
  }

  private static Part withPins(Part part, Pinout pinout) {
    List<Pin> pins = new ArrayList<>();
    for (Pin pin : part.pins()) {
      pins.add(pin.role().isEmpty() ? usual(pinout, pin.number()) : pin);
    }
    for (String number : pinout.numbers()) {
      if (part.pin(number).isEmpty()) {
        pins.add(usual(pinout, number));
      }
    }
    return part.withPins(pins, part.sections());
  }

  /** The pin with its usual role; a pin of several sections has one word for all, or none. */
  private static Pin usual(Pinout pinout, String number) {
    Set<String> roles = pinout.at(number).stream().map(Terminal::role).collect(Collectors.toSet());
    return new Pin(number, roles.size() == 1 ? roles.iterator().next() : "");
  }

  /** Pins of no section yet join theirs, unless the part's sections go by other names. */
  private static Part withSections(Part part, Kind kind) {
    if (!kind.sectioned()) {
      return part;
    }
    List<Section> usual = sections(part, kind);
    Set<String> names = usual.stream().map(Section::name).collect(Collectors.toSet());
    if (!part.sections().stream().allMatch(section -> names.contains(section.name()))) {
      return part;
    }
    Set<String> placed = new HashSet<>();
    part.sections().forEach(section -> placed.addAll(section.roles().keySet()));
    PartDraft draft = PartDraft.known(part);
    for (Section section : usual) {
      section
          .roles()
          .forEach(
              (pin, role) -> {
                if (!placed.contains(pin)) {
                  draft.putRole(section.name(), pin, role);
                }
              });
    }
    return draft.finished();
  }

  /** The sections, where roles or pin numbers leave no doubt of them. */
  private static List<Section> sections(Part part, Kind kind) {
    Set<List<Section>> possible =
        fitting(part, kind).stream()
            .map(pinout -> kind.with(pinout).sectionsFor(part.pins(), part.casing()))
            .collect(Collectors.toSet());
    return possible.size() == 1 ? possible.iterator().next() : List.of();
  }
}
