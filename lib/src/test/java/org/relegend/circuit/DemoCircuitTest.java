package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** The demo instrument; expected lists are those of its own tables, made apart from this code. */
class DemoCircuitTest {
  private static final Circuit CIRCUIT = Circuit.of(DemoMap.map());

  static List<CSVRecord> nets() {
    return DemoMap.rows("demo-nets.csv");
  }

  @ParameterizedTest
  @MethodSource("nets")
  void joined_eachNet_isWhatTheTableSays(CSVRecord net) {
    JoinedList joined = CIRCUIT.joined(new NetId(net.get("net")));
    assertThat(names(joined)).containsExactlyInAnyOrder(net.get("pins").split(" "));
    assertThat(joined.pins()).hasSize(Integer.parseInt(net.get("pin count")));
    for (JoinedPin pin : joined.pins()) {
      assertThat(names(CIRCUIT.joined(pin.pin()))).isEqualTo(names(joined));
    }
  }

  @Test
  void joined_allNets_areAllPinsOnce() {
    assertThat(nets()).hasSize(67);
    assertThat(nets().stream().mapToInt(net -> net.get("pins").split(" ").length).sum())
        .isEqualTo(259);
    assertThat(CIRCUIT.faults()).isEmpty();
  }

  /** First story of the practice notes: these pins and no others. */
  @Test
  void joined_attenuatorAndMirror() {
    assertThat(names(CIRCUIT.joined(new NetId("A_ATT")))).containsExactly("C102.-", "R106.1");
    assertThat(names(CIRCUIT.joined(new NetId("A_MIR"))))
        .containsExactly("R112.2", "U101.6", "U101.9", "U101.11", "U101.14");
  }

  @Test
  void joined_tellsAllOfAPin() {
    JoinedPin pin = pin("A_TAIL", "U101.3");
    assertThat(pin.sections()).containsExactly("Ta", "Tb");
    assertThat(pin.role()).isEqualTo("Ta+Tb emitters");
    assertThat(pin.terminals()).map(Terminal::role).containsOnly("emitter");
    assertThat(pin.value()).isEqualTo("five-NPN array, 14-pin");
    assertThat(pin.board()).contains(BoardMapSamples.MAIN);
    assertThat(pin.twins()).containsExactly(Subject.of(new PartId("U201")));
    assertThat(pin.evidence()).contains(Evidence.SEEN);
    assertThat(pin.drawn()).isEmpty();
    assertThat(pin.through()).isEmpty();
    assertThat(pin("VN", "U101.13").sections()).containsExactly("Te");
    assertThat(pin("VN", "U102.4").sections()).isEmpty();
    assertThat(pin("A_E1", "R105.1").twins()).containsExactly(Subject.of(new PartId("R205")));
    assertThat(pin("B_METER", "R225.2").twins()).isEmpty();
  }

  /** Ninth story: the halves of the op-amp are exchanged on the board, both channels, 12 pins. */
  @Test
  void joined_followsTheCopperAndSaysWhereTheDrawingDiffers() throws NodeNameException {
    NodeName name = new NodeNames(CIRCUIT).find("U102 pin 7");
    JoinedList joined = CIRCUIT.joined(name, PassageOptions.NOTHING);
    assertThat(joined.nets()).containsExactly(new NetId("A_DOUT"));
    JoinedPin seven =
        joined.pins().stream()
            .filter(pin -> pin.pin().equals(PinRef.parse("U102.7")))
            .findFirst()
            .orElseThrow();
    assertThat(seven.drawn().orElseThrow().drawn()).isEqualTo("A_BUFOUT");
    assertThat(seven.drawn().orElseThrow().evidence().get(0).evidence())
        .isEqualTo(Evidence.MEASURED);
    assertThat(names(joined.alsoDrawnHere())).containsExactly("U102.1");

    JoinedList byDrawing = CIRCUIT.joined(new NetId("A_BUFOUT"));
    assertThat(names(byDrawing)).doesNotContain("U102.7");
    assertThat(names(byDrawing.alsoDrawnHere())).containsExactly("U102.6", "U102.7");
    assertThat(byDrawing.alsoDrawnHere().get(1).nets()).containsExactly(new NetId("A_DOUT"));

    Set<String> differing = new TreeSet<>();
    CIRCUIT
        .map()
        .nets()
        .forEach(
            net ->
                CIRCUIT.joined(net.id()).pins().stream()
                    .filter(pin -> pin.drawn().isPresent())
                    .forEach(pin -> differing.add(pin.pin().toString())));
    assertThat(differing).hasSize(12);
  }

  @Test
  void joined_throughFuseAndSwitch_isTheWholeMainsSide() {
    JoinedList live = CIRCUIT.joined(new NetId("MAINS_L_IN"), PassageOptions.ALL);
    assertThat(names(live))
        .containsExactlyInAnyOrder(
            "J1.L", "F1.1", "F1.2", "SW1.1", "SW1.2", "C1.1", "R1.1", "T1.1");
    JoinedPin primary =
        live.pins().stream()
            .filter(pin -> pin.pin().equals(PinRef.parse("T1.1")))
            .findFirst()
            .orElseThrow();
    assertThat(primary.through())
        .containsExactly(
            new Pass(PinRef.parse("F1.1"), PinRef.parse("F1.2"), Passage.FUSE),
            new Pass(PinRef.parse("SW1.1"), PinRef.parse("SW1.2"), Passage.SWITCH));
    assertThat(primary.weakest()).contains(Evidence.SEEN);

    PassageOptions open = PassageOptions.ALL.withPosition(new PartId("SW1"), PassageOptions.OPEN);
    assertThat(names(CIRCUIT.joined(new NetId("MAINS_L_IN"), open)))
        .containsExactlyInAnyOrder("J1.L", "F1.1", "F1.2", "SW1.1");
    assertThat(CIRCUIT.joined(new NetId("MAINS_L_IN"), PassageOptions.of(Passage.FUSE)).nets())
        .containsExactly(new NetId("MAINS_L_IN"), new NetId("MAINS_L_FUSED"));
  }

  @Test
  void neighbours() {
    assertThat(CIRCUIT.partsOn(new NetId("A_MIR")))
        .containsExactly(new PartId("R112"), new PartId("U101"));
    assertThat(CIRCUIT.sectionsOn(new NetId("A_MIR")))
        .map(Subject::toString)
        .containsExactlyInAnyOrder("R112", "U101/Tc", "U101/Td", "U101/Te");
    assertThat(CIRCUIT.netsOf(new PartId("Q101")))
        .containsExactly(new NetId("A_B1"), new NetId("A_C1"), new NetId("A_E1"));
    assertThat(CIRCUIT.netsOf(new PartId("U101"), "Ta"))
        .containsExactly(new NetId("A_TAIL"), new NetId("A_VB1"), new NetId("A_VC1"));
    assertThat(CIRCUIT.netsOf(new PartId("U101"), "Tz")).isEmpty();
    assertThat(CIRCUIT.nodesOf(PinRef.parse("Q101.B"))).containsExactly(Node.of(new NetId("A_B1")));
  }

  /** Sixth story: between the last good node and the first bad one lies C102 alone. */
  @Test
  void between_lastGoodAndFirstBad_liesOnePart() {
    Set<String> rails = Set.of("VP", "VN", "0V", "THR");
    Subnetwork stretch =
        CIRCUIT.between(
            Node.of(new NetId("A_C1")),
            Node.of(new NetId("A_ATT")),
            step -> !rails.contains(step.to().subject().toString().replace("net:", "")));
    assertThat(stretch.parts()).containsExactly(new PartId("C102"));
    assertThat(
            CIRCUIT
                .between(
                    Node.of(new NetId("A_IN")),
                    Node.of(new NetId("A_C1")),
                    step -> !rails.contains(step.to().subject().toString().replace("net:", "")))
                .parts())
        .containsExactly(new PartId("C101"), new PartId("Q101"));
  }

  /**
   * What direct current from the mains can get to: the transformer isolates, the jacks lie beyond.
   */
  @Test
  void reach_fromTheMains_stopsAtTheTransformer() {
    ReachableNodes reach =
        CIRCUIT.reach(
            List.of(Node.of(PinRef.parse("X.1")), Node.of(new NetId("MAINS_L_IN"))),
            step -> step.conduction().passesDirect());
    assertThat(reach.nodes())
        .map(node -> node.subject().toString())
        .containsExactly(
            "X.1",
            "net:MAINS_L_IN",
            "net:MAINS_L_FUSED",
            "net:MAINS_L_SW",
            "net:MAINS_N_SW",
            "net:MAINS_N_IN");
    assertThat(reach.refused()).map(step -> step.in().part().text()).containsOnly("C1");
    assertThat(reach.wayTo(Node.of(new NetId("MAINS_L_SW"))))
        .map(NodeStep::in)
        .map(PinRef::toString)
        .containsExactly("F1.1", "SW1.1");
  }

  private static JoinedPin pin(String net, String pin) {
    return CIRCUIT.joined(new NetId(net)).pins().stream()
        .filter(joined -> joined.pin().equals(PinRef.parse(pin)))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> names(JoinedList joined) {
    return names(joined.pins());
  }

  private static List<String> names(List<JoinedPin> pins) {
    return pins.stream().map(pin -> pin.pin().toString()).toList();
  }
}
