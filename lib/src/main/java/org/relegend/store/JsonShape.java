package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.relegend.map.NameRules;

/**
 * A JSON object of named fields, told once for both directions. Reading is strict: a field that is
 * unknown, stands twice or is missing is refused. Since it sees every field by itself, it needs
 * neither a tree nor the parser's own, slower search for duplicates.
 */
final class JsonShape<T> {
  /** One field: required where {@code absent} is null, else left out where it equals that. */
  record Field<T, V>(
      int slot, String name, Codec<V> codec, Function<T, V> part, @Nullable V absent) {
    void write(T whole, JsonGenerator out) throws IOException {
      V value = part.apply(whole);
      if (!value.equals(absent)) {
        out.writeFieldName(name);
        codec.write(value, out);
      }
    }
  }

  /** The values of one object, by field. */
  static final class Values {
    private final @Nullable Object[] bySlot;

    private Values(@Nullable Object[] bySlot) {
      this.bySlot = bySlot;
    }

    <V> V get(Field<?, V> field) {
      @SuppressWarnings("unchecked") // put there by this very field's codec, or its absent value
      V value = (V) bySlot[field.slot()];
      if (value == null) {
        throw new IllegalArgumentException("the field \"" + field.name() + "\" is missing");
      }
      return value;
    }

    /** The value of a field that this kind of object must have. */
    <V> V need(Field<?, Optional<V>> field) {
      return get(field)
          .orElseThrow(
              () -> new IllegalArgumentException("the field \"" + field.name() + "\" is missing"));
    }

    /** Refuses fields that this kind of object doesn't have. */
    void refuse(String kind, Field<?, ?>... fields) {
      for (Field<?, ?> field : fields) {
        if (bySlot[field.slot()] != field.absent()) {
          throw new IllegalArgumentException(kind + " has no field \"" + field.name() + "\"");
        }
      }
    }
  }

  private final List<Field<T, ?>> fields = new ArrayList<>();

  <V> Field<T, V> required(String name, Codec<V> codec, Function<T, V> part) {
    return add(name, codec, part, null);
  }

  /** A field that is left out where it has the value {@code absent}. */
  <V> Field<T, V> optional(String name, Codec<V> codec, V absent, Function<T, V> part) {
    return add(name, codec, part, absent);
  }

  private <V> Field<T, V> add(
      String name, Codec<V> codec, Function<T, V> part, @Nullable V absent) {
    Field<T, V> field = new Field<>(fields.size(), name, codec, part, absent);
    fields.add(field);
    return field;
  }

  /**
   * The finished shape.
   *
   * @param maker puts the whole together; an IllegalArgumentException of it is told to the user
   */
  ObjectCodec<T> madeBy(Function<Values, T> maker) {
    return new ObjectCodec<>(fields, maker);
  }

  /** Reads and writes such objects. */
  static final class ObjectCodec<T> implements Codec<T> {
    private final List<Field<T, ?>> fields;
    private final String[] names;
    private final Function<Values, T> maker;

    private ObjectCodec(List<Field<T, ?>> fields, Function<Values, T> maker) {
      this.fields = List.copyOf(fields);
      this.names = fields.stream().map(Field::name).toArray(String[]::new);
      this.maker = maker;
    }

    @Override
    public T read(JsonParser in) throws IOException {
      if (in.currentToken() != JsonToken.START_OBJECT) {
        throw UnfitJsonException.here(in, "an object in braces { } must stand here");
      }
      return readFields(in, in.currentTokenLocation());
    }

    /** Reads the fields that are left of an object that began at {@code start}. */
    T readFields(JsonParser in, JsonLocation start) throws IOException {
      @Nullable Object[] values = new @Nullable Object[names.length];
      int next = 0;
      for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
        int slot = slot(in, name, next);
        if (values[slot] != null) {
          throw UnfitJsonException.here(in, "the field \"" + name + "\" stands twice");
        }
        in.nextToken();
        values[slot] = fields.get(slot).codec().read(in);
        next = slot + 1;
      }
      for (int i = 0; i < values.length; i++) {
        if (values[i] == null) {
          values[i] = fields.get(i).absent();
        }
      }
      try {
        return maker.apply(new Values(values));
      } catch (IllegalArgumentException e) {
        throw UnfitJsonException.from(in, start, String.valueOf(e.getMessage()));
      }
    }

    /** Which field it is; fields mostly come in order, so the search begins at the next one. */
    private int slot(JsonParser in, String name, int next) throws UnfitJsonException {
      for (int i = next; i < names.length; i++) {
        if (names[i].equals(name)) {
          return i;
        }
      }
      for (int i = 0; i < next; i++) {
        if (names[i].equals(name)) {
          return i;
        }
      }
      throw UnfitJsonException.here(
          in,
          "the field \"%s\" is not known; known here are %s"
              .formatted(NameRules.printable(name), String.join(", ", names)));
    }

    @Override
    public void write(T value, JsonGenerator out) throws IOException {
      out.writeStartObject();
      writeFields(value, out);
      out.writeEndObject();
    }

    void writeFields(T value, JsonGenerator out) throws IOException {
      for (Field<T, ?> field : fields) {
        field.write(value, out);
      }
    }
  }
}
