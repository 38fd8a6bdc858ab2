package org.relegend.table;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/**
 * Finds out in which encoding a spreadsheet wrote a table: by its byte order mark; else UTF-8 if
 * all of it is; else Windows-1252 if nothing of it is.
 */
final class TextDecoder {
  /** Longest line taken, in characters: many times the longest row that makes sense. */
  static final int MAX_LINE = 100_000;

  private static final Charset WINDOWS = Charset.forName("windows-1252");

  private final TableSource source;
  private final byte[] bytes;

  private TextDecoder(TableSource source) {
    this.source = source;
    bytes = source.bytes();
  }

  /**
   * The text, without byte order mark.
   *
   * @throws TableException where it is no text, or in no encoding or several
   */
  static String decode(TableSource source) throws TableException {
    TextDecoder decoder = new TextDecoder(source);
    if (source.bytes().length == 0) {
      throw decoder.problem(0, "is empty: a table begins with a row of column names");
    }
    decoder.refuseSpreadsheet();
    String text = decoder.text();
    decoder.requireLines(text);
    return text;
  }

  private void refuseSpreadsheet() throws TableException {
    if (startsWith(0x50, 0x4B, 0x03, 0x04) || startsWith(0xD0, 0xCF, 0x11, 0xE0)) {
      throw problem(0, "is a packed file or a spreadsheet, not a text table: export it as CSV");
    }
  }

  private String text() throws TableException {
    if (startsWith(0xEF, 0xBB, 0xBF)) {
      return strictly(StandardCharsets.UTF_8, 3);
    }
    if (startsWith(0xFF, 0xFE)) {
      return strictly(StandardCharsets.UTF_16LE, 2);
    }
    if (startsWith(0xFE, 0xFF)) {
      return strictly(StandardCharsets.UTF_16BE, 2);
    }
    return unmarked();
  }

  private String strictly(Charset charset, int from) throws TableException {
    CharsetDecoder decoder = charset.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
    try {
      return decoder.decode(in).toString();
    } catch (CharacterCodingException malformed) {
      throw problem(
          lineAt(in.position()),
          "holds bytes that are no %s text: save the table as UTF-8".formatted(charset.name()));
    }
  }

  private String unmarked() throws TableException {
    CharsetDecoder utf8 = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    int firstBad = -1;
    CoderResult result = utf8.decode(in, out, true);
    while (result.isError()) {
      firstBad = firstBad < 0 ? in.position() : firstBad;
      in.position(in.position() + result.length());
      result = utf8.decode(in, out, true);
    }
    String good = out.flip().toString();
    if (firstBad < 0) {
      return good;
    }
    int firstGood = lineOfNonAscii(good);
    if (firstGood > 0) {
      throw problem(
          lineAt(firstBad),
          "is not in UTF-8 while line %d is: save the table in one encoding, best UTF-8"
              .formatted(firstGood));
    }
    return strictly(WINDOWS, 0);
  }

  private static int lineOfNonAscii(String text) {
    int line = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x80) {
        return line;
      }
      if (c == '\n') {
        line++;
      }
    }
    return 0;
  }

  private void requireLines(String text) throws TableException {
    int line = 1;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == 0) {
        throw problem(line, "holds a NUL character, which no text has: is this a CSV file?");
      }
      if (c == '\n' || c == '\r') {
        line += c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n' ? 0 : 1;
        start = i + 1;
      } else if (i - start > MAX_LINE) {
        throw problem(line, "is longer than 100,000 characters, more than any row of a table");
      }
    }
  }

  private int lineAt(int offset) {
    int line = 1;
    for (int i = 0; i < offset; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }

  private boolean startsWith(int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private TableException problem(int line, String message) {
    return new TableException(new TableProblem(source.name(), line, "", message));
  }
}
