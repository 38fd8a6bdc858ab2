package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Section;
import org.relegend.map.Subject;

/** All that a map and the kinds tell of single pins, looked up in constant time. */
final class PinFacts {
  /** What tells the same of all parts that have it in common, so that it is worked out once. */
  private record PartMake(
      String kind, String type, String casing, List<Pin> pins, List<Section> sections) {}

  /** The terminals of one make of part. */
  private record Terminals(
      Optional<Kind> kind,
      Map<String, String> roles,
      List<Terminal> terminals,
      Map<String, List<Terminal>> byNumber) {}

  /** A part with what its make tells, and whether it is a resistor that stands in for a wire. */
  private record PartFacts(Part part, Terminals reading, boolean zeroOhm) {}

  private static final Terminals NOTHING =
      new Terminals(Optional.empty(), Map.of(), List.of(), Map.of());

  private final MapIndex index;
  private final Map<PartId, PartFacts> parts = new HashMap<>();
  private final Map<PinRef, DrawingDiscrepancy> drawnElsewhere = new HashMap<>();
  private final Map<String, List<PinRef>> drawnAt = new LinkedHashMap<>();

  PinFacts(MapIndex index, Kinds kinds) {
    this.index = index;
    Map<PartMake, Terminals> byMake = new HashMap<>();
    Map<String, Boolean> zeroOhm = new HashMap<>();
    for (Part part : index.map().parts()) {
      Optional<Kind> kind = kinds.of(part);
      PartMake make =
          new PartMake(
              kind.map(Kind::name).orElse(part.kind()),
              kind.map(found -> found.numbering() + found.type()).orElse(""),
              part.casing(),
              part.pins(),
              part.sections());
      Terminals reading = byMake.computeIfAbsent(make, key -> read(part, kind));
      boolean zero = isResistor(reading) && zeroOhm.computeIfAbsent(part.value(), ZeroOhmLinks::is);
      parts.put(part.id(), new PartFacts(part, reading, zero));
    }
    for (DrawingDiscrepancy discrepancy : index.map().discrepancies()) {
      if (discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET
          && discrepancy.subject() instanceof Subject.OfPin subject) {
        drawnElsewhere.put(subject.pin(), discrepancy);
        drawnAt.computeIfAbsent(discrepancy.drawn(), net -> new ArrayList<>()).add(subject.pin());
      }
    }
  }

  private static Terminals read(Part part, Optional<Kind> kind) {
    Map<String, String> roles = new LinkedHashMap<>();
    part.pins().forEach(pin -> roles.put(pin.number(), pin.role()));
    List<Terminal> lines = kind.map(found -> found.terminalsOf(part)).orElse(statedTerminals(part));
    // a section may by mistake name pins that the part hasn't got
    List<Terminal> terminals = lines.stream().filter(t -> roles.containsKey(t.number())).toList();
    Map<String, List<Terminal>> byNumber = new HashMap<>();
    for (Terminal terminal : terminals) {
      byNumber.computeIfAbsent(terminal.number(), number -> new ArrayList<>(1)).add(terminal);
    }
    return new Terminals(kind, roles, terminals, byNumber);
  }

  private static boolean isResistor(Terminals reading) {
    return reading
        .kind()
        .filter(kind -> kind.quantity() == Kind.ValueQuantity.OHM && !kind.sectioned())
        .isPresent();
  }

  /** What the map alone says of a part of unknown kind. */
  private static List<Terminal> statedTerminals(Part part) {
    List<Terminal> terminals = new ArrayList<>();
    for (Pin pin : part.pins()) {
      List<Section> sections = part.sectionsOf(pin.number());
      for (Section section : sections) {
        String role = section.roles().getOrDefault(pin.number(), pin.role());
        terminals.add(new Terminal(pin.number(), section.name(), role));
      }
      if (sections.isEmpty()) {
        terminals.add(new Terminal(pin.number(), "", pin.role()));
      }
    }
    return terminals;
  }

  BoardMap map() {
    return index.map();
  }

  MapIndex index() {
    return index;
  }

  Optional<Part> part(PartId part) {
    return Optional.ofNullable(parts.get(part)).map(PartFacts::part);
  }

  private Terminals reading(PartId part) {
    PartFacts known = parts.get(part);
    return known == null ? NOTHING : known.reading();
  }

  Optional<Kind> kindOf(PartId part) {
    return reading(part).kind();
  }

  List<Terminal> terminalsOf(PartId part) {
    return reading(part).terminals();
  }

  /** Whether the part is a resistor of no ohms. */
  boolean isZeroOhm(PartId part) {
    PartFacts known = parts.get(part);
    return known != null && known.zeroOhm();
  }

  boolean has(PinRef pin) {
    return reading(pin.part()).roles().containsKey(pin.pin());
  }

  /** The ways for current at this pin, through its part. */
  List<PinPath> pathsAt(PinRef pin) {
    Terminals reading = reading(pin.part());
    return reading
        .kind()
        .map(kind -> PathFinder.pathsAt(kind, reading.terminals(), pin.pin()))
        .orElseGet(() -> PathFinder.unknownAt(List.copyOf(reading.roles().keySet()), pin.pin()));
  }

  /** Pins that the drawing has at the net of this id, or of this name where only it has it. */
  List<PinRef> drawnAt(String net) {
    return drawnAt.getOrDefault(net, List.of());
  }

  /** All nets that the drawing has pins on where the board differs. */
  List<String> drawnNets() {
    return drawnAt.keySet().stream().filter(net -> !net.isEmpty()).toList();
  }

  /** The pin as it stands on its first net, or loose. */
  JoinedPin pin(PinRef pin) {
    List<Net> nets = index.netsOf(pin);
    List<Attestation> evidence =
        nets.isEmpty()
            ? List.of()
            : nets.get(0).member(pin).map(Net.Member::evidence).orElse(List.of());
    return pin(pin, evidence);
  }

  /** The pin as a member of a net that it is on by this evidence. */
  JoinedPin pin(PinRef pin, List<Attestation> attestations) {
    PartFacts known = parts.get(pin.part());
    Optional<Part> part = known == null ? Optional.empty() : Optional.of(known.part());
    Terminals reading = known == null ? NOTHING : known.reading();
    List<Terminal> terminals = reading.byNumber().getOrDefault(pin.pin(), List.of());
    String text = reading.roles().getOrDefault(pin.pin(), "");
    Optional<Evidence> evidence = Attestation.best(attestations);
    List<NetId> nets = index.netsOf(pin).stream().map(Net::id).toList();
    return new JoinedPin(
        pin,
        part,
        terminals,
        text.isEmpty() && !terminals.isEmpty() ? terminals.get(0).role() : text,
        nets,
        placements(pin, terminals),
        twins(pin, terminals),
        evidence,
        evidence,
        List.of(),
        Optional.ofNullable(drawnElsewhere.get(pin)));
  }

  private List<Placement> placements(PinRef pin, List<Terminal> terminals) {
    if (index.map().placements().isEmpty()) {
      return List.of();
    }
    List<Placement> found = new ArrayList<>();
    subjects(pin, terminals).forEach(subject -> found.addAll(index.placementsOf(subject)));
    return found;
  }

  private List<Subject> twins(PinRef pin, List<Terminal> terminals) {
    if (index.map().twins().isEmpty()) {
      return List.of();
    }
    List<Subject> found = new ArrayList<>();
    subjects(pin, terminals).forEach(subject -> found.addAll(index.twinsOf(subject)));
    return found;
  }

  /** The pin, its sections, its part. */
  private static List<Subject> subjects(PinRef pin, List<Terminal> terminals) {
    List<Subject> subjects = new ArrayList<>();
    subjects.add(Subject.of(pin));
    for (Terminal terminal : terminals) {
      if (!terminal.section().isEmpty()) {
        subjects.add(new Subject.OfSection(pin.part(), terminal.section()));
      }
    }
    subjects.add(Subject.of(pin.part()));
    return subjects;
  }
}
