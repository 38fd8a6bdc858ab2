package org.relegend.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Section;

/** The elements of parts that have several, and the packages of parts that have one. */
final class DemoSections {
  private DemoSections() {}

  private static final Map<String, String> CASINGS =
      Map.of(
          "npn-array",
          "DIP-14",
          "dual-opamp",
          "DIP-8",
          "njfet",
          "TO-92",
          "diode",
          "DO-35",
          "zener",
          "DO-35");

  static String casing(String kind) {
    return CASINGS.getOrDefault(kind, "");
  }

  static List<Section> of(String kind) {
    return switch (kind) {
      case "npn-array" ->
          List.of(
              transistor("Ta", "1", "2", "3"),
              transistor("Tb", "5", "4", "3"),
              transistor("Tc", "8", "6", "7"),
              transistor("Td", "11", "9", "10"),
              transistor("Te", "14", "12", "13"));
      case "dual-opamp" -> List.of(amplifier("X", "1", "2", "3"), amplifier("Y", "7", "6", "5"));
      case "switch-dpst" ->
          List.of(
              section("live", "1", "in", "2", "out"), section("neutral", "3", "in", "4", "out"));
      case "transformer" ->
          List.of(
              section("primary", "1", "end", "2", "end"),
              section("secondary", "3", "end", "4", "tap", "5", "end"));
      default -> List.of();
    };
  }

  private static Section transistor(String name, String collector, String base, String emitter) {
    return section(name, collector, "collector", base, "base", emitter, "emitter");
  }

  private static Section amplifier(String name, String out, String minus, String plus) {
    return section(name, out, "out", minus, "-in", plus, "+in");
  }

  private static Section section(String name, String... pinsAndRoles) {
    Map<String, String> roles = new LinkedHashMap<>();
    for (int k = 0; k < pinsAndRoles.length; k += 2) {
      roles.put(pinsAndRoles[k], pinsAndRoles[k + 1]);
    }
    return new Section(name, roles);
  }
}
