package org.relegend.table;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.NameRules;

/**
 * A word of a typed line.
 *
 * @param start its first character in the line, counted from 0
 */
record TraceWord(String text, int start) {
  /** Longest line taken, in characters. */
  private static final int MAX_LINE = 10_000;

  int end() {
    return start + text.length();
  }

  TraceException wrong(String message) {
    return new TraceException(start, end(), message);
  }

  TraceException wrong(IllegalArgumentException refused) {
    return wrong(String.valueOf(refused.getMessage()));
  }

  /** The words of a line; quotation marks keep a name with spaces together. */
  static List<TraceWord> split(String line) throws TraceException {
    if (line.length() > MAX_LINE) {
      throw new TraceException(0, line.length(), "a line has at most 10,000 characters");
    }
    List<TraceWord> words = new ArrayList<>();
    int at = skipSpace(line, 0);
    while (at < line.length()) {
      TraceWord word = line.charAt(at) == '"' ? quoted(line, at) : plain(line, at);
      words.add(word);
      at = word.end() + (line.charAt(at) == '"' ? 1 : 0);
      if (at < line.length() && !Character.isWhitespace(line.charAt(at))) {
        throw new TraceException(at, at + 1, "a space was expected after the quotation mark");
      }
      at = skipSpace(line, at);
    }
    return words;
  }

  private static TraceWord quoted(String line, int at) throws TraceException {
    int close = line.indexOf('"', at + 1);
    if (close < 0) {
      throw new TraceException(at, line.length(), "this quotation mark isn't closed");
    }
    return new TraceWord(line.substring(at + 1, close), at + 1);
  }

  private static TraceWord plain(String line, int at) throws TraceException {
    int end = at;
    while (end < line.length() && !Character.isWhitespace(line.charAt(end))) {
      if (line.charAt(end) == '"') {
        throw new TraceException(
            end,
            end + 1,
            "a quotation mark inside %s: it may only stand around a whole name"
                .formatted(NameRules.printable(line.substring(at, end))));
      }
      end++;
    }
    return new TraceWord(line.substring(at, end), at);
  }

  private static int skipSpace(String line, int from) {
    int at = from;
    while (at < line.length() && Character.isWhitespace(line.charAt(at))) {
      at++;
    }
    return at;
  }
}
