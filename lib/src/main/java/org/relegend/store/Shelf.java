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
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.Table;

/**
 * One of the tables of a map: its entries one by one, each as the JSON object that stands for it in
 * the file, and how what changed in it is written.
 */
public final class Shelf<K extends Comparable<? super K>, V extends Keyed<K>> {
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

  private final String name;
  private final Function<BoardMap, Table<K, V>> table;
  private final BiFunction<BoardMap, Table<K, V>, BoardMap> with;
  private final Codec<V> value;
  private final Codec<K> key;
  private final Codec<Change<K, V>> codec;

  Shelf(
      String name,
      Function<BoardMap, Table<K, V>> table,
      BiFunction<BoardMap, Table<K, V>, BoardMap> with,
      Codec<V> value,
      Codec<K> key) {
    this.name = name;
    this.table = table;
    this.with = with;
    this.value = value;
    this.key = key;
    Shape<Change<K, V>> s = new Shape<>();
    var put = s.optional("put", list(value), List.of(), Change::put);
    var removed = s.optional("remove", list(key), List.of(), Change::removed);
    this.codec = s.madeBy(v -> new Change<>(v.get(put), v.get(removed)));
  }

  /** All tables there are, in the order of the file. */
  public static List<Shelf<?, ?>> all() {
    return MapChange.SHELVES;
  }

  /** What the table is called in the file. */
  public String name() {
    return name;
  }

  public Table<K, V> of(BoardMap map) {
    return table.apply(map);
  }

  public BoardMap in(BoardMap map, Table<K, V> changed) {
    return with.apply(map, changed);
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
    Table<K, V> old = table.apply(before);
    Table<K, V> young = table.apply(after);
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
      Table<K, V> result = table.apply(map);
      for (K key : change.removed()) {
        result = result.without(key);
      }
      return with.apply(map, result.withAll(change.put()));
    };
  }
}
