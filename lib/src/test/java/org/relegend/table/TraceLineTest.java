package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.circuit.Kinds;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

class TraceLineTest {
  private static TraceResult trace(String line, BoardMap map) throws TraceException {
    return TraceLine.read(line, new MapIndex(map), Kinds.standard(), says(Evidence.SEEN));
  }

  private static BoardMap traced(String line, BoardMap map)
      throws TraceException, EditRefusedException {
    TraceResult trace = trace(line, map);
    assertThat(trace.clashes()).isEmpty();
    return trace.edit().applyTo(map);
  }

  private static List<String> pins(BoardMap map, String net) {
    return map.net(new NetId(net)).orElseThrow().pins().stream().map(PinRef::toString).toList();
  }

  @Test
  void line_ofNewNames_makesPartsPinsAndNet() throws TraceException, EditRefusedException {
    BoardMap map = traced("A_ATT  C102.-\tR106.1 measured ", blank());
    assertThat(map.parts())
        .extracting(Part::id)
        .containsExactly(new PartId("C102"), new PartId("R106"));
    assertThat(pins(map, "A_ATT")).containsExactly("C102.-", "R106.1");
    assertThat(map.net(new NetId("A_ATT")).orElseThrow().members())
        .allSatisfy(
            member -> assertThat(member.evidence()).containsExactly(says(Evidence.MEASURED)));
  }

  @Test
  void line_withoutEvidence_restsOnTheUsual() throws TraceException, EditRefusedException {
    Net net = traced("N1 R1.1", blank()).nets().at(0);
    assertThat(net.members().get(0).evidence()).containsExactly(says(Evidence.SEEN));
  }

  @Test
  void severalPinsOfOnePart_areDividedByCommas() throws TraceException, EditRefusedException {
    assertThat(pins(traced("A_MIR U101.6,9,11,14 R112.2", blank()), "A_MIR"))
        .containsExactly("R112.2", "U101.6", "U101.9", "U101.11", "U101.14");
  }

  @Test
  void smallLetters_findNamesInCapitals() throws TraceException, EditRefusedException {
    BoardMap first = traced("VP Q1.B", blank());
    BoardMap map = traced("vp q1.b r7.1", first);
    assertThat(map.nets()).hasSize(1);
    assertThat(pins(map, "VP")).containsExactly("Q1.B", "R7.1");
  }

  @Test
  void namesWithSpacesOrBoards_areRead() throws TraceException, EditRefusedException {
    BoardMap map = traced("\"-15 V\" psu:R1.2 main:R8.1", divider());
    assertThat(pins(map, "-15 V")).containsExactly("R1~2.2", "R8.1");
    assertThat(map.part(new PartId("R1~2")).orElseThrow().board()).isEqualTo(new BoardId("psu"));
  }

  @Test
  void kindOfThePart_completesIt() throws TraceException, EditRefusedException {
    BoardMap map =
        with(
            blank(),
            Part.named(new PartId("Q1"), twoPin("Q1", "", "").designator(), new BoardId("main"))
                .withKind("npn"));
    Part part = traced("N1 Q1.C", map).parts().at(0);
    assertThat(part.pins())
        .containsExactly(new Pin("E", "emitter"), new Pin("B", "base"), new Pin("C", "collector"));
  }

  @Test
  void sameLineTwice_changesNothing() throws TraceException, EditRefusedException {
    BoardMap once = traced("N1 R8.1 R9.1", blank());
    assertThat(traced("N1 R8.1 R9.1", once)).isEqualTo(once);
  }

  @Test
  void pinOnAnotherNet_isLeftForTheTechnicianToChoose()
      throws TraceException, EditRefusedException {
    BoardMap map = divider();
    TraceResult trace = trace("VP R1.1 R2.1 R3.1", map);
    assertThat(trace.joined()).extracting(PinRef::toString).containsExactly("R1.1", "R3.1");
    NetClash clash = trace.clashes().get(0);
    assertThat(clash.other()).isEqualTo(new NetId("MID"));
    assertThat(clash.pins()).extracting(PinRef::toString).containsExactly("R2.1");
    BoardMap after = trace.edit().applyTo(map);
    assertThat(pins(after, "VP")).containsExactly("R1.1", "R3.1");

    BoardMap joined = clash.edit(NetClash.Choice.JOIN).orElseThrow().applyTo(after);
    assertThat(pins(joined, "VP")).containsExactly("R1.1", "R1.2", "R2.1", "R3.1");
    assertThat(joined.net(new NetId("MID"))).isEmpty();
    BoardMap moved = clash.edit(NetClash.Choice.MOVE).orElseThrow().applyTo(after);
    assertThat(pins(moved, "VP")).containsExactly("R1.1", "R2.1", "R3.1");
    assertThat(pins(moved, "MID")).containsExactly("R1.2");
    assertThat(clash.edit(NetClash.Choice.LEAVE)).isEmpty();
  }

  @Test
  void joiningANewNameOfANet_keepsWhatWasKnownOfIt() throws TraceException, EditRefusedException {
    BoardMap map = divider();
    map =
        map.with(
            MapTables.NETS, map.nets().with(map.nets().at(1).withChannel("A").withNote("rail")));
    Net known = map.nets().at(1);
    TraceResult trace = trace("NEW " + known.pins().get(0), map);
    assertThat(trace.edit().steps()).isEmpty();
    BoardMap joined = trace.clashes().get(0).edit(NetClash.Choice.JOIN).orElseThrow().applyTo(map);
    Net net = joined.net(new NetId("NEW")).orElseThrow();
    assertThat(net.pins()).isEqualTo(known.pins());
    assertThat(net.channel()).isEqualTo("A");
    assertThat(net.note()).isEqualTo("rail");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "''|0|0|type a net and its pins",
        "VP|2|2|which pins are on VP?",
        "VP measured|11|11|which pins are on VP?",
        "VP R1|3|5|which pin of R1? It has 1 2",
        "VP R1.|3|6|which pin of R1",
        "VP R1.1 measurd|8|15|\"measurd\" names no pin",
        "VP R1.1 seen R2.2|8|12|\"seen\" names no pin",
        "VP R1.3|6|7|R1 is a resistor and has no pin 3: it has 1 2",
        "VP R1.1,,2|8|8|a pin number can't be empty",
        "VP R/1.1|3|6|holds a slash",
        "VP other:R1.1:2 x|16|17|\"x\" names no pin",
        "A\u202eB R1.1|0|3|holds the character U+202E",
        "\"-15 V R1.1|0|11|isn't closed",
        "\"-15 V\"R1.1|7|8|a space was expected",
        "VP R\"1.1|4|5|a quotation mark inside R",
      })
  void wrongLine_isToldWithItsPlace(String line, int start, int end, String message) {
    assertThatThrownBy(() -> trace(line.equals("''") ? "" : line, divider()))
        .isInstanceOfSatisfying(
            TraceException.class,
            wrong -> {
              assertThat(wrong.start()).isEqualTo(start);
              assertThat(wrong.end()).isEqualTo(end);
              assertThat(wrong.withPlace()).startsWith("character " + (start + 1) + ": ");
            })
        .hasMessageContaining(message);
  }

  @Test
  void endlessLine_isRefused() {
    assertThatThrownBy(() -> trace("N R1.1 ".repeat(5_000), blank()))
        .isInstanceOf(TraceException.class)
        .hasMessageContaining("at most 10,000 characters");
  }

  @Test
  void designatorOnTwoBoards_mustBeToldApart() throws TraceException, EditRefusedException {
    BoardMap map = traced("VN psu:R1.2", divider());
    assertThat(pins(map, "VN")).containsExactly("R1~2.2");
    assertThatThrownBy(() -> trace("VN R1.1", map))
        .hasMessageContaining("write which, as main:R1 or psu:R1");
    assertThatThrownBy(() -> trace("VN R5.1", map)).hasMessageContaining("several boards");
  }
}
