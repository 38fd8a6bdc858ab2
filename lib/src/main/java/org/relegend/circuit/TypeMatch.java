package org.relegend.circuit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.map.NameRules;
import org.relegend.map.Part;

/**
 * What the kind, the type and the package that are stated of a part come to together. The type
 * decides the pinout where the package fits; where the three contradict each other, or several
 * pinouts are left, that is said, and nobody may number its pins.
 *
 * @param kind the part's kind, of a known type with that type's pinouts
 * @param type the type that the part's value or kind names, where it is taken to be of it
 * @param doubt why its pins can't be told by number, and what would help; empty where nothing is in
 *     the way
 * @param contradiction whether the doubt is that what is stated can't all be true
 */
public record TypeMatch(
    Optional<Kind> kind, Optional<PartType> type, String doubt, boolean contradiction) {
  private static final TypeMatch NONE = open(Optional.empty(), Optional.empty(), "");

  private static TypeMatch open(Optional<Kind> kind, Optional<PartType> type, String doubt) {
    return new TypeMatch(kind, type, doubt, false);
  }

  static TypeMatch of(Part part, Kinds kinds) {
    Optional<Kind> stated = kinds.find(part.kind());
    if (stated.filter(kinds::isOwn).isPresent()) {
      return open(stated, Optional.empty(), "");
    }
    Optional<PartType> type = named(part, stated);
    Optional<Kind> ofType = type.flatMap(found -> kinds.find(found.kind()));
    if (type.isEmpty() || ofType.isEmpty() || kinds.isOwn(ofType.get())) {
      return stated.map(kind -> untyped(part, kind)).orElse(NONE);
    }
    return stated.isPresent()
        ? stated(part, stated.get(), type.get(), ofType.get())
        : unstated(part, type.get(), ofType.get());
  }

  /** A type stands in the value, or where people write the kind. */
  private static Optional<PartType> named(Part part, Optional<Kind> stated) {
    PartTypes types = PartTypes.standard();
    boolean other = stated.isEmpty() && !part.kind().isEmpty();
    return other ? types.find(part.kind()) : types.find(part.value());
  }

  /** Of one whose kind nobody told: "555" is a timer at U7 but ohms at R7. */
  private static TypeMatch unstated(Part part, PartType type, Kind ofType) {
    boolean fits =
        !part.kind().isEmpty()
            || ClassLetters.of(part.designator()).filter(ofType.letters()::contains).isPresent();
    return fits ? typed(part, type, ofType) : NONE;
  }

  private static TypeMatch stated(Part part, Kind stated, PartType type, Kind ofType) {
    if (isWiderThan(stated, ofType)) {
      return typed(part, type, ofType);
    }
    if (stated.quantity() != Kind.ValueQuantity.NONE && !stated.family().equals(ofType.family())) {
      return untyped(part, stated);
    }
    return new TypeMatch(
        Optional.of(stated.with(Kind.Numbering.NONE)),
        Optional.empty(),
        "%s is stated as %s, but %s is %s: correct one of them"
            .formatted(part.designator(), stated.name(), type.written(), ofType.name()),
        true);
  }

  /** Whether all of the second kind are of the first: a dual op-amp is an op-amp, all are ICs. */
  private static boolean isWiderThan(Kind wide, Kind narrow) {
    boolean any = wide.has(Kind.Trait.OPEN) && wide.family().matches("ic|module");
    boolean word =
        wide.family().equals(narrow.family())
            && (narrow.name().endsWith("-" + wide.name())
                || narrow.name().startsWith(wide.name() + "-"));
    return wide.equals(narrow) || any || word;
  }

  private static TypeMatch typed(Part part, PartType type, Kind ofType) {
    List<Pinout> left = type.pinouts().stream().filter(p -> isLeft(p, part.casing())).toList();
    if (left.isEmpty()) {
      return new TypeMatch(
          Optional.of(ofType.with(Kind.Numbering.NONE)),
          Optional.of(type),
          "%s: %s is known in %s, not in %s: correct the type or the package, or give the roles"
              .formatted(
                  part.designator(),
                  NameRules.printable(type.written()),
                  packages(type.pinouts(), " and "),
                  NameRules.printable(part.casing())),
          true);
    }
    Kind kind = ofType.typed(type.written(), left);
    return open(Optional.of(kind), Optional.of(type), severalWays(part, type, left));
  }

  private static boolean isLeft(Pinout pinout, String casing) {
    return casing.isEmpty() || pinout.casing().isEmpty() || Outlines.same(pinout.casing(), casing);
  }

  private static String severalWays(Part part, PartType type, List<Pinout> left) {
    if (left.stream().map(Pinout::terminals).distinct().count() == 1) {
      return "";
    }
    boolean onePackage = left.stream().map(Pinout::casing).distinct().count() == 1;
    String orders = left.stream().map(TypeMatch::order).collect(Collectors.joining("; or "));
    return onePackage
        ? "%s: %s in %s is numbered differently by its makers (%s): give the pins' roles"
            .formatted(part.designator(), type.written(), left.get(0).casing(), orders)
        : "%s: is %s in %s? They number differently: state the package"
            .formatted(part.designator(), type.written(), packages(left, " or "));
  }

  /** The pins as people write them. */
  private static String order(Pinout pinout) {
    return pinout.terminals().stream()
        .map(terminal -> terminal.number() + " " + terminal.role())
        .collect(Collectors.joining(", "));
  }

  private static String packages(List<Pinout> pinouts, String between) {
    return pinouts.stream().map(Pinout::casing).distinct().collect(Collectors.joining(between));
  }

  private static TypeMatch untyped(Part part, Kind kind) {
    List<Pinout> ofPackages = kind.pinouts().stream().filter(p -> !p.casing().isEmpty()).toList();
    if (ofPackages.isEmpty() || kind.numbering() == Kind.Numbering.BY_TYPE) {
      return open(Optional.of(kind), Optional.empty(), "");
    }
    boolean unknown = PartTypes.standard().namesType(part.value());
    Kind numbered = unknown ? kind.with(Kind.Numbering.NONE) : kind;
    return open(Optional.of(numbered), Optional.empty(), unnumbered(part, numbered, ofPackages));
  }

  /** Why no pinout of the kind at large may be taken for the part's. */
  private static String unnumbered(Part part, Kind kind, List<Pinout> ofPackages) {
    String known = packages(ofPackages, " or ");
    if (PartTypes.standard().namesType(part.value())) {
      return "%s: no pinout of the type %s is known: give the pins' roles"
          .formatted(part.designator(), NameRules.printable(part.value()));
    }
    if (kind.numbering() == Kind.Numbering.NONE) {
      return "%s: which type of %s is it? They number differently"
          .formatted(part.designator(), kind.name());
    }
    if (part.casing().isEmpty()) {
      return "%s: is it in %s, or of which type? They number differently"
          .formatted(part.designator(), known);
    }
    return ofPackages.stream().anyMatch(p -> Outlines.same(p.casing(), part.casing()))
        ? ""
        : "%s: the pins of a %s are known in %s, not in %s: give the type, or the pins' roles"
            .formatted(part.designator(), kind.name(), known, NameRules.printable(part.casing()));
  }
}
