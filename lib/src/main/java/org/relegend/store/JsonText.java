package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;

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
}
