package org.relegend.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A JSON value as a command prints it: immutable, with the fields of objects in the order they were
 * put, so that one result always gives one text.
 */
public sealed interface Json {
  /** An object; {@link #put} gives a new one with one field more. */
  record Obj(Map<String, Json> fields) implements Json {
    public Obj {
      fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /**
     * @throws IllegalArgumentException where the field is there already
     */
    public Obj put(String name, Json value) {
      Map<String, Json> more = new LinkedHashMap<>(fields);
      if (more.put(name, value) != null) {
        throw new IllegalArgumentException("the field \"" + name + "\" is there already");
      }
      return new Obj(more);
    }

    public Obj put(String name, String value) {
      return put(name, Json.of(value));
    }

    public Obj put(String name, double value) {
      return put(name, Json.of(value));
    }

    public Obj put(String name, long value) {
      return put(name, Json.of(value));
    }

    public Obj put(String name, boolean value) {
      return put(name, Json.of(value));
    }

    public Obj put(String name, Collection<? extends Json> values) {
      return put(name, Json.array(values));
    }
  }

  /** A list of values. */
  record Arr(List<Json> values) implements Json {
    public Arr {
      values = List.copyOf(values);
    }
  }

  /** A text. */
  record Text(String value) implements Json {}

  /** A finite number. Whole ones are written without a decimal point. */
  record Num(double value) implements Json {
    public Num {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("JSON has no number for " + value);
      }
    }
  }

  /** A whole number, of which a double may not hold every digit. */
  record Whole(long value) implements Json {}

  /** True or false. */
  record Bool(boolean value) implements Json {}

  /** No value. */
  record Null() implements Json {}

  static Obj object() {
    return new Obj(Map.of());
  }

  static Arr array(Collection<? extends Json> values) {
    return new Arr(new ArrayList<>(values));
  }

  /** A list with one value for each of these. */
  static <T> Arr array(Collection<? extends T> things, Function<? super T, ? extends Json> value) {
    List<Json> values = new ArrayList<>(things.size());
    things.forEach(thing -> values.add(value.apply(thing)));
    return new Arr(values);
  }

  /** A list of texts. */
  static Arr texts(Collection<String> texts) {
    return array(texts, Text::new);
  }

  static Json of(String value) {
    return new Text(value);
  }

  static Json of(double value) {
    return new Num(value);
  }

  static Json of(long value) {
    return new Whole(value);
  }

  static Json of(boolean value) {
    return new Bool(value);
  }

  static Json none() {
    return new Null();
  }

  /** The value as one indented document that ends with a line feed. */
  default String toText() {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      DefaultIndenter lines = new DefaultIndenter("  ", "\n");
      out.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
      JsonText.write(this, out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return text.append('\n').toString();
  }

  /** The value without a space or line break between its parts. */
  default String compact() {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      JsonText.write(this, out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return text.toString();
  }

  /**
   * Reads what {@link #compact} and {@link #toText} write.
   *
   * @throws IllegalArgumentException where the text is no JSON value, or more than one
   */
  static Json parse(String text) {
    return JsonText.parse(text);
  }
}
