package org.relegend.benchmark;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.relegend.map.Attestation;
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
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Section;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

/**
 * A map as a diligent technician would leave it, only larger: two channels of like parts, sections
 * and roles where parts have them, every pin on a net, bodies on page and photo, pads on the photo,
 * and evidence with it all. The same for one seed.
 */
final class LargeMap {
  private static final List<Evidence> EVIDENCE = List.of(Evidence.values());
  private static final String[] AUTHORS = {"kim", "Sascha B.", "workshop 2"};

  private final Random random;
  private final List<Part> parts = new ArrayList<>();
  private final List<Placement> placements = new ArrayList<>();
  private final List<TwinPair> twins = new ArrayList<>();
  private final List<List<Net.Member>> joined = new ArrayList<>();

  private LargeMap(long seed, int count) {
    random = new Random(seed);
    for (int i = 0; i < count * 3 / 4; i++) {
      joined.add(new ArrayList<>());
    }
    for (int i = 0; i < count; i++) {
      add(part(i));
    }
  }

  static BoardMap of(long seed, int parts) {
    LargeMap made = new LargeMap(seed, parts);
    List<Net> nets = new ArrayList<>();
    for (int i = 0; i < made.joined.size(); i++) {
      Net net = Net.named(new NetId((i % 2 == 0 ? "A_N" : "B_N") + i / 2));
      Potential potential =
          i % 100 == 0 ? new Potential(Potential.Nature.DC, 15) : Potential.UNKNOWN;
      nets.add(net.withMembers(made.joined.get(i)).withPotential(potential));
    }
    return BoardMapSamples.blank()
        .with(MapTables.PARTS, Table.of(made.parts))
        .with(MapTables.NETS, Table.of(nets))
        .with(MapTables.PLACEMENTS, Table.of(made.placements))
        .with(MapTables.TWINS, Table.of(made.twins));
  }

  private Part part(int i) {
    int sort = i / 2 % 10;
    String channel = i % 2 == 0 ? "A" : "B";
    return switch (sort) {
      case 8 -> amplifier(i, channel);
      case 9 -> pins("Q" + i, "npn", "BC550", channel, "collector", "base", "emitter");
      case 7 -> pins("D" + i, "diode", "1N4148", channel, "anode", "cathode");
      case 4, 5, 6 ->
          pins("C" + i, "capacitor", (1 + random.nextInt(99)) + "n 63V", channel, "", "");
      default -> pins("R" + i, "resistor", (1 + random.nextInt(9)) + "k7 0.25W", channel, "", "");
    };
  }

  private static Part pins(
      String name, String kind, String value, String channel, String... roles) {
    List<Pin> pins = new ArrayList<>();
    for (int i = 0; i < roles.length; i++) {
      pins.add(new Pin(Integer.toString(i + 1), roles[i]));
    }
    return Part.named(new PartId(name), new Designator(name), MAIN)
        .withKind(kind)
        .withValue(value)
        .withChannel(channel)
        .withPins(pins, List.of());
  }

  private static Part amplifier(int i, String channel) {
    Part part =
        pins("U" + i, "dual-opamp", "4558", channel, "", "", "", "V-", "", "", "", "V+")
            .withCasing("DIP-8");
    return part.withPins(
        part.pins(), List.of(section("X", "1", "2", "3"), section("Y", "7", "6", "5")));
  }

  private static Section section(String name, String out, String inverting, String other) {
    Map<String, String> roles = new LinkedHashMap<>();
    roles.put(out, "out");
    roles.put(inverting, "in-");
    roles.put(other, "in+");
    return new Section(name, roles);
  }

  private void add(Part part) {
    parts.add(part);
    Subject subject = Subject.of(part.id());
    placements.add(new Placement(PAGE, subject, point(800, 600), says()));
    Point at = point(4000, 3000);
    List<Point> outline =
        List.of(at.plus(-40, -15), at.plus(40, -15), at.plus(40, 15), at.plus(-40, 15));
    placements.add(new Placement(TOP, subject, 1, at, outline, List.of(says())));
    for (Pin pin : part.pins()) {
      joined.get(random.nextInt(joined.size())).add(new Net.Member(part.ref(pin), List.of(says())));
      placements.add(
          new Placement(TOP, Subject.of(part.ref(pin)), at.plus(random.nextInt(40), 0), says()));
    }
    if (parts.size() % 2 == 0) {
      Part other = parts.get(parts.size() - 2);
      twins.add(new TwinPair(Subject.of(other.id()), subject, List.of(says())));
    }
  }

  /** Somewhere, to the tenth of a pixel. */
  private Point point(int width, int height) {
    return new Point(random.nextInt(width * 10) / 10.0, random.nextInt(height * 10) / 10.0);
  }

  private Attestation says() {
    Evidence evidence = EVIDENCE.get(random.nextInt(EVIDENCE.size()));
    String author = AUTHORS[random.nextInt(AUTHORS.length)];
    return new Attestation(evidence, author, NOON.plusSeconds(random.nextInt(30_000_000)));
  }
}
