package org.relegend.store;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.relegend.map.NameRules;
import org.relegend.store.StoreException.Kind;

/** Tells in the user's words what a parser found wrong, and where. */
final class JsonErrors {
  private JsonErrors() {}

  /**
   * @param remedy what to do about it, a sentence without its full stop
   */
  static StoreException exception(IOException trouble, Path path, String remedy) {
    if (trouble instanceof UnfitJsonException unfit) {
      String inside = unfit.path().isEmpty() ? "" : " (" + NameRules.printable(unfit.path()) + ")";
      return at(unfit.at(), path, inside, String.valueOf(unfit.getMessage()), remedy, trouble);
    }
    JsonLocation at =
        trouble instanceof JsonProcessingException parsing ? parsing.getLocation() : null;
    return at(at, path, "", sentence(trouble), remedy, trouble);
  }

  private static StoreException at(
      @Nullable JsonLocation at,
      Path path,
      String inside,
      String what,
      String remedy,
      IOException cause) {
    String where =
        at == null ? "" : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr());
    return new StoreException(
        Kind.BAD_CONTENT, path, "%s%s: %s. %s.".formatted(where, inside, what, remedy), cause);
  }

  private static String sentence(IOException trouble) {
    String message =
        trouble instanceof JsonProcessingException parsing ? parsing.getOriginalMessage() : null;
    if (trouble instanceof JsonEOFException
        || message != null && message.contains("end-of-input")) {
      return "the file ends in the middle, so a part of it is lost";
    }
    if (trouble instanceof StreamConstraintsException) {
      return "this is nested too deeply, or a text or number in it is too long";
    }
    return message == null || message.isEmpty()
        ? "this is no JSON text in UTF-8"
        : "this is no JSON: " + cleaned(message);
  }

  /** The parser's own words without the names from inside it that some of them have. */
  private static String cleaned(String message) {
    String text = message;
    for (String mark :
        new String[] {"`", "[Source", "(start marker", " (for ", " - not", "enable"}) {
      int at = text.indexOf(mark);
      text = at < 0 ? text : text.substring(0, at);
    }
    String line = NameRules.printable(text.strip());
    String first = line.isEmpty() ? "" : line.substring(0, 1).toLowerCase(Locale.ROOT);
    return line.isEmpty() ? "something unexpected stands here" : first + line.substring(1);
  }
}
