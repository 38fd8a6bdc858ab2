package org.relegend.demo.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A board: its outline in millimetres, its parts and pins in the order of the tables, and its
 * holes.
 *
 * @param number what is etched in its copper
 */
public record Design(
    String number,
    double width,
    double height,
    List<PlacedPart> parts,
    List<PlacedPin> pins,
    List<Hole> holes) {
  public Design {
    parts = List.copyOf(parts);
    pins = List.copyOf(pins);
    holes = List.copyOf(holes);
  }

  public PlacedPart part(String designator) {
    return parts.stream()
        .filter(part -> part.designator().equals(designator))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the board has no part " + designator));
  }

  /** The pins of one part, by pin name, in table order. */
  public Map<String, PlacedPin> pinsOf(String designator) {
    Map<String, PlacedPin> found = new LinkedHashMap<>();
    for (PlacedPin pin : pins) {
      if (pin.part().equals(designator)) {
        found.put(pin.pin(), pin);
      }
    }
    return found;
  }

  /** The pins that each net's copper joins, by net name. */
  public Map<String, List<PlacedPin>> netsAsBuilt() {
    Map<String, List<PlacedPin>> nets = new TreeMap<>();
    for (PlacedPin pin : pins) {
      nets.merge(pin.builtNet(), List.of(pin), Design::joined);
    }
    return nets;
  }

  private static List<PlacedPin> joined(List<PlacedPin> some, List<PlacedPin> more) {
    return java.util.stream.Stream.concat(some.stream(), more.stream()).toList();
  }
}
