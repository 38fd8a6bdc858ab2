package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.NameRules;

/** Writes JSON values as text. */
final class JsonText {
  private JsonText() {}

  static void write(Json json, JsonGenerator out) throws IOException {
    if (json instanceof Json.Obj object) {
      out.writeStartObject();
      for (Map.Entry<String, Json> field : object.fields().entrySet()) {
        out.writeFieldName(field.getKey());
        write(field.getValue(), out);
      }
      out.writeEndObject();
    } else if (json instanceof Json.Arr array) {
      out.writeStartArray();
      for (Json value : array.values()) {
        write(value, out);
      }
      out.writeEndArray();
    } else {
      writePlain(json, out);
    }
  }

  private static void writePlain(Json json, JsonGenerator out) throws IOException {
    if (json instanceof Json.Text text) {
      out.writeString(text.value());
    } else if (json instanceof Json.Num number) {
      Codecs.NUMBER.write(number.value(), out);
    } else if (json instanceof Json.Whole whole) {
      out.writeNumber(whole.value());
    } else if (json instanceof Json.Bool bool) {
      out.writeBoolean(bool.value());
    } else {
      out.writeNull();
    }
  }

  static Json parse(String text) {
    try (JsonParser in = TableCodec.parser(text)) {
      in.nextToken();
      Json value = read(in);
      if (in.nextToken() != null) {
        throw new IllegalArgumentException("more than one value: " + NameRules.printable(text));
      }
      return value;
    } catch (IOException e) {
      throw new IllegalArgumentException("no JSON value: " + NameRules.printable(text), e);
    }
  }

  /** Reads the value whose first token the parser is at. */
  private static Json read(JsonParser in) throws IOException {
    JsonToken token = in.currentToken();
    if (token == null) {
      throw new IllegalArgumentException("an empty text is no JSON value");
    }
    return switch (token) {
      case START_OBJECT -> object(in);
      case START_ARRAY -> array(in);
      case VALUE_STRING -> Json.of(in.getText());
      case VALUE_NUMBER_INT -> Json.of(in.getLongValue());
      case VALUE_NUMBER_FLOAT -> Json.of(in.getDoubleValue());
      case VALUE_TRUE, VALUE_FALSE -> Json.of(in.getBooleanValue());
      default -> Json.none();
    };
  }

  private static Json object(JsonParser in) throws IOException {
    Map<String, Json> fields = new LinkedHashMap<>();
    for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
      in.nextToken();
      if (fields.put(name, read(in)) != null) {
        throw new IllegalArgumentException(
            "the field \"" + NameRules.printable(name) + "\" stands twice");
      }
    }
    return new Json.Obj(fields);
  }

  private static Json array(JsonParser in) throws IOException {
    List<Json> values = new ArrayList<>();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      values.add(read(in));
    }
    return new Json.Arr(values);
  }
}
