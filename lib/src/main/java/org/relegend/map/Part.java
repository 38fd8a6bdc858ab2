package org.relegend.map;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One component, as built in this revision of the board.
 *
 * @param kind what it is, in the words of the kinds table: "resistor", "npn", "dual-opamp"; empty
 *     while unknown
 * @param value as written: "4k7 0.5W"; empty while unknown
 * @param casing the package, as "DIP-8"; empty while unknown
 * @param board the board it sits on
 * @param channel the channel it works in; empty when shared or unknown
 * @param pins in the order of the part
 * @param sections in the order of the part; empty when the part has just one element
 */
public record Part(
    PartId id,
    Designator designator,
    String kind,
    String value,
    String casing,
    BoardId board,
    String channel,
    List<Pin> pins,
    List<Section> sections,
    String note)
    implements Keyed<PartId> {
  public Part {
    TextRules.line("kind", kind);
    TextRules.line("value", value);
    TextRules.line("package", casing);
    TextRules.line("channel", channel);
    TextRules.note(note);
    pins = List.copyOf(pins);
    sections = List.copyOf(sections);
    Set<String> numbers = new HashSet<>();
    for (Pin pin : pins) {
      if (!numbers.add(pin.number())) {
        throw new IllegalArgumentException(
            "part %s has pin %s twice".formatted(designator, pin.number()));
      }
    }
    Set<String> names = new HashSet<>();
    for (Section section : sections) {
      if (!names.add(section.name())) {
        throw new IllegalArgumentException(
            "part %s has section %s twice".formatted(designator, section.name()));
      }
    }
  }

  /** A part of which nothing but its designator and board is known. */
  public static Part named(PartId id, Designator designator, BoardId board) {
    return new Part(id, designator, "", "", "", board, "", List.of(), List.of(), "");
  }

  @Override
  public PartId key() {
    return id;
  }

  public PinRef ref(Pin pin) {
    return new PinRef(id, pin.number());
  }

  public Optional<Pin> pin(String number) {
    for (Pin pin : pins) {
      if (pin.number().equals(number)) {
        return Optional.of(pin);
      }
    }
    return Optional.empty();
  }

  public Optional<Section> section(String name) {
    return sections.stream().filter(section -> section.name().equals(name)).findFirst();
  }

  /** The sections that this pin belongs to: none for a supply pin, several where tied inside. */
  public List<Section> sectionsOf(String pin) {
    return sections.stream().filter(section -> section.has(pin)).toList();
  }

  public Part withDesignator(Designator changed) {
    return new Part(id, changed, kind, value, casing, board, channel, pins, sections, note);
  }

  public Part withKind(String changed) {
    return new Part(id, designator, changed, value, casing, board, channel, pins, sections, note);
  }

  public Part withValue(String changed) {
    return new Part(id, designator, kind, changed, casing, board, channel, pins, sections, note);
  }

  public Part withCasing(String changed) {
    return new Part(id, designator, kind, value, changed, board, channel, pins, sections, note);
  }

  public Part withBoard(BoardId changed) {
    return new Part(id, designator, kind, value, casing, changed, channel, pins, sections, note);
  }

  public Part withChannel(String changed) {
    return new Part(id, designator, kind, value, casing, board, changed, pins, sections, note);
  }

  public Part withPins(List<Pin> changedPins, List<Section> changedSections) {
    return new Part(
        id, designator, kind, value, casing, board, channel, changedPins, changedSections, note);
  }

  public Part withNote(String changed) {
    return new Part(id, designator, kind, value, casing, board, channel, pins, sections, changed);
  }
}
