package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;

/** Facts from the reference notes on standards, section 9. */
class OtherDecksTest {
  @Test
  void wideband_hasThePublishedCountsAndNoSymmetry() {
    BoardMap map = OtherDecks.wideband().map();
    assertThat(kinds(map)).isEqualTo(Map.of("npn", 11L, "resistor", 12L, "power-supply", 3L));
    assertThat(new AlikeClasses(map).parts()).hasSize(26);
  }

  @Test
  void widebandBalanced_hasThePublishedTwins() {
    Deck deck = OtherDecks.widebandBalanced();
    AlikeClasses classes = new AlikeClasses(deck.map());
    List<List<PartId>> expected = new ArrayList<>();
    for (String pair : "RS1/RS2 R1/R2 R6/R8 R9/R10 Q1/Q2 Q3/Q4 Q5/Q6 Q10/Q11".split(" ")) {
      String[] two = pair.split("/");
      expected.add(List.of(deck.part(two[0]), deck.part(two[1])));
    }
    assertThat(classes.parts().stream().filter(c -> c.size() > 1))
        .containsExactlyInAnyOrderElementsOf(expected);
    List<List<NetId>> nets = new ArrayList<>();
    for (String pair : "30/31 5/6 14/15 16/17 10/11".split(" ")) {
      String[] two = pair.split("/");
      nets.add(List.of(new NetId(two[0]), new NetId(two[1])));
    }
    assertThat(classes.nets().stream().filter(c -> c.size() > 1))
        .containsExactlyInAnyOrderElementsOf(nets);
  }

  @Test
  void threeFilters_hasThePublishedCountsAndClasses() {
    BoardMap map = OtherDecks.threeFiltersMap();
    assertThat(kinds(map)).isEqualTo(Map.of("resistor", 33L, "cap", 12L, "dual-opamp", 3L));
    assertThat(map.nets()).hasSize(34);
    assertThat(new AlikeClasses(map).parts()).hasSize(16).allMatch(c -> c.size() == 3);
  }

  private static Map<String, Long> kinds(BoardMap map) {
    return map.parts().stream().collect(Collectors.groupingBy(Part::kind, Collectors.counting()));
  }
}
