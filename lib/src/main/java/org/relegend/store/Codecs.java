package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.relegend.map.Keyed;
import org.relegend.map.NameRules;
import org.relegend.map.Table;

/** The codecs of plain values and of lists. */
final class Codecs {
  /** Whole numbers up to here are exact in a double and written without a decimal point. */
  private static final double WHOLE = 1e15;

  private Codecs() {}

  static final Codec<String> TEXT = parsed(Function.identity(), Function.identity());

  static final Codec<Double> NUMBER =
      new Codec<>() {
        @Override
        public Double read(JsonParser in) throws IOException {
          if (!in.currentToken().isNumeric()) {
            throw UnfitJsonException.here(in, "a number must stand here" + instead(in));
          }
          return in.getDoubleValue() + 0.0; // no negative zero
        }

        @Override
        public void write(Double value, JsonGenerator out) throws IOException {
          if (value == Math.rint(value) && Math.abs(value) < WHOLE) {
            out.writeNumber(value.longValue());
          } else {
            out.writeNumber(value);
          }
        }
      };

  static final Codec<Integer> WHOLE_NUMBER =
      new Codec<>() {
        @Override
        public Integer read(JsonParser in) throws IOException {
          if (in.currentToken() != JsonToken.VALUE_NUMBER_INT
              || in.getNumberType() != JsonParser.NumberType.INT) {
            throw UnfitJsonException.here(in, "a whole number must stand here" + instead(in));
          }
          return in.getIntValue();
        }

        @Override
        public void write(Integer value, JsonGenerator out) throws IOException {
          out.writeNumber(value);
        }
      };

  static final Codec<Boolean> TRUTH =
      new Codec<>() {
        @Override
        public Boolean read(JsonParser in) throws IOException {
          if (!in.currentToken().isBoolean()) {
            throw UnfitJsonException.here(in, "true or false must stand here" + instead(in));
          }
          return in.getBooleanValue();
        }

        @Override
        public void write(Boolean value, JsonGenerator out) throws IOException {
          out.writeBoolean(value);
        }
      };

  /** A value that is written as one text; what {@code parse} refuses is told to the user. */
  static <T> Codec<T> parsed(Function<String, T> parse, Function<T, String> text) {
    return new Codec<>() {
      @Override
      public T read(JsonParser in) throws IOException {
        if (in.currentToken() != JsonToken.VALUE_STRING) {
          throw UnfitJsonException.here(
              in, "a text in quotation marks must stand here" + instead(in));
        }
        try {
          return parse.apply(in.getText());
        } catch (IllegalArgumentException e) {
          throw UnfitJsonException.here(in, String.valueOf(e.getMessage()));
        }
      }

      @Override
      public void write(T value, JsonGenerator out) throws IOException {
        out.writeString(text.apply(value));
      }
    };
  }

  /** One of a few fixed words; {@code parse} finds what isn't among them and tells so. */
  static <T> Codec<T> word(T[] values, Function<T, String> word, Function<String, T> parse) {
    Map<String, T> known = new HashMap<>();
    Map<T, String> words = new HashMap<>();
    for (T value : values) {
      known.put(word.apply(value), value);
      words.put(value, word.apply(value));
    }
    return parsed(
        text -> {
          T value = known.get(text);
          return value != null ? value : parse.apply(text);
        },
        words::get);
  }

  /** A field that may be absent; it is never written when empty. */
  static <T> Codec<Optional<T>> maybe(Codec<T> codec) {
    return new Codec<>() {
      @Override
      public Optional<T> read(JsonParser in) throws IOException {
        return Optional.of(codec.read(in));
      }

      @Override
      public void write(Optional<T> value, JsonGenerator out) throws IOException {
        codec.write(value.orElseThrow(), out);
      }
    };
  }

  static <T> Codec<List<T>> list(Codec<T> codec) {
    return collected(codec, Function.identity());
  }

  static <K extends Comparable<? super K>, V extends Keyed<K>> Codec<Table<K, V>> table(
      Codec<V> codec) {
    return collected(codec, Table::of);
  }

  private static <T, C extends Collection<T>> Codec<C> collected(
      Codec<T> codec, Function<List<T>, C> collect) {
    return new Codec<>() {
      @Override
      public C read(JsonParser in) throws IOException {
        if (in.currentToken() != JsonToken.START_ARRAY) {
          throw UnfitJsonException.here(in, "a list in brackets [ ] must stand here" + instead(in));
        }
        JsonLocation start = in.currentTokenLocation();
        List<T> values = new ArrayList<>();
        while (in.nextToken() != JsonToken.END_ARRAY) {
          values.add(codec.read(in));
        }
        try {
          return collect.apply(values);
        } catch (IllegalArgumentException e) {
          throw UnfitJsonException.from(in, start, String.valueOf(e.getMessage()));
        }
      }

      @Override
      public void write(C values, JsonGenerator out) throws IOException {
        out.writeStartArray();
        for (T value : values) {
          codec.write(value, out);
        }
        out.writeEndArray();
      }
    };
  }

  /** An object whose field names are data: pin numbers and their roles. */
  static final Codec<Map<String, String>> TEXT_BY_NAME =
      new Codec<>() {
        @Override
        public Map<String, String> read(JsonParser in) throws IOException {
          if (in.currentToken() != JsonToken.START_OBJECT) {
            throw UnfitJsonException.here(
                in, "an object in braces { } must stand here" + instead(in));
          }
          Map<String, String> values = new LinkedHashMap<>();
          for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
            if (values.containsKey(name)) {
              throw UnfitJsonException.here(
                  in, "the field \"" + NameRules.printable(name) + "\" stands twice");
            }
            in.nextToken();
            values.put(name, TEXT.read(in));
          }
          return values;
        }

        @Override
        public void write(Map<String, String> values, JsonGenerator out) throws IOException {
          out.writeStartObject();
          for (Map.Entry<String, String> entry : values.entrySet()) {
            out.writeStringField(entry.getKey(), entry.getValue());
          }
          out.writeEndObject();
        }
      };

  /** What stands there in the place of what should, for the message. */
  private static String instead(JsonParser in) {
    return switch (in.currentToken()) {
      case START_OBJECT -> ", not an object";
      case START_ARRAY -> ", not a list";
      case VALUE_STRING -> ", not a text";
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> ", not this number";
      case VALUE_TRUE, VALUE_FALSE -> ", not true or false";
      case VALUE_NULL -> ", not null: leave out what is not known";
      default -> "";
    };
  }
}
