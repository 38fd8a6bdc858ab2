package org.relegend.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.MapIndex;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

/** The parts that a typed line speaks of, found in the map or made. */
final class TraceParts {
  private final MapIndex index;
  private final BoardMap map;
  private final Kinds kinds;
  private final PartCompletion completion;
  private final Map<PartId, Part> changed = new LinkedHashMap<>();

  TraceParts(MapIndex index, Kinds kinds) {
    this.index = index;
    this.map = index.map();
    this.kinds = kinds;
    completion = new PartCompletion(kinds);
  }

  /** Parts that are new or have new pins. */
  List<Part> changed() {
    return List.copyOf(changed.values());
  }

  List<PartId> made() {
    return changed.keySet().stream().filter(id -> !map.parts().has(id)).toList();
  }

  /** The pins that a word like "U101.6,9" names. */
  List<PinRef> pins(TraceWord word) throws TraceException {
    int dot = word.text().indexOf('.');
    if (dot < 1 || dot == word.text().length() - 1) {
      throw word.wrong(noPin(word));
    }
    Part part = part(new TraceWord(word.text().substring(0, dot), word.start()));
    List<PinRef> pins = new ArrayList<>();
    int from = dot + 1;
    while (from <= word.text().length()) {
      int comma = word.text().indexOf(',', from);
      int end = comma < 0 ? word.text().length() : comma;
      TraceWord number = new TraceWord(word.text().substring(from, end), word.start() + from);
      part = withPin(part, number);
      pins.add(new PinRef(part.id(), number(part, number.text()).orElse(number.text())));
      from = end + 1;
    }
    return pins;
  }

  private String noPin(TraceWord word) {
    String text = NameRules.printable(word.text());
    return partOnly(word)
        .map(part -> "which pin of %s? It has %s".formatted(part.designator(), numbers(part)))
        .orElse(
            ("\"%s\" names no pin: a pin is written like R106.1; the line may end in one of"
                    + " measured, beeped, seen, matched, inferred, guessed")
                .formatted(text));
  }

  private Optional<Part> partOnly(TraceWord word) {
    String text = word.text();
    try {
      return find(PartName.parse(text.endsWith(".") ? text.substring(0, text.length() - 1) : text));
    } catch (IllegalArgumentException noPart) {
      return Optional.empty();
    }
  }

  private Part part(TraceWord word) throws TraceException {
    try {
      PartName name = PartName.parse(word.text());
      Optional<Part> found = find(name);
      return found.isPresent() ? found.get() : make(name);
    } catch (IllegalArgumentException refused) {
      throw word.wrong(refused);
    }
  }

  private Optional<Part> find(PartName name) {
    List<Part> named = onBoard(name, index.partsNamed(name.designator()));
    if (named.isEmpty()) {
      String text = name.designator().text();
      named =
          onBoard(
              name,
              map.parts().stream()
                  .filter(part -> part.designator().text().equalsIgnoreCase(text))
                  .toList());
    }
    if (named.size() > 1) {
      throw new IllegalArgumentException(
          "there are %d such parts: write which, as %s"
              .formatted(
                  named.size(),
                  named.stream()
                      .map(part -> part.board() + ":" + part.designator())
                      .collect(Collectors.joining(" or "))));
    }
    return named.isEmpty() ? madeBefore(name) : current(named.get(0));
  }

  private static List<Part> onBoard(PartName name, List<Part> parts) {
    return parts.stream()
        .filter(part -> name.board().isEmpty() || name.board().get().equals(part.board()))
        .toList();
  }

  /** The part as the line left it so far. */
  private Optional<Part> current(Part part) {
    return Optional.of(changed.getOrDefault(part.id(), part));
  }

  private Optional<Part> madeBefore(PartName name) {
    String text = name.designator().text();
    return onBoard(name, changed()).stream()
        .filter(part -> part.designator().text().equalsIgnoreCase(text))
        .findFirst();
  }

  private Part make(PartName name) {
    Designator designator = new Designator(name.designator().text().toUpperCase(Locale.ROOT));
    BoardId board = name.board().orElseGet(() -> MapDraft.onlyBoard(map));
    PartId id = new PartId(designator.text());
    for (int i = 2; map.parts().has(id) || changed.containsKey(id); i++) {
      id = new PartId(designator + "~" + i);
    }
    Part made = Part.named(id, designator, board);
    changed.put(id, made);
    return made;
  }

  private Part withPin(Part part, TraceWord number) throws TraceException {
    if (number(part, number.text()).isPresent()) {
      return part;
    }
    try {
      List<Pin> pins = new ArrayList<>(part.pins());
      pins.add(new Pin(number.text(), ""));
      requireFit(part, pins, number);
      Part more = completion.complete(part.withPins(pins, part.sections()), part.pins().size());
      changed.put(part.id(), more);
      return more;
    } catch (IllegalArgumentException refused) {
      throw number.wrong(refused);
    }
  }

  /** A slip of the finger shouldn't give a resistor a third pin. */
  private void requireFit(Part part, List<Pin> pins, TraceWord number) throws TraceException {
    Optional<Kind> kind = kinds.of(part).filter(k -> !k.has(Kind.Trait.OPEN));
    boolean fittedBefore = kind.flatMap(k -> k.pinoutFor(part.pins(), part.casing())).isPresent();
    if (fittedBefore && kind.flatMap(k -> k.pinoutFor(pins, part.casing())).isEmpty()) {
      throw number.wrong(
          "%s is a %s and has no pin %s: it has %s"
              .formatted(
                  part.designator(),
                  part.kind(),
                  NameRules.printable(number.text()),
                  numbers(part)));
    }
  }

  private static String numbers(Part part) {
    return part.pins().isEmpty()
        ? "none that is known yet"
        : part.pins().stream().map(Pin::number).limit(40).collect(Collectors.joining(" "));
  }

  /** The number as the part has it: in small letters too, if that is clear. */
  private static Optional<String> number(Part part, String typed) {
    if (part.pin(typed).isPresent()) {
      return Optional.of(typed);
    }
    List<String> alike =
        part.pins().stream().map(Pin::number).filter(typed::equalsIgnoreCase).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }
}
