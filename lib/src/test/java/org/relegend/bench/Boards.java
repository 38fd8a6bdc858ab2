package org.relegend.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;
import org.relegend.map.Table;

/**
 * Small circuits for tests, written as lines {@code R1 resistor 4k7 1=VP 2=A_OUT}. A net whose name
 * begins with a letter and an underscore is of that channel; 0V is the reference.
 */
public final class Boards {
  private static final BoardId BOARD = new BoardId("main");

  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<Net.Member>> members = new TreeMap<>();
  private final Map<String, Double> nominal = new LinkedHashMap<>();
  private Job job = JobSamples.blank();

  public Boards parts(String... lines) {
    for (String line : lines) {
      String[] words = line.split(" ");
      PartId id = new PartId(words[0]);
      List<Pin> pins = new ArrayList<>();
      String channel = "";
      for (String word : List.of(words).subList(3, words.length)) {
        String[] sides = word.split("=");
        pins.add(new Pin(sides[0], ""));
        members
            .computeIfAbsent(sides[1], net -> new ArrayList<>())
            .add(new Net.Member(new PinRef(id, sides[0]), List.of()));
        channel = channel.isEmpty() ? channelOf(sides[1]) : channel;
      }
      parts.add(
          new Part(
              id,
              new Designator(words[0]),
              words[1],
              words[2].replace('_', ' '),
              "",
              BOARD,
              channel,
              pins,
              List.of(),
              ""));
    }
    return this;
  }

  private static String channelOf(String net) {
    return net.matches("[A-Z]_.*") ? net.substring(0, 1) : "";
  }

  /** What the map says a net has, in volts. */
  public Boards nominal(String net, double volts) {
    nominal.put(net, volts);
    return this;
  }

  /** A reading with a meter of 10 megohms. */
  public Boards read(String net, double volts) {
    job = DemoUnit.read(job, net, volts);
    return this;
  }

  public Boards job(java.util.function.UnaryOperator<Job> change) {
    job = change.apply(job);
    return this;
  }

  public Circuit circuit() {
    List<Net> nets = new ArrayList<>();
    members.forEach(
        (name, pins) -> {
          Potential potential =
              name.equals("0V")
                  ? new Potential(Potential.Nature.REFERENCE, 0)
                  : nominal.containsKey(name)
                      ? new Potential(Potential.Nature.DC, nominal.get(name))
                      : Potential.UNKNOWN;
          nets.add(new Net(new NetId(name), name, channelOf(name), potential, pins, ""));
        });
    BoardMap map =
        BoardMap.empty("sample", new MapInfo("Sample", "", "", "", ""))
            .with(MapTables.PARTS, Table.of(parts))
            .with(MapTables.NETS, Table.of(nets));
    return Circuit.of(map);
  }

  public UnitReadings unit() {
    return UnitReadings.of(job, circuit());
  }
}
