package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Section;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.PartClass;
import org.relegend.marking.ValueReading;

/**
 * What is known of a kind of part: what its value tells, its elements and their pins, and how
 * current can flow through it.
 *
 * @param name the word maps use: "dual-opamp"
 * @param aliases other words for it
 * @param family what it is in the widest sense: "resistor", "capacitor", "opamp"
 * @param letters class letters its designators may have; several kinds share letters
 * @param passage how an extended node may pass it, if it may
 * @param polarity which side is the positive one; empty for parts that don't care
 * @param restPosition the position its contacts are taken to be in while nobody said; empty where
 *     only a person can tell
 * @param pinouts the usual one first; empty for kinds of open pinout
 * @param barrier sections or roles that are isolated from each other: a transformer's windings
 * @param roleWords each word for a role that the kind has, in lower case, to that role
 * @param sectionWords each word for a section, in lower case, to that section
 * @param numbering where its numbered pinouts may be taken for a part's
 * @param type the type of part that its pinouts are of, as it was written; empty for a kind at
 *     large
 */
public record Kind(
    String name,
    List<String> aliases,
    String family,
    List<String> letters,
    ValueQuantity quantity,
    Optional<Passage> passage,
    Optional<Polarity> polarity,
    Set<Trait> traits,
    String restPosition,
    List<Pinout> pinouts,
    List<RolePath> paths,
    List<String> barrier,
    Map<String, String> roleWords,
    Map<String, String> sectionWords,
    Numbering numbering,
    String type) {
  /** Where a pinout that gives pins by number may be taken for a part's. */
  public enum Numbering {
    /** Never: types differ, or a wrong guess would put a barrier where there is none. */
    NONE,
    /** Where the part's stated package is the pinout's, or the pinout holds for any package. */
    BY_PACKAGE,
    /** Unless the part's stated package is another: the kind itself is one type of part. */
    BY_TYPE
  }

  /** What the value of a part tells, in SI units. */
  public enum ValueQuantity {
    OHM,
    FARAD,
    HENRY,
    VOLT,
    AMPERE,
    HERTZ,
    /** No number: a type, or nothing. */
    NONE;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What matters of a kind beyond its pins. */
  public enum Trait {
    /** Brings the mains in. */
    INLET,
    /** Meant to sit on the mains. */
    MAINS,
    /** Pins and roles are up to each part. */
    OPEN,
    /** Types of the kind are numbered differently, also in one package. */
    VARIED,
    /** Usually works at high voltage: its electrodes but heaters and grids may carry it. */
    HIGH_VOLTAGE;

    String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** In ordinary use the first role is the more positive. */
  public record Polarity(String positive, String negative) {}

  public Kind {
    aliases = List.copyOf(aliases);
    letters = List.copyOf(letters);
    traits = Set.copyOf(traits);
    pinouts = List.copyOf(pinouts);
    paths = List.copyOf(paths);
    barrier = List.copyOf(barrier);
    roleWords = Map.copyOf(roleWords);
    sectionWords = Map.copyOf(sectionWords);
  }

  public boolean has(Trait trait) {
    return traits.contains(trait);
  }

  /** What the value of a part of this kind is read as; nothing where it tells no number. */
  public Optional<org.relegend.marking.Quantity> measured() {
    return switch (quantity) {
      case OHM -> Optional.of(org.relegend.marking.Quantity.RESISTANCE);
      case FARAD -> Optional.of(org.relegend.marking.Quantity.CAPACITANCE);
      case HENRY -> Optional.of(org.relegend.marking.Quantity.INDUCTANCE);
      case VOLT -> Optional.of(org.relegend.marking.Quantity.VOLTAGE);
      case AMPERE -> Optional.of(org.relegend.marking.Quantity.CURRENT);
      case HERTZ -> Optional.of(org.relegend.marking.Quantity.FREQUENCY);
      case NONE -> Optional.empty();
    };
  }

  /** What decides how a marking on a part of this kind is read, where its sort matters for that. */
  public Optional<PartClass> partClass() {
    return switch (name) {
      case "pot", "dual-pot", "pot-switched" -> Optional.of(PartClass.POTENTIOMETER);
      case "zener" -> Optional.of(PartClass.DIODE);
      case "regulator", "regulator-neg" -> Optional.of(PartClass.REGULATOR);
      case "thermistor-ntc", "thermistor-ptc" -> Optional.of(PartClass.THERMISTOR);
      case "varistor" -> Optional.of(PartClass.VARISTOR);
      case "fuse" -> Optional.of(PartClass.FUSE);
      case "crystal" -> Optional.of(PartClass.CRYSTAL);
      default -> ofFamily();
    };
  }

  private Optional<PartClass> ofFamily() {
    return switch (quantity) {
      case OHM -> family.equals("resistor") ? Optional.of(PartClass.RESISTOR) : Optional.empty();
      case FARAD -> Optional.of(PartClass.CAPACITOR);
      case HENRY -> Optional.of(PartClass.INDUCTOR);
      default -> Optional.empty();
    };
  }

  /** A value text, read as that of a part of this kind; empty where the kind's tells no number. */
  public Optional<MarkingReadings<ValueReading>> read(String value) {
    return measured()
        .map(
            result ->
                partClass()
                    .map(part -> ComponentValues.read(value, part))
                    .orElseGet(() -> ComponentValues.read(value, result)));
  }

  /** Whether it matters which way round it is. */
  public boolean polarised() {
    return polarity.isPresent();
  }

  /** Whether it consists of several elements. */
  public boolean sectioned() {
    return !sectionWords.isEmpty();
  }

  /**
   * The pinout that fits these pins best: that of the package, else the first that has them all.
   */
  public Optional<Pinout> pinoutFor(List<Pin> pins, String casing) {
    List<String> numbers = pins.stream().map(Pin::number).toList();
    List<Pinout> fitting = pinouts.stream().filter(pinout -> pinout.covers(numbers)).toList();
    return fitting.stream()
        .filter(pinout -> !casing.isEmpty() && Outlines.same(pinout.casing(), casing))
        .findFirst()
        .or(() -> fitting.stream().findFirst());
  }

  /**
   * The pinouts that may be taken for those of a part with these pins: numbered ones only where the
   * part's type or stated package decides for them, those by the roles' own letters always; and
   * none that contradicts a role which is told.
   *
   * @param casing the stated package; empty where nobody told it
   */
  public List<Pinout> fitting(List<Pin> pins, String casing) {
    List<String> numbers = pins.stream().map(Pin::number).toList();
    return pinouts.stream()
        .filter(pinout -> pinout.covers(numbers))
        .filter(pinout -> !pinout.isNumbered() || isDecided(pinout, numbers, casing))
        .filter(pinout -> pins.stream().allMatch(pin -> agrees(pinout, pin)))
        .toList();
  }

  private boolean agrees(Pinout usual, Pin pin) {
    List<Terminal> read = RoleReader.read(this, pin);
    return read.isEmpty()
        || usual.at(pin.number()).stream()
            .anyMatch(u -> read.stream().anyMatch(t -> t.role().equals(u.role())));
  }

  private boolean isDecided(Pinout pinout, List<String> numbers, String casing) {
    boolean any = pinout.casing().isEmpty();
    return switch (numbering) {
      case NONE -> false;
      case BY_PACKAGE ->
          any ? barrier.isEmpty() || isMarked(numbers) : Outlines.same(pinout.casing(), casing);
      case BY_TYPE -> any || casing.isEmpty() || Outlines.same(pinout.casing(), casing);
    };
  }

  /**
   * Whether some pin goes by a mark and not by a count, as the A1 and A2 of a relay's coil: marks
   * are a standard's (EN 50005), counts are each maker's own.
   */
  private static boolean isMarked(List<String> numbers) {
    return numbers.stream().anyMatch(number -> !number.matches("\\d+"));
  }

  /** The kind with its numbered pinouts taken for a part's by this rule. */
  Kind with(Numbering rule) {
    return with(pinouts, traits, roleWords, sectionWords, rule, type);
  }

  /**
   * The kind as a part of one type has it: with the type's pinouts, those by letters of its own and
   * its words besides.
   */
  Kind typed(String written, List<Pinout> ofType) {
    Map<String, String> sections = new HashMap<>(sectionWords);
    Set<String> roles = new HashSet<>();
    for (Pinout pinout : ofType) {
      for (Terminal terminal : pinout.terminals()) {
        roles.add(terminal.role());
        if (!terminal.section().isEmpty()) {
          sections.putIfAbsent(terminal.section().toLowerCase(Locale.ROOT), terminal.section());
        }
      }
    }
    Map<String, String> words = new HashMap<>(RoleWords.of(roles));
    words.putAll(roleWords);
    List<Pinout> all = new ArrayList<>(ofType);
    all.removeIf(pinout -> pinout.terminals().isEmpty());
    pinouts.stream().filter(pinout -> !pinout.isNumbered()).forEach(all::add);
    Set<Trait> closed = new HashSet<>(traits);
    if (!all.isEmpty()) {
      closed.remove(Trait.OPEN);
    }
    return with(all, closed, words, sections, Numbering.BY_TYPE, written);
  }

  private Kind with(
      List<Pinout> changed,
      Set<Trait> changedTraits,
      Map<String, String> roles,
      Map<String, String> sections,
      Numbering rule,
      String ofType) {
    return new Kind(
        name,
        aliases,
        family,
        letters,
        quantity,
        passage,
        polarity,
        changedTraits,
        restPosition,
        changed,
        paths,
        barrier,
        roles,
        sections,
        rule,
        ofType);
  }

  /** As {@link #sectionsFor(List, String)} where the package isn't known. */
  public List<Section> sectionsFor(List<Pin> pins) {
    return sectionsFor(pins, "");
  }

  /**
   * The sections of a part with these pins: from their roles ("out X", "Ta+Tb emitters", "sec a"),
   * and where those say nothing from their numbers, if one pinout is beyond doubt.
   *
   * @return in order of their first pins; empty where the kind has just one element, or nothing
   *     tells
   */
  public List<Section> sectionsFor(List<Pin> pins, String casing) {
    Map<String, Map<String, String>> roles = new LinkedHashMap<>();
    for (Terminal terminal : terminalsFor(pins, casing)) {
      if (!terminal.section().isEmpty()) {
        roles
            .computeIfAbsent(terminal.section(), name -> new LinkedHashMap<>())
            .put(terminal.number(), terminal.role());
      }
    }
    return roles.entrySet().stream()
        .map(section -> new Section(section.getKey(), section.getValue()))
        .toList();
  }

  /**
   * What each pin is, in the words of the kind: a pin of two sections stands twice, one that
   * neither its role nor its number tells of stands with its own words.
   */
  public List<Terminal> terminalsFor(List<Pin> pins, String casing) {
    return new RoleReader(this, pins, casing).terminals();
  }

  /** As {@link #terminalsFor(List, String)}; sections that the map gives the part go before. */
  public List<Terminal> terminalsOf(Part part) {
    if (part.sections().isEmpty()) {
      return terminalsFor(part.pins(), part.casing());
    }
    Map<String, Set<String>> stated = new HashMap<>();
    List<Terminal> result = new ArrayList<>();
    for (Section section : part.sections()) {
      section
          .roles()
          .forEach(
              (number, words) -> {
                String role = role(words).orElse(words);
                stated.computeIfAbsent(number, pin -> new HashSet<>()).add(role);
                result.add(new Terminal(number, section.name(), role));
              });
    }
    for (Terminal terminal : terminalsFor(part.pins(), part.casing())) {
      Set<String> roles = stated.get(terminal.number());
      boolean besides =
          roles != null
              && terminal.section().isEmpty()
              && role(terminal.role()).isPresent()
              && !roles.contains(terminal.role());
      if (roles == null || besides) {
        result.add(terminal.in(""));
      }
    }
    return List.copyOf(result);
  }

  /** The kind's own word for a role, where it has such a role. */
  public Optional<String> role(String words) {
    return Optional.ofNullable(roleWords.get(words.strip().toLowerCase(Locale.ROOT)));
  }

  /** Pins whose role is given in words that this kind can't make sense of. */
  public List<Pin> unknownRoles(List<Pin> pins) {
    return has(Trait.OPEN)
        ? List.of()
        : pins.stream()
            .filter(pin -> !pin.role().isEmpty() && RoleReader.read(this, pin).isEmpty())
            .toList();
  }

  /**
   * The roles that a whole section of this kind has, by its first pinout, but this one hasn't: a
   * role that occurs twice (the ends of a winding) must occur twice.
   */
  public List<String> missingRoles(Section section) {
    List<Terminal> usual =
        pinouts.isEmpty()
            ? List.of()
            : pinouts.get(0).terminals().stream().filter(t -> !t.section().isEmpty()).toList();
    if (usual.isEmpty()) {
      return List.of();
    }
    String like = RoleReader.template(this, section.name()).orElse(usual.get(0).section());
    List<String> missing = new ArrayList<>();
    for (Terminal terminal : usual) {
      if (terminal.section().equals(like)) {
        missing.add(terminal.role());
      }
    }
    section.roles().values().forEach(role -> missing.remove(role(role).orElse(role)));
    return missing;
  }

  /** Each way for current through this part, between two of its pins. */
  public List<PinPath> pathsOf(Part part) {
    return PathFinder.paths(this, terminalsOf(part));
  }

  /**
   * Whether the part keeps these two of its pins apart by its make, as a transformer its primary
   * from its secondary. False where a pin's side isn't known.
   */
  public boolean isolates(Part part, String pin, String other) {
    return PathFinder.isolates(this, terminalsOf(part), pin, other);
  }

  /** Whether the map tells on which side of what the part isolates this pin is. */
  public boolean tellsSide(Part part, String pin) {
    return PathFinder.hasSide(this, terminalsOf(part), pin);
  }

  /** Whether words tell to which element this pin belongs: its role's, or the map's sections. */
  public boolean tellsSection(Part part, Pin pin) {
    return !part.sectionsOf(pin.number()).isEmpty()
        || RoleReader.read(this, pin).stream().anyMatch(result -> !result.section().isEmpty());
  }
}
