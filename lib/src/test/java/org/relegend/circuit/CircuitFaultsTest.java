package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Section;
import org.relegend.map.Seeds;
import org.relegend.map.Subject;
import org.relegend.map.Table;

/** Maps that people got wrong: answered as far as it goes, reported, never an exception. */
class CircuitFaultsTest {
  @Test
  void pinOnTwoNets_isReportedAndBothAreSaid() {
    BoardMap map = with(blank(), twoPin("R1", "resistor", "1k"), twoPin("R2", "resistor", "1k"));
    map = with(map, net("A", "R1.1", "R2.1"), net("B", "R1.1", "R2.2"));
    Circuit circuit = Circuit.of(map);
    assertThat(circuit.faults())
        .containsExactly(
            new CircuitFault(
                CircuitFault.Sort.PIN_ON_SEVERAL_NETS,
                List.of(
                    Subject.of(PinRef.parse("R1.1")),
                    Subject.of(new NetId("A")),
                    Subject.of(new NetId("B"))),
                "pin R1.1 stands on A and B"));
    JoinedList one = circuit.joined(new NetId("A"));
    assertThat(one.pins()).map(pin -> pin.pin().toString()).containsExactly("R1.1", "R2.1");
    assertThat(one.pins().get(0).nets()).containsExactly(new NetId("A"), new NetId("B"));
    JoinedList both = circuit.joined(PinRef.parse("R1.1"));
    assertThat(both.nets()).containsExactly(new NetId("A"), new NetId("B"));
    assertThat(both.pins())
        .map(pin -> pin.pin().toString())
        .containsExactly("R1.1", "R2.1", "R2.2");
    assertThat(circuit.steps(Node.of(new NetId("A"))))
        .filteredOn(step -> step.in().equals(step.out()))
        .map(NodeStep::to)
        .containsExactly(Node.of(new NetId("B")));
  }

  @Test
  void missingPartsAndPins_areReportedAndListed() {
    BoardMap map = with(blank(), twoPin("R1", "resistor", "1k"));
    map = with(map, net("A", "R1.1", "R1.3", "X9.1"));
    Circuit circuit = Circuit.of(map);
    assertThat(circuit.faults())
        .map(fault -> fault.sort() + ": " + fault.message())
        .containsExactly(
            "NO_SUCH_PIN: net A has pin R1.3, but part R1 has no pin 3",
            "NO_SUCH_PART: net A has pin X9.1, but the map has no part X9");
    JoinedPin missing = circuit.joined(PinRef.parse("X9.1")).pins().get(2);
    assertThat(missing.part()).isEmpty();
    assertThat(missing.designator()).isEqualTo("X9");
    assertThat(missing.value()).isEmpty();
    assertThat(missing.board()).isEmpty();
    assertThat(circuit.partsOn(new NetId("A"))).contains(new PartId("X9"));
  }

  @Test
  void matingWithAMissingPart_isReported() {
    BoardMap map = with(with(blank(), part("J1", "connector", "", "1")), net("A", "J1.1"));
    map =
        map.with(
            MapTables.MATINGS, Table.of(List.of(new Mating(new PartId("J1"), new PartId("P9")))));
    Circuit circuit = Circuit.of(map);
    assertThat(circuit.faults())
        .map(CircuitFault::message)
        .containsExactly("J1 is plugged into P9, which the map hasn't got");
    assertThat(circuit.joined(new NetId("A"), PassageOptions.ALL).pins()).hasSize(1);
  }

  @Test
  void matingOfUnequalConnectors_joinsWhatBothHave() {
    BoardMap map =
        with(blank(), part("J1", "connector", "", "1", "2"), part("P1", "connector", "", "1"));
    map = with(map, net("A", "J1.1", "J1.2"));
    map =
        map.with(
            MapTables.MATINGS, Table.of(List.of(new Mating(new PartId("J1"), new PartId("P1")))));
    assertThat(Circuit.of(map).joined(new NetId("A"), PassageOptions.ALL).pins())
        .map(pin -> pin.pin().toString())
        .containsExactly("J1.1", "J1.2", "P1.1");
  }

  @Test
  void whatIsNotThere_givesEmptyAnswers() {
    Circuit circuit = Circuit.of(blank());
    JoinedList nothing = new JoinedList(List.of(), List.of(), List.of(), List.of());
    assertThat(circuit.joined(new NetId("A"))).isEqualTo(nothing);
    assertThat(circuit.joined(new NetId("A"), PassageOptions.ALL)).isEqualTo(nothing);
    assertThat(circuit.joined(PinRef.parse("R1.1"), PassageOptions.ALL)).isEqualTo(nothing);
    assertThat(circuit.netsOf(new PartId("R1"))).isEmpty();
    assertThat(circuit.partsOn(new NetId("A"))).isEmpty();
    assertThat(circuit.kindOf(new PartId("R1"))).isEmpty();
    assertThat(circuit.positionsOf(new PartId("R1"))).isEmpty();
    assertThat(circuit.faults()).isEmpty();
    assertThat(
            circuit.between(Node.of(new NetId("A")), Node.of(new NetId("B")), step -> true).parts())
        .isEmpty();
  }

  @Test
  void partOfUnknownKind_mayLeadAnywhere() {
    BoardMap map = with(blank(), part("Z1", "gizmo", "", "1", "2", "3"), twoPin("R1", "", ""));
    map = with(map, net("A", "Z1.1", "R1.1"), net("B", "Z1.2"));
    Circuit circuit = Circuit.of(map);
    assertThat(circuit.steps(Node.of(new NetId("A"))))
        .allMatch(step -> step.conduction() == Conduction.UNKNOWN)
        .map(step -> step.to().subject().toString())
        .containsExactlyInAnyOrder("net:B", "Z1.3", "R1.2");
    assertThat(circuit.joined(new NetId("A"), PassageOptions.ALL).nets()).hasSize(1);
  }

  /** Transistors with numbered pins have no one pinout: each pin may be any. */
  @Test
  void transistorOfUnknownPinout_mayLeadAnywhere() {
    BoardMap map = with(blank(), part("Q1", "npn", "", "1", "2", "3"));
    assertThat(Circuit.of(map).steps(Node.of(PinRef.parse("Q1.1"))))
        .hasSize(2)
        .allMatch(step -> step.conduction() == Conduction.UNKNOWN);
  }

  static LongStream seeds() {
    return Seeds.upTo(100);
  }

  /** Nets, sections, matings, discrepancies of anything at all. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anyMap_isAnswered(long seed) {
    Random random = new Random(seed);
    List<Kind> kinds = List.copyOf(Kinds.standard().all());
    BoardMap map = blank();
    for (int i = 0; i < 12; i++) {
      String[] numbers = {"1", "A", "+", "A1", "14"};
      Part part =
          part(
              "P" + random.nextInt(12),
              random.nextInt(5) == 0 ? "odd" : kinds.get(random.nextInt(kinds.size())).name(),
              "0",
              List.of(numbers).subList(0, random.nextInt(6)).toArray(new String[0]));
      if (random.nextInt(3) == 0) {
        Section odd = new Section("odd", java.util.Map.of("77", "end", "1", "fizz"));
        part = part.withPins(part.pins(), List.of(odd));
      }
      map = with(map, part);
      Net net = net("N" + random.nextInt(6), "P" + random.nextInt(14) + ".1", "P20.A1");
      map = with(map, net);
      int a = random.nextInt(14);
      Mating mating = new Mating(new PartId("P" + a), new PartId("P" + (a + 1)));
      map = map.with(MapTables.MATINGS, map.matings().with(mating));
      DrawingDiscrepancy drawn =
          new DrawingDiscrepancy(
              Subject.of(PinRef.parse("P" + random.nextInt(14) + ".1")),
              DrawingDiscrepancy.Aspect.NET,
              List.of("", "\"", "N" + random.nextInt(9)).get(random.nextInt(3)),
              List.of(says(Evidence.SEEN)),
              "");
      map = map.with(MapTables.DISCREPANCIES, map.discrepancies().with(drawn));
    }
    Circuit circuit = Circuit.of(map);
    assertThat(circuit.faults()).isNotEmpty();
    for (String drawn : circuit.drawnOnlyNets()) {
      NodeName name = new NodeName.OfDrawnNet(drawn);
      assertThat(circuit.joined(name, PassageOptions.ALL).alsoDrawnHere()).isNotEmpty();
    }
    for (Net net : map.nets()) {
      assertThat(circuit.joined(net.id(), PassageOptions.ALL).pins()).isNotEmpty();
      net.pins()
          .forEach(pin -> assertThat(circuit.joined(pin, PassageOptions.ALL).pins()).isNotEmpty());
      ReachableNodes reach = circuit.reach(List.of(Node.of(net.id())), step -> true);
      reach.nodes().forEach(node -> assertThat(reach.wayTo(node)).hasSizeLessThan(200));
      Subnetwork stretch =
          circuit.between(Node.of(net.id()), Node.of(new NetId("N1")), step -> true);
      assertThat(reach.nodes()).containsAll(stretch.nodes());
    }
  }
}
