package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Seeds;
import org.relegend.map.Table;

/**
 * What is joined, worked out twice: by the circuit, and by merging sets of pins in the plainest
 * way.
 */
class CircuitLawsTest {
  /**
   * A kind with its pins, and which of them are one when it is passed, in position "" or another.
   */
  private record Sort(
      String kind, String value, Passage passage, List<String> pins, Map<String, String> closes) {}

  private static final List<Sort> SORTS =
      List.of(
          new Sort("resistor", "4k7", Passage.LINK, List.of("1", "2"), Map.of()),
          new Sort("resistor", "0R", Passage.ZERO_OHM, List.of("1", "2"), Map.of("", "1-2")),
          new Sort("zero-ohm", "", Passage.ZERO_OHM, List.of("1", "2"), Map.of("", "1-2")),
          new Sort("link", "", Passage.LINK, List.of("1", "2"), Map.of("", "1-2")),
          new Sort("fuse", "T100mA", Passage.FUSE, List.of("1", "2"), Map.of("", "1-2")),
          new Sort("npn", "", Passage.LINK, List.of("E", "B", "C"), Map.of()),
          new Sort("cap", "0", Passage.ZERO_OHM, List.of("1", "2"), Map.of()),
          new Sort("switch-spst", "", Passage.SWITCH, List.of("1", "2"), Map.of("on", "1-2")),
          new Sort(
              "switch-dpst",
              "",
              Passage.SWITCH,
              List.of("1", "2", "3", "4"),
              Map.of("on", "1-2 3-4")),
          new Sort(
              "switch-spdt",
              "",
              Passage.SWITCH,
              List.of("1", "2", "3"),
              Map.of("1", "1-2", "2", "2-3")),
          new Sort(
              "relay",
              "",
              Passage.RELAY,
              List.of("A1", "A2", "11", "12", "14"),
              Map.of("off", "11-12", "on", "11-14")),
          new Sort("connector", "", Passage.CONNECTOR, List.of("1", "2", "3"), Map.of()));

  private static final Map<String, String> RELAY =
      Map.of(
          "A1",
          "coil",
          "A2",
          "coil",
          "11",
          "contact common",
          "12",
          "contact break",
          "14",
          "contact make");

  static LongStream seeds() {
    return Seeds.upTo(300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void joined_agreesWithMergingSetsOfPins(long seed) {
    Random random = new Random(seed);
    Map<PartId, Sort> sorts = new HashMap<>();
    BoardMap map = map(random, sorts);
    PassageOptions through = through(random, sorts);
    Circuit circuit = Circuit.of(map);
    Map<String, Set<String>> expected = merged(map, sorts, through);
    assertThat(circuit.faults()).isEmpty();
    for (Part part : map.parts()) {
      for (Pin pin : part.pins()) {
        JoinedList joined = circuit.joined(part.ref(pin), through);
        Set<String> pins = new TreeSet<>();
        joined.pins().forEach(found -> assertThat(pins.add(found.pin().toString())).isTrue());
        assertThat(pins).isEqualTo(expected.get(part.ref(pin).toString()));
        joined.pins().forEach(found -> checkWay(found, through));
      }
    }
    for (Net net : map.nets()) {
      JoinedList joined = circuit.joined(net.id(), through);
      assertThat(joined.nets().get(0)).isEqualTo(net.id());
      if (!net.pins().isEmpty()) {
        assertThat(joined.pins()).hasSameSizeAs(expected.get(net.pins().get(0).toString()));
        assertThat(circuit.joined(net.id()).pins()).map(JoinedPin::pin).isEqualTo(net.pins());
      }
    }
  }

  /** Each way passes only what it may, and hangs together from pass to pass. */
  private static void checkWay(JoinedPin pin, PassageOptions through) {
    assertThat(through.passages()).containsAll(pin.through().stream().map(Pass::passage).toList());
    assertThat(pin.through().stream().map(Pass::in).distinct()).hasSameSizeAs(pin.through());
  }

  private static BoardMap map(Random random, Map<PartId, Sort> sorts) {
    List<Part> parts = new ArrayList<>();
    int netCount = 4 + random.nextInt(20);
    List<List<Net.Member>> members = new ArrayList<>();
    for (int i = 0; i < netCount; i++) {
      members.add(new ArrayList<>());
    }
    for (int i = 1; i <= 5 + random.nextInt(25); i++) {
      Sort sort = SORTS.get(random.nextInt(SORTS.size()));
      Part part = part("P" + i, sort);
      parts.add(part);
      sorts.put(part.id(), sort);
      for (Pin pin : part.pins()) {
        if (random.nextInt(8) > 0) { // the others stay loose
          members.get(random.nextInt(netCount)).add(new Net.Member(part.ref(pin), List.of()));
        }
      }
    }
    List<Net> nets = new ArrayList<>();
    for (int i = 0; i < netCount; i++) {
      nets.add(Net.named(new NetId("N" + i)).withMembers(members.get(i)));
    }
    List<PartId> connectors =
        parts.stream().filter(p -> p.kind().equals("connector")).map(Part::id).toList();
    Set<Mating> matings = new TreeSet<>();
    for (int i = 1; i < connectors.size(); i++) {
      if (random.nextBoolean()) {
        matings.add(new Mating(connectors.get(i - 1), connectors.get(i)));
      }
    }
    return BoardMapSamples.blank()
        .with(MapTables.PARTS, Table.of(parts))
        .with(MapTables.NETS, Table.of(nets))
        .with(MapTables.MATINGS, Table.of(matings));
  }

  /** With roles at a relay, whose numbers alone tell nothing. */
  private static Part part(String name, Sort sort) {
    Part part =
        BoardMapSamples.part(name, sort.kind(), sort.value(), sort.pins().toArray(new String[0]));
    return sort.kind().equals("relay")
        ? part.withPins(
            part.pins().stream()
                .map(pin -> new Pin(pin.number(), RELAY.get(pin.number())))
                .toList(),
            part.sections())
        : part;
  }

  private static PassageOptions through(Random random, Map<PartId, Sort> sorts) {
    PassageOptions through = PassageOptions.ALL;
    for (Passage passage : Passage.values()) {
      through = random.nextInt(4) == 0 ? through.without(passage) : through;
    }
    for (Map.Entry<PartId, Sort> entry : sorts.entrySet()) {
      List<String> positions = new ArrayList<>(entry.getValue().closes().keySet());
      positions.remove("");
      if (!positions.isEmpty() && random.nextInt(4) > 0) {
        positions.add(PassageOptions.OPEN);
        through =
            through.withPosition(entry.getKey(), positions.get(random.nextInt(positions.size())));
      }
    }
    return through;
  }

  private static Map<String, Set<String>> merged(
      BoardMap map, Map<PartId, Sort> sorts, PassageOptions through) {
    Map<String, Set<String>> sets = new HashMap<>();
    for (Part part : map.parts()) {
      part.pins().forEach(pin -> sets.put(part.ref(pin).toString(), own(part.ref(pin))));
    }
    for (Net net : map.nets()) {
      for (PinRef pin : net.pins()) {
        merge(sets, net.pins().get(0).toString(), pin.toString());
      }
    }
    sorts.forEach(
        (part, sort) -> {
          String rest =
              sort.kind().startsWith("switch-spst") || sort.kind().equals("switch-dpst")
                  ? "on"
                  : "";
          String position = through.positions().getOrDefault(part, rest);
          String pairs = sort.closes().getOrDefault(position, "");
          if (through.passes(sort.passage()) && !pairs.isEmpty()) {
            for (String pair : pairs.split(" ")) {
              String[] two = pair.split("-");
              merge(sets, part + "." + two[0], part + "." + two[1]);
            }
          }
        });
    if (through.passes(Passage.CONNECTOR)) {
      for (Mating mating : map.matings()) {
        for (String number : List.of("1", "2", "3")) {
          merge(sets, mating.a() + "." + number, mating.b() + "." + number);
        }
      }
    }
    return sets;
  }

  private static Set<String> own(PinRef pin) {
    return new TreeSet<>(Set.of(pin.toString()));
  }

  private static void merge(Map<String, Set<String>> sets, String a, String b) {
    Set<String> into = sets.get(a);
    Set<String> other = sets.get(b);
    if (into != other) {
      into.addAll(other);
      other.forEach(pin -> sets.put(pin, into));
    }
  }
}
