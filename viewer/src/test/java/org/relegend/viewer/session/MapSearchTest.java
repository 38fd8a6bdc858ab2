package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

class MapSearchTest {
  private static List<String> find(BoardMap map, String typed) {
    return new MapSearch(map)
        .find(typed, 20).stream().map(found -> found.subject().toString()).toList();
  }

  private static List<String> find(String typed) {
    return find(SessionBench.twoChannels(), typed);
  }

  @Test
  void designator_standsFirst_thenThoseThatBeginSo() {
    BoardMap map =
        BoardMapSamples.with(
            SessionBench.twoChannels(), BoardMapSamples.twoPin("R1", "resistor", ""));
    assertThat(find(map, "r1")).startsWith("R1", "R101", "R102");
  }

  @Test
  void pin_isFoundHoweverItIsWritten() {
    assertThat(find("U101.7")).first().isEqualTo("U101.7");
    assertThat(find("u101 7")).first().isEqualTo("U101.7");
    assertThat(find("U101 pin 7")).first().isEqualTo("U101.7");
    assertThat(find("C102.-")).first().isEqualTo("C102.-");
  }

  @Test
  void net_isFoundByPartOfItsName() {
    assertThat(find("att")).containsExactly("net:A_ATT", "net:B_ATT");
    assertThat(find("a_att")).first().isEqualTo("net:A_ATT");
  }

  /** 4.7 kilohm written as 4k7, 4.7k and 4K7 is one value: IEC 60062, letter and digit code. */
  @Test
  void value_isFoundHoweverItIsWritten() {
    BoardMap map =
        BoardMapSamples.with(
            SessionBench.twoChannels(),
            BoardMapSamples.twoPin("R5", "resistor", "4k7 0.5W"),
            BoardMapSamples.twoPin("C9", "cap", "100n"));
    assertThat(find(map, "4.7k")).containsExactly("R5");
    assertThat(find(map, "4K7")).containsExactly("R5");
    assertThat(find(map, "0.1u")).containsExactly("C9");
  }

  @Test
  void note_isFound() {
    BoardMap map = SessionBench.twoChannels();
    map =
        map.with(
            MapTables.PARTS,
            map.parts()
                .with(
                    map.part(new PartId("Q101")).orElseThrow().withNote("runs warm, look again")));
    assertThat(find(map, "warm")).containsExactly("Q101");
  }

  @Test
  void netOfTheDrawing_leadsToThePinThatTheBoardHasElsewhere() {
    BoardMap map = SessionBench.twoChannels();
    DrawingDiscrepancy drawn =
        new DrawingDiscrepancy(
            Subject.of(SessionBench.pin("U101.2")),
            DrawingDiscrepancy.Aspect.NET,
            "BUFOUT",
            List.of(says(Evidence.MEASURED)),
            "");
    map = map.with(MapTables.DISCREPANCIES, map.discrepancies().with(drawn));
    assertThat(find(map, "bufout")).containsExactly("U101.2");
  }

  @Test
  void nothingTyped_findsNothing() {
    assertThat(find("  ")).isEmpty();
    assertThat(find("no such thing")).isEmpty();
  }
}
