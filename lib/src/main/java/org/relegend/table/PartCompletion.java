package org.relegend.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.circuit.Pinout;
import org.relegend.circuit.Terminal;
import org.relegend.circuit.TypeMatch;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Section;

/**
 * Adds to a part what its type and its kind tell: kind and package, pins that no table listed,
 * roles and sections. Adds only what is certain: numbered pins where the stated type, or the stated
 * package, decides for one pinout, and no section of a part that isolates from its pin numbers
 * alone. What people said stays.
 */
public final class PartCompletion {
  /** All that the answer rests on; a board has hundreds of parts of one shape. */
  private record Shape(
      String kind,
      String type,
      String casing,
      List<Pin> pins,
      List<Section> sections,
      boolean grown) {}

  /** A part with at most so many pins is known by the letters of its pins: E, B, C. */
  private static final int LETTERED = 3;

  private final Kinds kinds;
  private final Map<Shape, Part> completed = new HashMap<>();

  public PartCompletion(Kinds kinds) {
    this.kinds = kinds;
  }

  /** The part completed, with its pins in the order they have where it has no new ones. */
  public Part complete(Part part) {
    return complete(part, part.pins().size());
  }

  /**
   * What keeps the pins of a part from being told, and what would help; nothing where they are all
   * known, or nobody numbered any yet.
   */
  public Optional<String> doubt(Part part) {
    TypeMatch match = kinds.match(part);
    boolean open =
        part.pins().isEmpty()
            ? match.type().isPresent()
            : match.kind().filter(k -> isOpen(part, k)).isPresent();
    return Optional.of(match.doubt())
        .filter(doubt -> !doubt.isEmpty() && (open || match.contradiction()));
  }

  private static boolean isOpen(Part part, Kind kind) {
    return kind.terminalsOf(part).stream().anyMatch(terminal -> terminal.role().isEmpty());
  }

  /**
   * The part completed, and where it has more pins than before, with its pins in the order of their
   * numbers, or else of its kind.
   *
   * @param pinsBefore how many pins it had
   */
  Part complete(Part stated, int pinsBefore) {
    Part part = named(stated, kinds.match(stated));
    Optional<Kind> kind = kinds.of(part);
    boolean grown = part.pins().size() > pinsBefore;
    Shape shape =
        new Shape(
            kind.map(Kind::name).orElse(""),
            kind.map(found -> found.numbering() + found.type()).orElse(""),
            part.casing(),
            part.pins(),
            part.sections(),
            grown);
    Part like = completed.computeIfAbsent(shape, s -> completed(part, kind, grown));
    return part.withPins(like.pins(), like.sections());
  }

  /** With the kind and the package that its type has, where nobody stated them. */
  private static Part named(Part part, TypeMatch match) {
    if (match.type().isEmpty() || match.kind().isEmpty()) {
      return part;
    }
    Set<String> casings =
        match.type().get().pinouts().stream().map(Pinout::casing).collect(Collectors.toSet());
    boolean fromKind = match.type().get().written().equalsIgnoreCase(part.kind().strip());
    boolean kindOpen = part.kind().isEmpty() || (fromKind && part.value().isEmpty());
    Part named = part;
    if (fromKind && kindOpen) {
      named = named.withValue(part.kind().toUpperCase(Locale.ROOT));
    }
    if (kindOpen) {
      named = named.withKind(match.kind().get().name());
    }
    boolean casingOpen = named.casing().isEmpty() && casings.size() == 1;
    return casingOpen ? named.withCasing(casings.iterator().next()) : named;
  }

  private Part completed(Part part, Optional<Kind> known, boolean grown) {
    Part whole =
        known
            .filter(kind -> !kind.has(Kind.Trait.OPEN))
            .map(kind -> withSections(withPins(part, kind), kind))
            .orElse(part);
    return grown || whole.pins().size() > part.pins().size() ? ordered(whole) : whole;
  }

  private Part ordered(Part part) {
    List<Pin> pins = new ArrayList<>(part.pins());
    if (pins.stream().allMatch(pin -> pin.number().chars().allMatch(Character::isDigit))) {
      pins.sort(Comparator.comparing(Pin::number, NameRules.NATURAL));
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
    return only(part.pins().isEmpty() ? ofType(kind) : fitting(part, kind))
        .map(pinout -> withPins(part, pinout))
        .orElse(part);
  }

  /** The one pinout, where all number alike. */
  private static Optional<Pinout> only(List<Pinout> pinouts) {
    return pinouts.stream().map(Pinout::terminals).distinct().count() == 1
        ? Optional.of(pinouts.get(0))
        : Optional.empty();
  }

  /** What a part may have of whose pins nobody spoke: nothing, unless its type is known. */
  private static List<Pinout> ofType(Kind kind) {
    if (kind.type().isEmpty()) {
      return List.of();
    }
    List<Pinout> lettered = kind.pinouts().stream().filter(p -> !p.isNumbered()).toList();
    List<Pinout> numbered = kind.pinouts().stream().filter(Pinout::isNumbered).toList();
    boolean few = numbered.stream().allMatch(pinout -> pinout.numbers().size() <= LETTERED);
    return few && !lettered.isEmpty() ? lettered.subList(0, 1) : numbered;
  }

  /** The pinouts that may be the part's: that of its package alone, where it has one. */
  private static List<Pinout> fitting(Part part, Kind kind) {
    List<Pinout> fitting = kind.fitting(part.pins(), part.casing());
    List<Pinout> ofPackage = fitting.stream().filter(p -> !p.casing().isEmpty()).toList();
    return part.casing().isEmpty() || ofPackage.isEmpty() ? fitting : ofPackage;
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
    if (!kind.sectioned() || part.pins().isEmpty()) {
      return part;
    }
    List<Section> usual = kind.sectionsFor(part.pins(), part.casing());
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
}
