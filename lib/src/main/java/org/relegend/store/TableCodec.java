package org.relegend.store;

import static org.relegend.store.Codecs.list;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.UnaryOperator;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTable;
import org.relegend.map.Table;

/**
 * How one of the tables of a map is written: its entries one by one, each as the JSON object that
 * stands for it in the file, its edits, and what changed in it.
 */
public final class TableCodec<K extends Comparable<? super K>, V extends Keyed<K>> {
  /** What of one table changed: values added or changed, and keys of those removed. */
  record Change<K, V>(List<V> put, List<K> removed) {
    boolean none() {
      return put.isEmpty() && removed.isEmpty();
    }
  }

  private static final JsonFactory PARTS =
      new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(20).maxStringLength(200_000).build())
          .build();

  /** The words of the two edits in the journal, which never change, and of their one field. */
  record EditWords(String put, String remove, String field) {}

  private final MapTable<K, V> table;
  private final EditWords words;
  private final Codec<V> value;
  private final Codec<K> key;
  private final Codec<Change<K, V>> codec;

  TableCodec(MapTable<K, V> table, EditWords words, Codec<V> value, Codec<K> key) {
    this.table = table;
    this.words = words;
    this.value = value;
    this.key = key;
    JsonShape<Change<K, V>> s = new JsonShape<>();
    var put = s.optional("put", list(value), List.of(), Change::put);
    var removed = s.optional("remove", list(key), List.of(), Change::removed);
    this.codec = s.madeBy(v -> new Change<>(v.get(put), v.get(removed)));
  }

  /** With the usual words: put-part, remove-part, part. */
  static <K extends Comparable<? super K>, V extends Keyed<K>> TableCodec<K, V> of(
      MapTable<K, V> table, String field, Codec<V> value, Codec<K> key) {
    return new TableCodec<>(
        table, new EditWords("put-" + field, "remove-" + field, field), value, key);
  }

  /** All there are, in the order in which entries can be put back. */
  public static List<TableCodec<?, ?>> all() {
    return MapTableCodecs.IN_ORDER;
  }

  /**
   * That of the table with this word.
   *
   * @throws NoSuchElementException where there is none
   */
  public static TableCodec<?, ?> named(String word) {
    return all().stream()
        .filter(codec -> codec.name().equals(word))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("no table \"" + word + "\""));
  }

  /** That of a table. */
  public static <K extends Comparable<? super K>, V extends Keyed<K>> TableCodec<K, V> of(
      MapTable<K, V> table) {
    for (TableCodec<?, ?> codec : MapTableCodecs.ALL) {
      if (codec.table == table) {
        @SuppressWarnings("unchecked") // the table tells its entries
        TableCodec<K, V> found = (TableCodec<K, V>) codec;
        return found;
      }
    }
    throw new IllegalStateException("no codec for the table " + table.word());
  }

  public MapTable<K, V> table() {
    return table;
  }

  /** What the table is called in the file. */
  public String name() {
    return table.word();
  }

  EditWords words() {
    return words;
  }

  Codec<V> value() {
    return value;
  }

  Codec<K> key() {
    return key;
  }

  /** The entry as it stands in the file. */
  public Json.Obj json(V entry) {
    return (Json.Obj) written(value, entry);
  }

  /**
   * The entry that such an object stands for.
   *
   * @throws IllegalArgumentException where it stands for none
   */
  public V entry(Json json) {
    return read(value, json.compact());
  }

  /** The key as one text: a name as it is, else compact JSON. */
  public String keyText(K entryKey) {
    Json json = written(key, entryKey);
    return json instanceof Json.Text text ? text.value() : json.compact();
  }

  /**
   * The key that such a text stands for.
   *
   * @throws IllegalArgumentException where it stands for none
   */
  public K key(String text) {
    if (text.startsWith("{")) {
      try {
        return read(key, text);
      } catch (IllegalArgumentException noObject) {
        return read(key, Json.of(text).compact());
      }
    }
    return read(key, Json.of(text).compact());
  }

  /** The title page as it stands in the file. */
  public static Json.Obj info(MapInfo info) {
    return (Json.Obj) written(MapShapes.INFO, info);
  }

  /**
   * The title page that such an object stands for.
   *
   * @throws IllegalArgumentException where it stands for none
   */
  public static MapInfo info(Json json) {
    return read(MapShapes.INFO, json.compact());
  }

  private static <T> Json written(Codec<T> codec, T value) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = PARTS.createGenerator(text)) {
      codec.write(value, out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return JsonText.parse(text.toString());
  }

  private static <T> T read(Codec<T> codec, String text) {
    try (JsonParser in = PARTS.createParser(text)) {
      in.nextToken();
      return codec.read(in);
    } catch (IOException e) {
      throw new IllegalArgumentException(String.valueOf(e.getMessage()), e);
    }
  }

  static JsonParser parser(String text) throws IOException {
    return PARTS.createParser(text);
  }

  Codec<Change<K, V>> codec() {
    return codec;
  }

  Change<K, V> between(BoardMap before, BoardMap after) {
    Table<K, V> old = table.of(before);
    Table<K, V> young = table.of(after);
    List<V> put = new ArrayList<>();
    for (V value : young) {
      if (!old.find(value.key()).filter(value::equals).isPresent()) {
        put.add(value);
      }
    }
    List<K> removed = new ArrayList<>();
    for (V value : old) {
      if (!young.has(value.key())) {
        removed.add(value.key());
      }
    }
    return new Change<>(put, removed);
  }

  UnaryOperator<BoardMap> made(Change<K, V> change) {
    return map -> {
      Table<K, V> result = table.of(map);
      for (K key : change.removed()) {
        result = result.without(key);
      }
      return map.with(table, result.withAll(change.put()));
    };
  }
}
