package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.EditHistory;
import org.relegend.map.Keyed;
import org.relegend.map.RandomEdits;
import org.relegend.map.Table;
import org.relegend.store.Shelf;

/** No table of the map may be forgotten when two maps are merged. */
class RulesTest {
  @Test
  void everyTableOfTheMap_hasAShelf_andEveryShelfARule() {
    long tables =
        Arrays.stream(BoardMap.class.getRecordComponents())
            .filter(component -> component.getType() == Table.class)
            .count();
    List<String> shelves = Shelf.all().stream().map(shelf -> shelf.name()).toList();
    assertThat(shelves).hasSize((int) tables).doesNotHaveDuplicates();
    assertThat(Rules.ALL.stream().map(rule -> rule.table()).toList())
        .containsExactlyInAnyOrderElementsOf(shelves);
  }

  @Test
  void everyEntry_isTheSameAfterItsJson_andUnderItsKey() {
    for (long seed = 1; seed <= 20; seed++) {
      EditHistory history = new EditHistory(BoardMapSamples.random(seed));
      RandomEdits.applySome(history, seed);
      for (Rule<?, ?> rule : Rules.ALL) {
        sameAfterJson(rule, history.current());
      }
    }
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void sameAfterJson(
      Rule<K, V> rule, BoardMap map) {
    for (V entry : rule.of(map)) {
      assertThat(rule.shelf().entry(rule.json(entry))).isEqualTo(entry);
      assertThat(rule.shelf().key(rule.shelf().keyText(entry.key()))).isEqualTo(entry.key());
      assertThat(rule.renamed().apply(entry, new Renames())).isEqualTo(entry);
      assertThat(rule.refs().apply(entry)).doesNotContainNull();
    }
  }
}
