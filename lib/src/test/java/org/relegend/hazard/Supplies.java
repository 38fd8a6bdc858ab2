package org.relegend.hazard;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Designator;
import org.relegend.map.Evidence;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;
import org.relegend.map.Table;

/**
 * Random power supplies with what mains reaches in them, kept by a plain table of joined nets
 * beside the map: it knows nothing of kinds, roles or the walk under test.
 */
final class Supplies {
  private static final int NETS = 24;
  private static final String EARTH = "PE";

  private final Random random;
  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<String>> pinsOn = new LinkedHashMap<>();
  private final Map<String, Set<String>> joined = new HashMap<>();
  private final Set<String> bridging = new TreeSet<>();

  private Supplies(long seed) {
    random = new Random(seed);
  }

  /** A map, the pins that mains reaches in it, and the capacitors that bridge its isolation. */
  record Supply(BoardMap map, Set<String> live, Set<String> bridges) {}

  static Supply of(long seed) {
    return new Supplies(seed).make();
  }

  private Supply make() {
    part("J1", "mains-terminal", "", "L=live", "N=neutral", "E=protective earth");
    on("J1.L", "M0");
    on("J1.N", "M1");
    on("J1.E", EARTH);
    part(
        "T0",
        "transformer",
        "",
        "1=primary",
        "2=primary",
        "3=secondary",
        "4=secondary",
        "5=screen");
    two("T0", "1", "M0", "2", "M1");
    two("T0", "3", "S0", "4", "S1");
    on("T0.5", EARTH);
    join("M0", "M1");
    join("S0", "S1");
    int count = 5 + random.nextInt(25);
    for (int i = 1; i <= count; i++) {
      add(i);
    }
    if (random.nextBoolean() && !reached().contains("S0")) {
      part("CY", random.nextBoolean() ? "cap-y" : "cap", "2n2", "1=", "2=");
      two("CY", "1", "M0", "2", "S0");
      bridging.add("CY");
    }
    Set<String> live = new TreeSet<>();
    reached().forEach(net -> live.addAll(pinsOn.getOrDefault(net, List.of())));
    return new Supply(map(), live, bridging);
  }

  /** Nets of three islands: around the inlet, behind T0, and loose ones. */
  private String net() {
    int number = random.nextInt(NETS);
    return number < 8 ? "M" + number : number < 16 ? "S" + (number - 8) : "X" + (number - 16);
  }

  private String netLike(String other) {
    if (random.nextInt(12) == 0) {
      return net();
    }
    return other.charAt(0) + "" + random.nextInt(8);
  }

  private void add(int i) {
    String a = net();
    String b = netLike(a);
    String c = netLike(a);
    switch (random.nextInt(16)) {
      case 0 -> through("F" + i, "fuse", "", a, b);
      case 1 -> through("SW" + i, "switch-spst", "", a, b);
      case 2 -> through("R" + i, "resistor", "4k7", a, b);
      case 3 -> through("L" + i, "inductor", "", a, b);
      case 4 -> through("C" + i, "cap", "470n", a, b);
      case 5 -> through("C" + i, "cap", "", a, b);
      case 6 -> through("A" + i, "", "", a, b, c);
      case 7 -> {
        part("D" + i, "diode", "", "A=", "K=");
        two("D" + i, "A", a, "K", b);
        join(a, b);
      }
      case 8 -> {
        part("BR" + i, "bridge", "", "AC1=", "AC2=", "PLUS=", "MINUS=");
        two("BR" + i, "AC1", a, "AC2", b);
        two("BR" + i, "PLUS", c, "MINUS", b);
        join(a, b);
        join(a, c);
      }
      case 9 -> {
        part("Q" + i, "npn", "", "E=", "B=", "C=");
        two("Q" + i, "E", a, "B", b);
        on("Q" + i + ".C", c);
        join(a, b);
        join(a, c);
      }
      case 10 -> {
        part("SW" + i, "switch-dpst", "", "1=1 in", "2=1 out", "3=2 in", "4=2 out");
        two("SW" + i, "1", a, "2", b);
        two("SW" + i, "3", c, "4", c);
        join(a, b);
      }
      case 11 -> {
        part(
            "U" + i,
            "optocoupler",
            "",
            "1=led anode",
            "2=led cathode",
            "3=output emitter",
            "4=output collector");
        isolated("U" + i, a, b, net(), net());
      }
      case 12 -> {
        part("T" + i, "transformer", "", "1=pri", "2=pri", "3=sec", "4=sec");
        isolated("T" + i, a, b, net(), net());
      }
      case 13 -> {
        part("K" + i, "relay-spst", "", "A1=", "A2=", "13=", "14=");
        String d = net();
        String e = net();
        two("K" + i, "A1", a, "A2", b);
        two("K" + i, "13", d, "14", e);
        join(a, b);
        join(d, e);
      }
      case 14 -> {
        part("R" + i, "resistor", "1M", "1=", "2=");
        two("R" + i, "1", a, "2", EARTH);
        join(a, EARTH);
      }
      default -> {
        part("T" + i, "transformer", "", "1=", "2=", "3=");
        two("T" + i, "1", a, "2", b);
        on("T" + i + ".3", c);
        join(a, b);
        join(a, c);
      }
    }
  }

  private void isolated(String name, String a, String b, String c, String d) {
    two(name, "1", a, "2", b);
    two(name, "3", c, "4", d);
    join(a, b);
    join(c, d);
  }

  private void through(String name, String kind, String value, String... nets) {
    String[] pins = new String[nets.length];
    for (int p = 0; p < nets.length; p++) {
      pins[p] = p + 1 + "=";
    }
    part(name, kind, value, pins);
    for (int p = 0; p < nets.length; p++) {
      on(name + "." + (p + 1), nets[p]);
      join(nets[0], nets[p]);
    }
  }

  private void part(String name, String kind, String value, String... pins) {
    List<Pin> list = new ArrayList<>();
    for (String pin : pins) {
      int equals = pin.indexOf('=');
      list.add(new Pin(pin.substring(0, equals), pin.substring(equals + 1)));
    }
    parts.add(
        Part.named(new PartId(name), new Designator(name), MAIN)
            .withKind(kind)
            .withValue(value)
            .withPins(list, List.of()));
  }

  private void two(String part, String pin, String net, String other, String otherNet) {
    on(part + "." + pin, net);
    on(part + "." + other, otherNet);
  }

  private void on(String pin, String net) {
    pinsOn.computeIfAbsent(net, key -> new ArrayList<>()).add(pin);
  }

  private void join(String a, String b) {
    joined.computeIfAbsent(a, key -> new LinkedHashSet<>()).add(b);
    joined.computeIfAbsent(b, key -> new LinkedHashSet<>()).add(a);
  }

  /** From both lines; earth is a dead end that doesn't count itself. */
  private Set<String> reached() {
    Set<String> found = new LinkedHashSet<>(List.of("M0", "M1"));
    Deque<String> open = new ArrayDeque<>(found);
    while (!open.isEmpty()) {
      for (String next : joined.getOrDefault(open.remove(), Set.of())) {
        if (!next.equals(EARTH) && found.add(next)) {
          open.add(next);
        }
      }
    }
    return found;
  }

  private BoardMap map() {
    List<Net> nets = new ArrayList<>();
    pinsOn.forEach(
        (name, pins) -> {
          List<Net.Member> members = new ArrayList<>();
          pins.forEach(
              pin -> members.add(new Net.Member(PinRef.parse(pin), List.of(says(Evidence.SEEN)))));
          Net net = Net.named(new NetId(name)).withMembers(members);
          nets.add(
              name.equals(EARTH)
                  ? net.withPotential(new Potential(Potential.Nature.EARTH, 0))
                  : net);
        });
    return BoardMapSamples.blank().withParts(Table.of(parts)).withNets(Table.of(nets));
  }
}
