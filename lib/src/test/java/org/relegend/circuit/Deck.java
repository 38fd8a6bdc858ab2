package org.relegend.circuit;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Designator;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Table;

/**
 * A published circuit deck, flattened, as a map. Parts get running designators in deck order (Q1,
 * Q2 ...) and keep their hierarchical name ("X1.X2.Q3") as note; nets keep theirs ("X1.X2.7",
 * ground is "0").
 */
public final class Deck {
  /** One part of the flattened deck. */
  private record Element(String path, List<String> nodes, String value) {}

  private final Map<String, List<String>> subcircuits = new HashMap<>();
  private final List<Element> elements = new ArrayList<>();
  private final Map<String, PartId> byPath = new LinkedHashMap<>();

  /**
   * Reads elements and subcircuit definitions; the deck's first line (its title), comments and
   * other dot lines are passed over.
   */
  public Deck(String text) {
    List<String> top = new ArrayList<>();
    List<String> into = top;
    for (String line : text.lines().skip(1).toList()) {
      String upper = line.strip().toUpperCase(java.util.Locale.ROOT);
      if (upper.startsWith(".SUBCKT")) {
        into = new ArrayList<>();
        subcircuits.put(upper.split("\\s+")[1], into);
        into.add(upper);
      } else if (upper.startsWith(".ENDS")) {
        into = top;
      } else if (!upper.isEmpty() && !upper.startsWith(".") && !upper.startsWith("*")) {
        into.add(upper);
      }
    }
    expand("", top, Map.of());
    Map<String, Integer> counts = new HashMap<>();
    for (Element element : elements) {
      String letter = letter(element);
      byPath.put(element.path(), new PartId(letter + counts.merge(letter, 1, Integer::sum)));
    }
  }

  private void expand(String prefix, List<String> lines, Map<String, String> ports) {
    for (String line : lines) {
      List<String> words = List.of(line.split("\\s+"));
      if (line.startsWith(".")) {
        continue;
      }
      String path = prefix + words.get(0);
      int nodes = nodes(words);
      List<String> joined =
          words.subList(1, 1 + nodes).stream().map(node -> net(prefix, node, ports)).toList();
      String rest = String.join(" ", words.subList(1 + nodes, words.size()));
      if (path.charAt(prefix.length()) != 'X') {
        elements.add(new Element(path, joined, rest));
        continue;
      }
      List<String> definition = subcircuits.get(rest);
      List<String> formal = List.of(definition.get(0).split("\\s+"));
      Map<String, String> inner = new HashMap<>();
      for (int i = 0; i < joined.size(); i++) {
        inner.put(formal.get(i + 2), joined.get(i));
      }
      expand(path + ".", definition, inner);
    }
  }

  private static int nodes(List<String> words) {
    return switch (words.get(0).charAt(0)) {
      case 'Q' -> 3;
      case 'X' -> words.size() - 2;
      case 'U' -> 8;
      default -> 2;
    };
  }

  private static String net(String prefix, String node, Map<String, String> ports) {
    return node.equals("0") ? node : ports.getOrDefault(node, prefix + node);
  }

  private static String letter(Element element) {
    String name = element.path().substring(element.path().lastIndexOf('.') + 1);
    return name.startsWith("V") ? "PS" : name.substring(0, 1);
  }

  /** The part of this hierarchical name. */
  public PartId part(String path) {
    PartId part = byPath.get(path);
    if (part == null) {
      throw new IllegalArgumentException("the deck has no " + path);
    }
    return part;
  }

  /** A pin by hierarchical name: "X1.Q3" and "B". */
  public PinRef pin(String path, String pin) {
    return new PinRef(part(path), pin);
  }

  public BoardMap map() {
    return map(true);
  }

  /** The deck as a map, with its voltage sources as supplies or without them. */
  public BoardMap map(boolean withSources) {
    List<Part> parts = new ArrayList<>();
    Map<String, List<Net.Member>> nets = new TreeMap<>();
    for (Element element : elements) {
      Part part = part(element);
      if (withSources || !part.kind().equals("power-supply")) {
        parts.add(part);
        for (int i = 0; i < element.nodes().size(); i++) {
          nets.computeIfAbsent(element.nodes().get(i), net -> new ArrayList<>())
              .add(new Net.Member(part.ref(part.pins().get(i)), List.of(says(Evidence.INFERRED))));
        }
      }
    }
    List<Net> made = new ArrayList<>();
    nets.forEach((name, members) -> made.add(Net.named(new NetId(name)).withMembers(members)));
    return BoardMapSamples.blank()
        .with(MapTables.PARTS, Table.of(parts))
        .with(MapTables.NETS, Table.of(made));
  }

  private Part part(Element element) {
    PartId id = part(element.path());
    String kind =
        switch (letter(element)) {
          case "R" -> "resistor";
          case "C" -> "cap";
          case "D" -> "diode";
          case "Q" -> "npn";
          case "U" -> "dual-opamp";
          default -> "power-supply";
        };
    List<String> numbers =
        switch (kind) {
          case "diode" -> List.of("A", "K");
          case "npn" -> List.of("C", "B", "E");
          case "dual-opamp" -> List.of("1", "2", "3", "4", "5", "6", "7", "8");
          case "power-supply" -> List.of("+", "-");
          default -> List.of("1", "2");
        };
    List<Pin> pins = numbers.stream().map(number -> new Pin(number, "")).toList();
    return Part.named(id, new Designator(id.text()), MAIN)
        .withKind(kind)
        .withValue(element.value())
        .withNote(element.path())
        .withPins(pins, Kinds.standard().find(kind).orElseThrow().sectionsFor(pins));
  }
}
