package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Table;

class ExtendedNodeTest {
  private static final NetId A = new NetId("A");

  /**
   * A fuse holder's net A, through a fuse and a connector to another board, where a link goes on.
   */
  private static BoardMap twoBoards() {
    BoardMap map =
        with(
            blank(),
            twoPin("F1", "fuse", "1A"),
            part("J1", "connector", "", "1", "2"),
            part("P1", "connector", "", "1", "2"),
            twoPin("W1", "link", ""),
            twoPin("R1", "resistor", "4k7"));
    map =
        with(
            map,
            net("A", "F1.1"),
            net("B", "F1.2", "J1.1"),
            net("C", "P1.1", "W1.1"),
            net("D", "W1.2", "R1.1"));
    return map.with(
        MapTables.MATINGS, Table.of(List.of(new Mating(new PartId("J1"), new PartId("P1")))));
  }

  @Test
  void joined_saysPerPinWhatWasPassed() {
    JoinedList joined = Circuit.of(twoBoards()).joined(A, PassageOptions.ALL);
    assertThat(joined.nets()).map(NetId::text).containsExactly("A", "B", "C", "D");
    assertThat(joined.pins())
        .map(pin -> pin.pin() + " " + pin.through().stream().map(Pass::passage).toList())
        .containsExactly(
            "F1.1 []",
            "F1.2 [FUSE]",
            "J1.1 [FUSE]",
            "P1.1 [FUSE, CONNECTOR]",
            "W1.1 [FUSE, CONNECTOR]",
            "R1.1 [FUSE, CONNECTOR, LINK]",
            "W1.2 [FUSE, CONNECTOR, LINK]");
  }

  @ParameterizedTest
  @CsvSource({"FUSE,1", "CONNECTOR,3", "LINK,5", "SWITCH,7"})
  void joined_withoutOneKind_stopsThere(Passage off, int pins) {
    assertThat(Circuit.of(twoBoards()).joined(A, PassageOptions.ALL.without(off)).pins())
        .hasSize(pins);
  }

  @Test
  void joined_looseFarSide_isShown() {
    BoardMap map = twoBoards();
    map = map.with(MapTables.NETS, map.nets().without(new NetId("C")).without(new NetId("D")));
    JoinedList joined = Circuit.of(map).joined(PinRef.parse("F1.1"), PassageOptions.ALL);
    assertThat(joined.nets()).map(NetId::text).containsExactly("A", "B");
    assertThat(joined.pins()).map(pin -> pin.pin().toString()).contains("P1.1");
    assertThat(joined.pins().get(3).nets()).isEmpty();
    assertThat(Circuit.of(map).joined(PinRef.parse("P1.1"), PassageOptions.ALL).pins()).hasSize(4);
    assertThat(Circuit.of(map).joined(PinRef.parse("W1.2"), PassageOptions.NOTHING).pins())
        .hasSize(1);
  }

  @Test
  void joined_weakest_isTheWeakestLinkOfTheWay() {
    BoardMap map = twoBoards();
    Net b =
        Net.named(new NetId("B"))
            .withMembers(
                List.of(
                    new Net.Member(PinRef.parse("F1.2"), List.of(says(Evidence.MEASURED))),
                    new Net.Member(PinRef.parse("J1.1"), List.of(says(Evidence.GUESSED)))));
    Net c = map.net(new NetId("C")).orElseThrow();
    Net unknown =
        Net.named(new NetId("D"))
            .withMembers(List.of(new Net.Member(PinRef.parse("W1.2"), List.of())));
    map = map.with(MapTables.NETS, map.nets().withAll(List.of(b, c, unknown)));
    List<JoinedPin> pins = Circuit.of(map).joined(A, PassageOptions.ALL).pins();
    assertThat(pins)
        .map(pin -> pin.pin() + " " + pin.weakest().map(Evidence::word).orElse("unknown"))
        .containsExactly(
            "F1.1 inferred",
            "F1.2 inferred",
            "J1.1 guessed",
            "P1.1 guessed",
            "W1.1 guessed",
            "W1.2 unknown");
    assertThat(pins.get(1).evidence()).contains(Evidence.MEASURED);
  }

  @Test
  void joined_changeoverWithoutPosition_isUndecided() {
    BoardMap map = with(blank(), part("S1", "switch-spdt", "", "1", "2", "3"));
    map = with(map, net("A", "S1.2"), net("B", "S1.1"), net("C", "S1.3"));
    Circuit circuit = Circuit.of(map);
    JoinedList open = circuit.joined(A, PassageOptions.ALL);
    assertThat(open.nets()).containsExactly(A);
    assertThat(open.undecided())
        .containsExactly(new JoinedList.Undecided(new PartId("S1"), List.of("1", "2")));
    JoinedList two = circuit.joined(A, PassageOptions.ALL.withPosition(new PartId("S1"), "2"));
    assertThat(two.nets()).containsExactly(A, new NetId("C"));
    assertThat(two.undecided()).isEmpty();
    assertThat(circuit.joined(A, PassageOptions.of(Passage.LINK)).undecided()).isEmpty();
    assertThat(circuit.positionsOf(new PartId("S1"))).containsExactly("1", "2", "open");
  }

  @Test
  void joined_aPositionThePartHasNot_isRefused() {
    Circuit circuit = Circuit.of(twoBoards());
    assertThatThrownBy(
            () -> circuit.joined(A, PassageOptions.ALL.withPosition(new PartId("F1"), "on")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("F1 has no contacts");
    assertThatThrownBy(
            () -> circuit.joined(A, PassageOptions.ALL.withPosition(new PartId("S9"), "on")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("S9");
  }

  @ParameterizedTest
  @CsvSource({
    "0,true",
    "0R,true",
    "0r0,true",
    "R00,true",
    "0 ohm,true",
    "0.0,true",
    "000,true",
    "0Ω,true",
    "0R 0805,true",
    "link,true",
    "0.1,false",
    "0R47,false",
    "R47,false",
    "10R,false",
    "'',false",
    "100,false",
    "0k1,false",
    "linked pair,false"
  })
  void joined_zeroOhm_goesByTheValue(String value, boolean passes) {
    BoardMap map = with(blank(), twoPin("R1", "resistor", value));
    map = with(map, net("A", "R1.1"), net("B", "R1.2"));
    assertThat(Circuit.of(map).joined(A, PassageOptions.of(Passage.ZERO_OHM)).nets())
        .hasSize(passes ? 2 : 1);
  }

  /** A ring of links: every net is found, none twice, and the search ends. */
  @Test
  void joined_ringOfLinks_ends() {
    BoardMap map =
        with(
            blank(),
            twoPin("W1", "link", ""),
            twoPin("W2", "link", ""),
            twoPin("W3", "link", ""),
            twoPin("W4", "link", ""));
    map =
        with(
            map,
            net("A", "W1.1", "W3.2", "W4.1", "W4.2"),
            net("B", "W1.2", "W2.1"),
            net("C", "W2.2", "W3.1"));
    JoinedList joined = Circuit.of(map).joined(A, PassageOptions.ALL);
    assertThat(joined.nets()).hasSize(3);
    assertThat(joined.pins()).hasSize(8);
    assertThat(joined.pins()).allMatch(pin -> pin.through().size() <= 1);
  }

  /** As many links in a row as a map of 100,000 pins can hold. */
  @Test
  void joined_aChainOfLinks_isFollowedToItsEnd() {
    int links = 50_000;
    List<Part> parts = new ArrayList<>();
    List<Net> nets = new ArrayList<>();
    for (int i = 1; i <= links; i++) {
      parts.add(twoPin("W" + i, "link", ""));
      nets.add(i == 1 ? net("N1", "W1.1") : net("N" + i, "W" + (i - 1) + ".2", "W" + i + ".1"));
    }
    Circuit circuit =
        Circuit.of(
            blank().with(MapTables.PARTS, Table.of(parts)).with(MapTables.NETS, Table.of(nets)));
    JoinedList joined = circuit.joined(new NetId("N1"), PassageOptions.ALL);
    assertThat(joined.pins()).hasSize(2 * links);
    JoinedPin last = joined.pins().get(2 * links - 1);
    assertThat(last.through()).hasSize(links);
    assertThat(last.through().get(0).in()).isEqualTo(PinRef.parse("W1.1"));
    assertThat(last.through().get(links - 1).out()).isEqualTo(last.pin());
    Node end = Node.of(PinRef.parse("W" + links + ".2"));
    assertThat(circuit.between(Node.of(new NetId("N1")), end, step -> true).parts()).hasSize(links);
  }
}
