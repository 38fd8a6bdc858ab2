package org.relegend.store;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;

/** JSON that is well formed but doesn't say what it should; told with the place in the file. */
final class UnfitJsonException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient JsonLocation at;
  private final String path;

  private UnfitJsonException(JsonLocation at, String path, String trouble) {
    super(trouble);
    this.at = at;
    this.path = path;
  }

  /** Trouble with the token that was just read. */
  static UnfitJsonException here(JsonParser in, String trouble) {
    return from(in, in.currentTokenLocation(), trouble);
  }

  /** Trouble with a value that began at {@code start} and has just been read to its end. */
  static UnfitJsonException from(JsonParser in, JsonLocation start, String trouble) {
    String pointer = in.getParsingContext().pathAsPointer().toString();
    return new UnfitJsonException(start, pointer.isEmpty() ? "" : pointer.substring(1), trouble);
  }

  JsonLocation at() {
    return at;
  }

  /** Where in the structure, as parts/12/pins/0; empty at the top. */
  String path() {
    return path;
  }
}
