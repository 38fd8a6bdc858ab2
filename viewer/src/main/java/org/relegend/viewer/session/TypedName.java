package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.Edit;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * What a typed name means: R101 a part, R101.2 or "R101 2" a pin, U101/Ta a section, A_ATT a net.
 * Names are taken whatever their case, the exact spelling first.
 */
public final class TypedName {
  /**
   * What a name stands for, with the edits that add to the map what it doesn't have yet.
   *
   * @param additions empty where all of it is known
   */
  public record Meaning(Subject subject, List<Edit> additions) {
    public Meaning {
      additions = List.copyOf(additions);
    }
  }

  private final MapIndex index;

  public TypedName(MapIndex index) {
    this.index = index;
  }

  /** What is known under that name. */
  public Optional<Subject> known(String typed) {
    String text = typed.strip();
    return part(text)
        .map(part -> Subject.of(part.id()))
        .or(() -> net(text).map(net -> Subject.of(net.id())))
        .or(() -> inside(text));
  }

  /**
   * What is meant, where a part or pin that the map doesn't have yet may be meant too.
   *
   * @param board where a new part sits
   */
  public Optional<Meaning> meant(String typed, BoardId board) {
    String text = typed.strip();
    Optional<Subject> known = known(text);
    if (known.isPresent()) {
      return Optional.of(new Meaning(known.get(), List.of()));
    }
    try {
      int dot = text.indexOf('.');
      return Optional.of(
          dot < 0
              ? newPart(text, board)
              : newPin(text.substring(0, dot), text.substring(dot + 1), board));
    } catch (IllegalArgumentException noName) {
      return Optional.empty();
    }
  }

  private Meaning newPart(String name, BoardId board) {
    Part part = fresh(name, board);
    return new Meaning(Subject.of(part.id()), List.of(MapTables.PARTS.put(part)));
  }

  private Meaning newPin(String name, String number, BoardId board) {
    Part part = part(name).orElseGet(() -> fresh(name, board));
    List<Pin> pins = new ArrayList<>(part.pins());
    pins.add(new Pin(number, ""));
    Edit grown = MapTables.PARTS.put(part.withPins(pins, part.sections()));
    return new Meaning(Subject.of(new PinRef(part.id(), number)), List.of(grown));
  }

  private Part fresh(String name, BoardId board) {
    Designator designator = new Designator(name);
    PartId id = new PartId(name);
    for (int i = 2; index.map().parts().has(id); i++) {
      id = new PartId(name + "~" + i);
    }
    return Part.named(id, designator, board);
  }

  public Optional<Part> part(String name) {
    return exactOrAnyCase(name, index.map().parts(), part -> part.designator().text());
  }

  public Optional<Net> net(String name) {
    return exactOrAnyCase(name, index.map().nets(), Net::name);
  }

  private static <T> Optional<T> exactOrAnyCase(
      String name, Iterable<T> all, java.util.function.Function<T, String> nameOf) {
    Optional<T> likely = Optional.empty();
    for (T candidate : all) {
      String own = nameOf.apply(candidate);
      if (own.equals(name)) {
        return Optional.of(candidate);
      }
      if (likely.isEmpty() && own.equalsIgnoreCase(name)) {
        likely = Optional.of(candidate);
      }
    }
    return likely;
  }

  /** "U102.7", "U102 7", "U102 pin 7", "U101/Ta". */
  private Optional<Subject> inside(String text) {
    String[] words = text.split("[./\\s]+", 3);
    if (words.length < 2) {
      return Optional.empty();
    }
    String last = words[words.length - 1].strip();
    boolean spelt = words.length == 2 || words[1].equalsIgnoreCase("pin");
    return part(words[0])
        .filter(part -> spelt)
        .flatMap(part -> pin(part, last).or(() -> section(part, last)));
  }

  private static Optional<Subject> pin(Part part, String number) {
    return part.pins().stream()
        .filter(pin -> pin.number().equalsIgnoreCase(number))
        .findFirst()
        .map(pin -> Subject.of(part.ref(pin)));
  }

  private static Optional<Subject> section(Part part, String name) {
    return part.sections().stream()
        .filter(section -> section.name().equalsIgnoreCase(name))
        .findFirst()
        .map(section -> new Subject.OfSection(part.id(), section.name()));
  }

  /** A net id that is free, from a name or, where that is empty, counted: N1, N2… */
  public NetId freshNet(String name) {
    BoardMap map = index.map();
    if (name.isEmpty()) {
      int number = 1;
      while (map.nets().has(new NetId("N" + number)) || net("N" + number).isPresent()) {
        number++;
      }
      return new NetId("N" + number);
    }
    NetId id = new NetId(name);
    for (int i = 2; map.nets().has(id); i++) {
      id = new NetId(name + "~" + i);
    }
    return id;
  }
}
