package org.relegend.share;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.MapTables;
import org.relegend.map.Table;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/**
 * Takes from a map what tells of people: names of those who stand for something, and free text. A
 * name becomes its alias, or a number that stays the same in the whole map.
 */
final class Anonymizer {
  private static final String AUTHOR = "author";
  private static final String NOTE = "note";

  private final PackOptions options;
  private final Map<String, String> names = new LinkedHashMap<>();
  private int notes;

  Anonymizer(BoardMap map, PackOptions options) {
    this.options = options;
    Set<String> authors = new TreeSet<>();
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      collect(codec, map, authors);
    }
    int number = 1;
    authors.remove("");
    for (String author : authors) {
      String alias = options.aliases().get(author);
      if (alias == null && !options.names()) {
        alias = "author " + number++;
      }
      names.put(author, alias == null ? author : alias);
    }
  }

  /** What the authors of the map are called in the pack. */
  Map<String, String> names() {
    return names;
  }

  /** How many notes were left out. */
  int notes() {
    return notes;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void collect(
      TableCodec<K, V> codec, BoardMap map, Set<String> authors) {
    codec.table().of(map).forEach(entry -> collect(codec.json(entry), authors));
  }

  private static void collect(Json json, Set<String> authors) {
    if (json instanceof Json.Obj object) {
      if (object.fields().get(AUTHOR) instanceof Json.Text author) {
        authors.add(author.value());
      }
      object.fields().values().forEach(value -> collect(value, authors));
    } else if (json instanceof Json.Arr list) {
      list.values().forEach(value -> collect(value, authors));
    }
  }

  /** The map without its undecided clashes, which hold two people's words. */
  BoardMap of(BoardMap map) {
    BoardMap result = map.withInfo(TableCodec.info(anonymized(TableCodec.info(map.info()))));
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      result = of(codec, result);
    }
    return result.with(MapTables.CLASHES, Table.empty());
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap of(
      TableCodec<K, V> codec, BoardMap map) {
    List<V> entries = new ArrayList<>();
    for (V entry : codec.table().of(map)) {
      entries.add(codec.entry(anonymized(codec.json(entry))));
    }
    return map.with(codec.table(), Table.of(entries));
  }

  private Json anonymized(Json json) {
    if (json instanceof Json.Arr list) {
      return Json.array(list.values().stream().map(this::anonymized).toList());
    }
    if (!(json instanceof Json.Obj object)) {
      return json;
    }
    Map<String, Json> fields = new LinkedHashMap<>();
    object
        .fields()
        .forEach(
            (name, value) -> {
              if (name.equals(NOTE) && value instanceof Json.Text && !options.notes()) {
                notes++;
              } else if (name.equals(AUTHOR) && value instanceof Json.Text author) {
                fields.put(name, Json.of(names.getOrDefault(author.value(), "")));
              } else {
                fields.put(name, anonymized(value));
              }
            });
    return new Json.Obj(fields);
  }
}
