package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;

/** How one kind of value is written as JSON and read back. */
interface Codec<T> {
  /**
   * Reads the value whose first token the parser is at, and leaves the parser at its last one.
   *
   * @throws UnfitJsonException where the JSON is well formed but no such value
   */
  T read(JsonParser in) throws IOException;

  void write(T value, JsonGenerator out) throws IOException;
}
