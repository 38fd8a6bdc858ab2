package org.relegend.solve;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.circuit.Circuit;
import org.relegend.map.Attestation;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.Designator;
import org.relegend.map.Evidence;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * A circuit of two channels, written down once: a line a part, as "R1 resistor 4k7 IN B" or "Q1 npn
 * BC547 C=OUT B=B E=E". R1 becomes R101 in channel A and R201 in channel B, and the nets A_IN and
 * B_IN. A rail is one net. A part with a ! is shared by both; "1/7=OUT" is pin 1 in channel A and
 * pin 7 in channel B.
 *
 * @param rails volts by net; the reference is GND
 */
public record ChannelCircuit(String name, Map<String, Double> rails, String lines) {
  private static final BoardId BOARD = new BoardId("main");
  private static final Attestation SAYS =
      new Attestation(Evidence.SEEN, "me", Instant.parse("2026-03-04T12:00:00Z"));

  /** The map that somebody who traced all of it would have. */
  public BoardMap map() {
    Map<String, Part> parts = new LinkedHashMap<>();
    Map<String, List<Net.Member>> nets = new TreeMap<>();
    for (String channel : List.of("A", "B")) {
      for (String line : lines.strip().split("\n")) {
        part(line.strip().split("\\s+"), channel, parts, nets);
      }
    }
    BoardMap map = BoardMap.empty("sample", MapInfo.titled(name));
    map = map.with(MapTables.BOARDS, map.boards().with(Board.named(BOARD)));
    map = map.with(MapTables.PARTS, map.parts().withAll(parts.values()));
    for (String channel : List.of("A", "B")) {
      map = map.with(MapTables.CHANNELS, map.channels().with(new Channel(channel, "", "")));
    }
    List<Net> made = new ArrayList<>();
    nets.forEach((net, members) -> made.add(net(net, members)));
    return map.with(MapTables.NETS, map.nets().withAll(made));
  }

  private Net net(String name, List<Net.Member> members) {
    Potential potential = Potential.UNKNOWN;
    if (name.equals("GND")) {
      potential = new Potential(Potential.Nature.REFERENCE, 0);
    } else if (rails.containsKey(name)) {
      potential = new Potential(Potential.Nature.DC, rails.getOrDefault(name, 0.0));
    }
    String channel = name.startsWith("A_") ? "A" : name.startsWith("B_") ? "B" : "";
    return new Net(new NetId(name), name, channel, potential, members, "");
  }

  private void part(
      String[] words, String channel, Map<String, Part> parts, Map<String, List<Net.Member>> nets) {
    boolean shared = words[0].endsWith("!");
    String name = shared ? words[0].substring(0, words[0].length() - 1) : words[0];
    String letters = name.replaceAll("\\d", "");
    int number = Integer.parseInt(name.replaceAll("\\D", ""));
    String id = letters + (shared ? number : number + (channel.equals("A") ? 100 : 200));
    List<Pin> pins = new ArrayList<>(parts.containsKey(id) ? parts.get(id).pins() : List.of());
    String[] usual = usualPins(words[1]);
    for (int k = 3; k < words.length; k++) {
      String[] sides = words[k].contains("=") ? words[k].split("=") : null;
      String pin = sides == null ? usual[k - 3] : pin(sides[0], channel);
      String net = net(sides == null ? words[k] : sides[1], channel);
      boolean there = pins.stream().anyMatch(other -> other.number().equals(pin));
      if (!there) {
        pins.add(new Pin(pin, ""));
        nets.computeIfAbsent(net, key -> new ArrayList<>())
            .add(new Net.Member(new PinRef(new PartId(id), pin), List.of(SAYS)));
      }
    }
    Part part = Part.named(new PartId(id), new Designator(id), BOARD).withKind(words[1]);
    part = part.withValue(words[2].equals("-") ? "" : words[2].replace('_', ' '));
    parts.put(id, part.withChannel(shared ? "" : channel).withPins(pins, List.of()));
  }

  private static String pin(String words, String channel) {
    String[] either = words.split("/");
    return either.length == 1 || channel.equals("A") ? either[0] : either[1];
  }

  private String net(String words, String channel) {
    boolean common = rails.containsKey(words) || words.equals("GND") || words.startsWith("@");
    return common ? words.replace("@", "") : channel + "_" + words;
  }

  private static String[] usualPins(String kind) {
    return switch (kind) {
      case "cap-pol", "battery" -> new String[] {"+", "-"};
      case "diode", "zener", "led" -> new String[] {"A", "K"};
      case "pot" -> new String[] {"1", "W", "3"};
      default -> new String[] {"1", "2", "3"};
    };
  }

  /** What of the map can be solved, with the rails as declared. */
  public MappedCircuit mapped() {
    BoardMap map = map();
    return MappedCircuit.of(Circuit.of(map), OperatingState.declared(map));
  }

  @Override
  public String toString() {
    return name;
  }
}
