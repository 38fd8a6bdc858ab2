package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;
import org.relegend.map.IdRenames;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTable;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.RandomEdits;
import org.relegend.map.Table;

/** The list of the map's tables: no table may be forgotten in a file, a journal or a merge. */
class MapTablesTest {
  static List<MapTable<?, ?>> tables() {
    return MapTables.ALL;
  }

  @Test
  void everyTable_hasItsOwnWord_andACodec() {
    List<String> words = MapTables.ALL.stream().map(table -> table.word()).toList();
    assertThat(words).hasSizeGreaterThan(12).doesNotHaveDuplicates();
    assertThat(TableCodec.all().stream().map(codec -> codec.name()).toList()).isEqualTo(words);
    assertThat(MapTableCodecs.ALL.stream().map(codec -> codec.name()).toList())
        .containsExactlyInAnyOrderElementsOf(words);
    assertThatThrownBy(() -> TableCodec.named("remarks"))
        .isInstanceOf(NoSuchElementException.class)
        .hasMessageContaining("remarks");
  }

  @Test
  void everyTable_standsInTheSchema() {
    assertThat(MapFormat.schema())
        .contains(MapTables.ALL.stream().map(MapTablesTest::asField).toList());
  }

  private static String asField(MapTable<?, ?> table) {
    return "\"" + table.word() + "\":";
  }

  /** Each table is its own: what is put into it comes into no other, and the sample has all. */
  @ParameterizedTest
  @MethodSource("tables")
  void aTable_putAlone_isAloneInTheMap(MapTable<?, ?> table) {
    assertThat(alone(table)).isEqualTo(1);
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> long alone(
      MapTable<K, V> table) {
    Table<K, V> full = table.of(FullMap.make());
    assertThat(full).isNotEmpty();
    BoardMap map = BoardMap.empty("m", MapInfo.titled("t")).with(table, full);
    assertThat(table.of(map)).isEqualTo(full);
    return MapTables.ALL.stream().filter(other -> !other.of(map).isEmpty()).count();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void exactly_putsAnEntryAsItIs_andRemoveTakesItAway(MapTable<?, ?> table)
      throws EditRefusedException {
    putAndRemoved(table);
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void putAndRemoved(
      MapTable<K, V> table) throws EditRefusedException {
    Photo top = (Photo) FullMap.make().picture(BoardMapSamples.TOP).orElseThrow();
    BoardMap map =
        MapTables.PICTURES.put(top.withId(new PictureId("closer"))).applyTo(FullMap.make());
    for (V entry : table.of(map)) {
      BoardMap changed = map.with(table, table.of(map).without(entry.key()));
      for (var edit : table.exactly(entry)) {
        assertThat(edit.label(changed)).isNotBlank();
        changed = edit.applyTo(changed);
      }
      assertThat(changed).isEqualTo(map);
      assertThat(table.putBy(table.exactly(entry))).containsExactly(entry);
      assertThat(table.removedBy(List.of(table.remove(entry.key())))).containsExactly(entry.key());
    }
  }

  @Test
  void everyEntry_isTheSameAfterItsJson_andUnderItsKey() {
    for (long seed = 1; seed <= 20; seed++) {
      EditHistory history = new EditHistory(BoardMapSamples.random(seed));
      RandomEdits.applySome(history, seed);
      for (TableCodec<?, ?> codec : TableCodec.all()) {
        sameAfterJson(codec, history.current());
      }
    }
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void sameAfterJson(
      TableCodec<K, V> codec, BoardMap map) {
    for (V entry : codec.table().of(map)) {
      assertThat(codec.entry(codec.json(entry))).isEqualTo(entry);
      assertThat(codec.key(codec.keyText(entry.key()))).isEqualTo(entry.key());
      assertThat(codec.table().renamed(entry, new IdRenames())).isEqualTo(entry);
      assertThat(codec.table().references(entry)).doesNotContainNull();
      assertThat(codec.table().references(entry)).containsAll(codec.table().goesWith(entry));
    }
  }
}
