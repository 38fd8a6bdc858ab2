package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Designator;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

class NodeNamesTest {
  private static final NodeNames DEMO = new NodeNames(Circuit.of(DemoMap.map()));

  @ParameterizedTest
  @CsvSource({
    "A_ATT,net:A_ATT", "a_att,net:A_ATT", " 0V ,net:0V", "net:A_ATT,net:A_ATT", "R106.1,R106.1",
    "r106.1,R106.1", "U102 pin 7,U102.7", "u102 PIN 7,U102.7", "U102 7,U102.7", "U102/7,U102.7",
    "C102.+,C102.+", "C102.-,C102.-", "q101.b,Q101.B", "Q101 base,Q101.B", "Q101.collector,Q101.C",
    "RV101.wiper,RV101.W", "U102.out Y,U102.7", "pin:R106.1,R106.1", "BR1.plus,BR1.PLUS"
  })
  void find_takesWhatPeopleWrite(String text, String node) throws NodeNameException {
    NodeName found = DEMO.find(text);
    String read =
        found instanceof NodeName.OfNet net
            ? "net:" + net.net()
            : ((NodeName.OfPin) found).pin().toString();
    assertThat(read).isEqualTo(node);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A_ATTT|did you mean A_ATT",
        "A-ATT|did you mean A_ATT",
        "B_MTER|B_METER",
        "R106.3|the pins are R106.1, R106.2",
        "R106|the pins are R106.1, R106.2",
        "R1066.1|R106.1",
        "Q101.end|the pins are Q101.E, Q101.B, Q101.C",
        "U102.in|the pins are U102.1",
        "zzzzzz|give a net's name, or a pin as PART.PIN",
        "net:zzzzzz|give a net's name",
        "pin:R106.9|give a net's name"
      })
  void find_whatIsNot_suggestsWhatIsAlike(String text, String message) {
    assertThatThrownBy(() -> DEMO.find(text))
        .isInstanceOf(NodeNameException.class)
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", ".", "R1.", ".1", "\u202eR1", "\n", "net:", "pin:", "a\"b"})
  void find_oddText_isRefusedInOneLine(String text) {
    assertThatThrownBy(() -> DEMO.find(text))
        .isInstanceOf(NodeNameException.class)
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n", "\u202e"));
  }

  @Test
  void find_overlongText_isRefusedShortly() {
    assertThatThrownBy(() -> DEMO.find("x".repeat(100_000)))
        .isInstanceOf(NodeNameException.class)
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(300));
  }

  @Test
  void find_ambiguousName_listsAllReadingsAndEachCanBeAsked() throws NodeNameException {
    BoardMap map = BoardMapSamples.divider();
    map = BoardMapSamples.with(map, net("R1.1"), net("other").withName("VP"));
    NodeNames names = new NodeNames(Circuit.of(map));

    NodeNameException pinOrNet =
        catchThrowableOfType(NodeNameException.class, () -> names.find("R1.1"));
    assertThat(pinOrNet).hasMessageContaining("net:R1.1").hasMessageContaining("pin:R1.1");
    assertThat(pinOrNet.suggestions()).containsExactly("net:R1.1", "pin:R1.1");
    assertThat(names.find("pin:R1.1")).isEqualTo(new NodeName.OfPin(PinRef.parse("R1.1")));
    assertThat(names.find("net:R1.1")).isEqualTo(new NodeName.OfNet(new NetId("R1.1")));

    NodeNameException twoNets =
        catchThrowableOfType(NodeNameException.class, () -> names.find("VP"));
    assertThat(twoNets.suggestions()).containsExactlyInAnyOrder("net:other", "net:VP");
  }

  @Test
  void find_caseSettlesWhereItCan() throws NodeNameException {
    BoardMap map =
        BoardMapSamples.with(BoardMapSamples.blank(), net("CTL"), net("ctl"), net("Mix"));
    NodeNames names = new NodeNames(Circuit.of(map));
    assertThat(names.find("ctl")).isEqualTo(new NodeName.OfNet(new NetId("ctl")));
    assertThat(names.find("MIX")).isEqualTo(new NodeName.OfNet(new NetId("Mix")));
    assertThatThrownBy(() -> names.find("Ctl")).hasMessageContaining("net:CTL or net:ctl");
  }

  @Test
  void find_oneDesignatorOnTwoBoards_listsBothByTheirIds() {
    BoardMap map =
        BoardMapSamples.with(
            BoardMapSamples.divider(),
            twoPin("b-R1", "resistor", "1k").withDesignator(new Designator("R1")));
    NodeNames names = new NodeNames(Circuit.of(map));
    assertThatThrownBy(() -> names.find("R1.2")).hasMessageContaining("pin:R1.2 or pin:b-R1.2");
    assertThatThrownBy(() -> names.find("b-R1.9")).hasMessageContaining("the pins are");
  }

  @Test
  void find_renamedNet_byNameAndById() throws NodeNameException {
    BoardMap map = BoardMapSamples.with(BoardMapSamples.blank(), net("N1").withName("SUM"));
    NodeNames names = new NodeNames(Circuit.of(map));
    assertThat(names.find("sum")).isEqualTo(names.find("N1"));
  }

  @Test
  void find_netThatOnlyTheDrawingHas_givesItsPins() throws NodeNameException {
    BoardMap map = BoardMapSamples.divider();
    DrawingDiscrepancy drawn =
        new DrawingDiscrepancy(
            Subject.of(PinRef.parse("R2.1")),
            DrawingDiscrepancy.Aspect.NET,
            "TAP",
            List.of(says(Evidence.MEASURED)),
            "");
    Circuit circuit =
        Circuit.of(map.with(MapTables.DISCREPANCIES, map.discrepancies().with(drawn)));
    NodeName name = new NodeNames(circuit).find("tap");
    assertThat(name).isEqualTo(new NodeName.OfDrawnNet("TAP"));
    JoinedList joined = circuit.joined(name, PassageOptions.ALL);
    assertThat(joined.nets()).isEmpty();
    assertThat(joined.pins()).isEmpty();
    assertThat(joined.alsoDrawnHere())
        .singleElement()
        .satisfies(
            pin -> {
              assertThat(pin.pin()).isEqualTo(PinRef.parse("R2.1"));
              assertThat(pin.nets()).containsExactly(new NetId("MID"));
            });
  }
}
