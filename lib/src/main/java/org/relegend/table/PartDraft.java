package org.relegend.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardId;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Section;

/** A part while tables are read into it. */
final class PartDraft {
  private final @Nullable Part before;
  private Part part;
  private final Map<String, Pin> pins = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> sections = new LinkedHashMap<>();
  private boolean stated;

  private PartDraft(@Nullable Part before, Part part) {
    this.before = before;
    this.part = part;
    part.pins().forEach(pin -> pins.put(pin.number(), pin));
    for (Section section : part.sections()) {
      sections.put(section.name(), new LinkedHashMap<>(section.roles()));
    }
  }

  static PartDraft known(Part part) {
    return new PartDraft(part, part);
  }

  static PartDraft made(PartId id, Designator designator, BoardId board) {
    return new PartDraft(null, Part.named(id, designator, board));
  }

  PartId id() {
    return part.id();
  }

  Designator designator() {
    return part.designator();
  }

  BoardId board() {
    return part.board();
  }

  /** How many pins the map has of it. */
  int pinsBefore() {
    return before == null ? 0 : before.pins().size();
  }

  /** The part without regard to the pins and sections that were added. */
  Part fields() {
    return part;
  }

  void setFields(Part changed) {
    part = changed;
  }

  Optional<Pin> pin(String number) {
    return Optional.ofNullable(pins.get(number));
  }

  PinRef put(Pin pin) {
    pins.put(pin.number(), pin);
    return new PinRef(id(), pin.number());
  }

  /** The role of a pin in a section: empty where it has none there yet. */
  String roleIn(String section, String pin) {
    return sections.getOrDefault(section, Map.of()).getOrDefault(pin, "");
  }

  void putRole(String section, String pin, String role) {
    sections.computeIfAbsent(section, name -> new LinkedHashMap<>()).put(pin, role);
  }

  /** Whether a table speaks of it. */
  boolean isTold() {
    return stated;
  }

  void tell() {
    stated = true;
  }

  /** Whether the finished part is another than the map had. */
  boolean differs(Part finished) {
    return !finished.equals(before);
  }

  /** The part with all that was read. */
  Part finished() {
    List<Section> finished = new ArrayList<>();
    sections.forEach((name, roles) -> finished.add(new Section(name, roles)));
    return part.withPins(List.copyOf(pins.values()), finished);
  }
}
