package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/**
 * Lays out a document so that a change of one thing changes few lines: a line for every field of an
 * entity, and one for every entry of its lists (a pin, a net member, an attestation). For one
 * document only, since it counts the depth as it goes.
 */
final class MapPrinter implements PrettyPrinter {
  /** Objects down to this depth have a line for each field: document, info, entity. */
  private static final int OBJECT_LINES = 3;

  /** Lists down to this depth have a line for each entry: of entities, and in entities. */
  private static final int ARRAY_LINES = 4;

  private int depth;

  private void line(JsonGenerator out) throws IOException {
    out.writeRaw('\n');
    for (int i = 0; i < depth; i++) {
      out.writeRaw("  ");
    }
  }

  @Override
  public void writeRootValueSeparator(JsonGenerator out) throws IOException {
    out.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator out) throws IOException {
    out.writeRaw('{');
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator out) throws IOException {
    if (depth <= OBJECT_LINES) {
      line(out);
    }
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator out) throws IOException {
    out.writeRaw(": ");
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
    separate(out, OBJECT_LINES);
  }

  @Override
  public void writeEndObject(JsonGenerator out, int entries) throws IOException {
    end(out, entries, OBJECT_LINES, '}');
  }

  @Override
  public void writeStartArray(JsonGenerator out) throws IOException {
    out.writeRaw('[');
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator out) throws IOException {
    if (depth <= ARRAY_LINES) {
      line(out);
    }
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
    separate(out, ARRAY_LINES);
  }

  @Override
  public void writeEndArray(JsonGenerator out, int values) throws IOException {
    end(out, values, ARRAY_LINES, ']');
  }

  private void separate(JsonGenerator out, int lines) throws IOException {
    out.writeRaw(',');
    if (depth <= lines) {
      line(out);
    } else {
      out.writeRaw(' ');
    }
  }

  private void end(JsonGenerator out, int entries, int lines, char bracket) throws IOException {
    boolean onOwnLine = depth <= lines && entries > 0;
    depth--;
    if (onOwnLine) {
      line(out);
    }
    out.writeRaw(bracket);
  }
}
