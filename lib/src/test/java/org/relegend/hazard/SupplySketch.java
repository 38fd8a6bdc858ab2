package org.relegend.hazard;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.relegend.map.Potential;
import org.relegend.map.Table;

/** A map drawn part by part: "T1 transformer 230V 1=primary:L 2=primary:N 3=:A". */
public final class SupplySketch {
  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<String>> pinsOn = new LinkedHashMap<>();
  private final Map<String, Potential> text = new LinkedHashMap<>();

  /**
   * Of lines: "R1 resistor 4k7 1=:A 2=:B" is a part, "net A dc 300" tells a net; - stands for
   * nothing, _ for a space, and a kind may end in @ and its package.
   */
  public static SupplySketch of(String text) {
    SupplySketch sketch = new SupplySketch();
    for (String line : text.strip().split("\\R")) {
      String[] words = line.strip().split("\\s+");
      if (words[0].equals("net")) {
        double volts = words.length > 3 ? Double.parseDouble(words[3]) : 0;
        sketch.text(words[1], Potential.Nature.of(words[2]), volts);
      } else {
        sketch.line(words);
      }
    }
    return sketch;
  }

  private void line(String[] words) {
    String kind = words[1].equals("-") ? "" : words[1].replaceFirst("@.*", "");
    String value = words[2].equals("-") ? "" : words[2].replace('_', ' ');
    List<String> pins = new ArrayList<>();
    for (int w = 3; w < words.length; w++) {
      int colon = words[w].lastIndexOf(':');
      pins.add(words[w].substring(0, colon).replace('_', ' ') + words[w].substring(colon));
    }
    part(words[0], kind, value, pins.toArray(String[]::new));
    if (words[1].contains("@")) {
      casing(words[1].substring(words[1].indexOf('@') + 1));
    }
  }

  /** A part; each pin as number=role:net, the role may be empty, the net "-" for none. */
  SupplySketch part(String name, String kind, String value, String... pins) {
    List<Pin> list = new ArrayList<>();
    for (String pin : pins) {
      int equals = pin.indexOf('=');
      int colon = pin.lastIndexOf(':');
      String number = equals < 0 ? pin.substring(0, colon) : pin.substring(0, equals);
      list.add(new Pin(number, equals < 0 ? "" : pin.substring(equals + 1, colon)));
      String net = pin.substring(colon + 1);
      if (!net.equals("-")) {
        pinsOn.computeIfAbsent(net, key -> new ArrayList<>()).add(name + "." + number);
      }
    }
    parts.add(
        Part.named(new PartId(name), new Designator(name), MAIN)
            .withKind(kind)
            .withValue(value)
            .withPins(list, List.of()));
    return this;
  }

  SupplySketch casing(String casing) {
    Part last = parts.remove(parts.size() - 1);
    parts.add(last.withCasing(casing));
    return this;
  }

  SupplySketch text(String net, Potential.Nature nature, double volts) {
    text.put(net, new Potential(nature, volts));
    return this;
  }

  boolean isTold(String net) {
    return text.containsKey(net);
  }

  public BoardMap map() {
    List<Net> nets = new ArrayList<>();
    pinsOn.forEach(
        (name, pins) -> {
          List<Net.Member> members = new ArrayList<>();
          pins.stream()
              .distinct()
              .forEach(
                  pin ->
                      members.add(new Net.Member(PinRef.parse(pin), List.of(says(Evidence.SEEN)))));
          nets.add(
              Net.named(new NetId(name))
                  .withMembers(members)
                  .withPotential(text.getOrDefault(name, Potential.UNKNOWN)));
        });
    return BoardMapSamples.blank()
        .with(MapTables.PARTS, Table.of(parts))
        .with(MapTables.NETS, Table.of(nets));
  }
}
