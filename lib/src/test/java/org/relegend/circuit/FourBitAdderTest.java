package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * The published adder: facts from the reference notes on standards, section 9, and lists by hand.
 */
class FourBitAdderTest {
  private static final BoardMap MAP = FourBitAdder.map();
  private static final Circuit CIRCUIT = Circuit.of(MAP);

  /** Section 9: 36 NAND; 180 Q, 108 D, 149 R, 9 V = 446 parts; 262 nets with ground. */
  @Test
  void theDeck_hasThePublishedCounts() {
    assertThat(MAP.parts()).hasSize(446);
    assertThat(MAP.nets()).hasSize(262);
    Map<String, Long> kinds =
        MAP.parts().stream().collect(Collectors.groupingBy(Part::kind, Collectors.counting()));
    assertThat(kinds)
        .isEqualTo(Map.of("npn", 180L, "diode", 108L, "resistor", 149L, "power-supply", 9L));
    assertThat(FourBitAdder.oneBit().parts()).hasSize(108);
    assertThat(FourBitAdder.oneBit().nets()).as("67 and ground").hasSize(68);
    assertThat(CIRCUIT.faults()).isEmpty();
  }

  /**
   * Section 9, with sources: 414 part classes, all nets distinct, clamp diodes in parallel only.
   */
  @Test
  void theDeck_withSources_hasThePublishedClasses() {
    AlikeClasses classes = new AlikeClasses(MAP);
    assertThat(classes.parts()).hasSize(414);
    assertThat(classes.nets()).hasSize(262);
    List<List<PartId>> shared = classes.parts().stream().filter(c -> c.size() > 1).toList();
    assertThat(shared).hasSize(24);
    for (List<PartId> parallel : shared) {
      assertThat(parallel).allMatch(part -> MAP.part(part).orElseThrow().note().endsWith("CLAMP"));
      assertThat(parallel.stream().map(CIRCUIT::netsOf).distinct()).hasSize(1);
    }
  }

  /** Section 9, without sources: 349 part classes, 230 net classes, sizes 60x2 8x3 4x4. */
  @Test
  void theDeck_withoutSources_hasThePublishedClasses() {
    AlikeClasses classes = new AlikeClasses(FourBitAdder.withoutSources());
    assertThat(classes.parts()).hasSize(349);
    assertThat(classes.nets()).hasSize(230);
    Map<Integer, Long> sizes =
        classes.parts().stream().collect(Collectors.groupingBy(List::size, Collectors.counting()));
    assertThat(sizes).containsEntry(2, 60L).containsEntry(3, 8L).containsEntry(4, 4L).hasSize(4);
  }

  /**
   * Section 9, one NAND alone: 10 classes of 12 parts, the inputs' transistors and clamps paired.
   */
  @Test
  void oneNand_hasThePublishedClasses() {
    BoardMap nand = FourBitAdder.nand();
    assertThat(new AlikeClasses(nand).parts())
        .hasSize(10)
        .contains(List.of(new PartId("Q1"), new PartId("Q2")))
        .contains(List.of(new PartId("D1"), new PartId("D2")));
  }

  /** Counted by hand from the deck: pins of each kind of node, times how often it occurs. */
  @Test
  void pinCountsByDegree() {
    Map<Integer, Integer> degrees = new TreeMap<>();
    for (Net net : MAP.nets()) {
      degrees.merge(CIRCUIT.joined(net.id()).pins().size(), 1, Integer::sum);
    }
    assertThat(degrees)
        .isEqualTo(
            Map.of(
                2,
                36 * 2, // in each NAND: nodes 7 and 10
                3,
                36 * 4 + 5, // in each NAND: 5, 6, 8, 9; and the five loads
                4,
                4 * 4, // in each ONEBIT: 8, 9, 12, 13
                5,
                8, // the inputs: source and two gate inputs
                6,
                4 + 3, // in each ONEBIT: 10; and the three inner carries
                8,
                4 * 2, // in each ONEBIT: 7 and 11
                109,
                1, // the supply
                162,
                1)); // ground
    assertThat(degrees.entrySet().stream().mapToInt(e -> e.getKey() * e.getValue()).sum())
        .isEqualTo(180 * 3 + 108 * 2 + 149 * 2 + 9 * 2);
  }

  /** Lists read off the deck by hand. */
  @Test
  void joined_chosenNodes_areAsReadFromTheDeck() {
    joined("1", "VIN1A +", at("X1 Q1 E"), at("X1 D1CLAMP K"), at("X2 Q1 E"), at("X2 D1CLAMP K"));
    joined("2", "VIN1B +", at("X1 Q2 E"), at("X1 D2CLAMP K"), at("X3 Q1 E"), at("X3 D1CLAMP K"));
    joined("X1.X1.X1.X1.9", at("X1 Q1 C"), at("X1 Q2 C"), at("X1 Q3 B"));
    joined("X1.X1.X1.X1.8", at("X1 Q3 E"), at("X1 R2 1"), at("X1 Q5 B"));
    joined("X1.X1.X1.X1.10", at("X1 Q4 E"), at("X1 DVBEDROP A"));
    joined(
        "X1.X1.X1.7", // first gate's output, to the second inputs of three others
        at("X1 DVBEDROP K"),
        at("X1 Q5 C"),
        at("X2 Q2 E"),
        at("X2 D2CLAMP K"),
        at("X3 Q2 E"),
        at("X3 D2CLAMP K"),
        at("X9 Q2 E"),
        at("X9 D2CLAMP K"));
    joined("9", "RBIT0 1", at("X8 DVBEDROP K"), at("X8 Q5 C"));
    joined(
        "X1.X1.10", // carry of the first bit into the second
        at("X9 DVBEDROP K"),
        at("X9 Q5 C"),
        "X1.X1.X2.X5.Q1 E",
        "X1.X1.X2.X5.D1CLAMP K",
        "X1.X1.X2.X6.Q1 E",
        "X1.X1.X2.X6.D1CLAMP K");
    joined(
        "X1.16", // carry of the lower half into the upper
        "X1.X1.X2.X9.DVBEDROP K",
        "X1.X1.X2.X9.Q5 C",
        "X1.X2.X1.X5.Q1 E",
        "X1.X2.X1.X5.D1CLAMP K",
        "X1.X2.X1.X6.Q1 E",
        "X1.X2.X1.X6.D1CLAMP K");
    joined("13", "RCOUT 1", "X1.X2.X2.X9.DVBEDROP K", "X1.X2.X2.X9.Q5 C");
  }

  /** The carry into the lowest bit is tied to ground. */
  @Test
  void joined_ground_holdsTheFirstCarryIn() {
    assertThat(CIRCUIT.joined(new NetId("0")).pins())
        .map(JoinedPin::pin)
        .contains(
            FourBitAdder.deck().pin("X1.X1.X1.X5.Q1", "E"),
            FourBitAdder.deck().pin("X1.X1.X1.X6.D1CLAMP", "K"))
        .doesNotContain(FourBitAdder.deck().pin("X1.X1.X2.X5.Q1", "E"));
  }

  @Test
  void sectionsAndRoles_comeFromTheKinds() {
    JoinedPin base =
        CIRCUIT.joined(new NetId("X1.X1.X1.X1.8")).pins().stream()
            .filter(pin -> pin.pin().pin().equals("B"))
            .findFirst()
            .orElseThrow();
    assertThat(base.role()).isEqualTo("base");
    assertThat(base.sections()).isEmpty();
  }

  /** "X1 Q1 E" in the first bit, whose gates stand under X1.X1.X1. */
  private static String at(String gateAndPin) {
    return "X1.X1.X1." + gateAndPin.replaceFirst(" ", ".");
  }

  private static void joined(String net, String... pins) {
    List<PinRef> expected =
        Arrays.stream(pins)
            .map(pin -> pin.split(" "))
            .map(pin -> FourBitAdder.deck().pin(pin[0], pin[1]))
            .toList();
    assertThat(CIRCUIT.joined(new NetId(net)).pins())
        .as(net)
        .map(JoinedPin::pin)
        .containsExactlyInAnyOrderElementsOf(expected);
  }
}
