package org.relegend.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.map.NameRules;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

/**
 * Finds the node that a person means: a net by its name as built or as drawn, or a pin as "R101.1",
 * "U102 pin 7", "Q101 base". Case matters only where it is needed to tell two apart.
 */
public final class NodeNames {
  private static final Pattern PIN =
      Pattern.compile("(\\S+?)(?:\\s*[./]\\s*|\\s+pin\\s+|\\s+)(\\S.*)", Pattern.CASE_INSENSITIVE);

  private final Circuit circuit;
  private final Map<String, List<Net>> netsByWord = new HashMap<>();
  private final Map<String, List<Part>> partsByWord = new HashMap<>();
  private final List<String> drawnOnly;

  public NodeNames(Circuit circuit) {
    this.circuit = circuit;
    this.drawnOnly = circuit.drawnOnlyNets();
    for (Net net : circuit.map().nets()) {
      add(netsByWord, net.name(), net);
      if (!net.name().equals(net.id().text())) {
        add(netsByWord, net.id().text(), net);
      }
    }
    for (Part part : circuit.map().parts()) {
      add(partsByWord, part.designator().text(), part);
      if (!part.designator().text().equals(part.id().text())) {
        add(partsByWord, part.id().text(), part);
      }
    }
  }

  private static <T> void add(Map<String, List<T>> lists, String word, T value) {
    lists.computeIfAbsent(lower(word), key -> new ArrayList<>(1)).add(value);
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }

  /**
   * The node of this name. "net:ID" and "pin:PART.PIN" (by ids) settle what is ambiguous.
   *
   * @throws NodeNameException where nothing has the name, with what is spelt alike; or where it
   *     means several things, with all of them
   */
  public NodeName find(String text) throws NodeNameException {
    String asked = text.strip();
    Map<String, NodeName> settled = settled(asked);
    Map<String, NodeName> readings = settled.isEmpty() ? readings(asked, true) : settled;
    if (readings.isEmpty()) {
      readings = readings(asked, false);
    }
    if (readings.size() == 1) {
      return readings.values().iterator().next();
    }
    if (readings.isEmpty()) {
      throw unknown(asked);
    }
    throw new NodeNameException(
        "\"%s\" can mean %s: ask for one of these"
            .formatted(NameRules.printable(asked), String.join(" or ", readings.keySet())),
        List.copyOf(readings.keySet()));
  }

  private Map<String, NodeName> settled(String text) {
    Map<String, NodeName> found = new LinkedHashMap<>();
    if (text.startsWith("net:")) {
      netsByWord.getOrDefault(lower(text.substring(4)), List.of()).stream()
          .filter(net -> net.id().text().equals(text.substring(4)))
          .forEach(net -> put(found, net.id()));
    } else if (text.startsWith("pin:")) {
      Matcher matcher = PIN.matcher(text.substring(4));
      if (matcher.matches()) {
        for (Part part : partsByWord.getOrDefault(lower(matcher.group(1)), List.of())) {
          if (part.id().text().equals(matcher.group(1)) && part.pin(matcher.group(2)).isPresent()) {
            put(found, new PinRef(part.id(), matcher.group(2)));
          }
        }
      }
    }
    return found;
  }

  /** All that the text can mean, by the words that settle it. */
  private Map<String, NodeName> readings(String text, boolean exact) {
    Map<String, NodeName> found = new LinkedHashMap<>();
    for (Net net : netsByWord.getOrDefault(lower(text), List.of())) {
      if (!exact || net.name().equals(text) || net.id().text().equals(text)) {
        put(found, net.id());
      }
    }
    Matcher matcher = PIN.matcher(text);
    if (matcher.matches()) {
      for (Part part : parts(matcher.group(1), exact)) {
        pin(part, matcher.group(2), exact).ifPresent(pin -> put(found, part.ref(pin)));
      }
    }
    for (String drawn : drawnOnly) {
      if (exact ? drawn.equals(text) : drawn.equalsIgnoreCase(text)) {
        found.put("the drawing's " + drawn, new NodeName.OfDrawnNet(drawn));
      }
    }
    if (!exact && found.isEmpty()) {
      parts(text, false).stream()
          .filter(part -> part.pins().size() == 1)
          .forEach(part -> put(found, part.ref(part.pins().get(0))));
    }
    return found;
  }

  private static void put(Map<String, NodeName> found, NetId net) {
    found.put("net:" + net, new NodeName.OfNet(net));
  }

  private static void put(Map<String, NodeName> found, PinRef pin) {
    found.put("pin:" + pin, new NodeName.OfPin(pin));
  }

  private List<Part> parts(String word, boolean exact) {
    return partsByWord.getOrDefault(lower(word), List.of()).stream()
        .filter(
            part ->
                !exact || part.designator().text().equals(word) || part.id().text().equals(word))
        .toList();
  }

  /**
   * The pin of this number; else, where exactness isn't asked, of this number or role in any case.
   */
  private Optional<Pin> pin(Part part, String word, boolean exact) {
    Optional<Pin> found = part.pin(word);
    if (found.isPresent() || exact) {
      return found;
    }
    List<Pin> alike =
        part.pins().stream().filter(pin -> pin.number().equalsIgnoreCase(word)).toList();
    if (alike.isEmpty()) {
      alike = part.pins().stream().filter(pin -> hasRole(part, pin, word)).toList();
    }
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  private boolean hasRole(Part part, Pin pin, String word) {
    return pin.role().equalsIgnoreCase(word)
        || circuit.terminalsOf(part.id()).stream()
            .anyMatch(
                terminal ->
                    terminal.number().equals(pin.number())
                        && terminal.role().equalsIgnoreCase(word));
  }

  private NodeNameException unknown(String text) {
    Matcher matcher = PIN.matcher(text);
    List<Part> parts = new ArrayList<>(parts(text, false));
    if (parts.isEmpty() && matcher.matches()) {
      parts.addAll(parts(matcher.group(1), false));
    }
    return parts.isEmpty() ? nothingAlike(text, matcher) : pinsOf(text, parts);
  }

  private static NodeNameException pinsOf(String text, List<Part> parts) {
    List<String> pins = new ArrayList<>();
    for (Part part : parts) {
      part.pins().forEach(pin -> pins.add(part.designator() + "." + pin.number()));
    }
    if (pins.isEmpty()) {
      return new NodeNameException(
          "part \"%s\" has no pins yet: enter them first".formatted(parts.get(0).designator()),
          List.of());
    }
    List<String> few = pins.subList(0, Math.min(40, pins.size()));
    return new NodeNameException(
        "\"%s\" names no pin: the pins are %s%s"
            .formatted(
                NameRules.printable(text),
                String.join(", ", few),
                few.size() < pins.size() ? " and %d more".formatted(pins.size() - few.size()) : ""),
        few);
  }

  private NodeNameException nothingAlike(String text, Matcher matcher) {
    List<String> near = SimilarNames.of(text, netNames());
    if (matcher.matches()) {
      for (String designator : SimilarNames.of(matcher.group(1), partNames())) {
        parts(designator, true).stream()
            .filter(part -> pin(part, matcher.group(2), false).isPresent())
            .forEach(part -> near.add(part.designator() + "." + matcher.group(2)));
      }
    } else {
      near.addAll(SimilarNames.of(text, partNames()));
    }
    String hint =
        near.isEmpty()
            ? "give a net's name, or a pin as PART.PIN, like R101.1"
            : "did you mean " + String.join(", ", near) + "?";
    return new NodeNameException(
        "the map has no net and no pin \"%s\": %s".formatted(NameRules.printable(text), hint),
        near);
  }

  private Collection<String> netNames() {
    List<String> names = new ArrayList<>(drawnOnly);
    circuit.map().nets().forEach(net -> names.add(net.name()));
    return names;
  }

  private Collection<String> partNames() {
    return circuit.map().parts().stream().map(part -> part.designator().text()).toList();
  }
}
