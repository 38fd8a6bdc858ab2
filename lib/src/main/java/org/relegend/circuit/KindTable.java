package org.relegend.circuit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the tables of this package: RFC 4180 with a header, and comment lines that begin with #.
 */
final class KindTable {
  /** One row, with what an error has to say of where it stands. */
  record Row(String file, long line, CSVRecord cells) {
    /** What stands in the column; empty where a short row ends before it. */
    String cell(String column) {
      return cells.isSet(column) ? cells.get(column) : "";
    }

    /** The words of a cell, divided by this mark. */
    List<String> words(String column, char mark) {
      List<String> words = new ArrayList<>();
      for (String word : cell(column).split(java.util.regex.Pattern.quote("" + mark))) {
        if (!word.isBlank()) {
          words.add(word.strip());
        }
      }
      return words;
    }

    KindsException fault(String column, String expected) {
      return new KindsException(
          "%s, line %d, column \"%s\": \"%s\" is not %s"
              .formatted(
                  file,
                  line,
                  column,
                  org.relegend.map.NameRules.printable(cell(column)),
                  expected));
    }
  }

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private KindTable() {}

  /**
   * The rows of a table that must have these columns.
   *
   * @param file what an error calls it
   */
  static List<Row> rows(Reader reader, String file, String... columns) throws KindsException {
    try (CSVParser parser = CSVParser.parse(withoutMark(reader), FORMAT)) {
      for (String column : columns) {
        if (!parser.getHeaderMap().containsKey(column)) {
          throw new KindsException(
              "%s: the first line must name the columns, and \"%s\" is missing"
                  .formatted(file, column));
        }
      }
      List<Row> rows = new ArrayList<>();
      for (CSVRecord row : parser) {
        if (row.size() > parser.getHeaderMap().size()) {
          throw new KindsException(
              "%s, line %d: %d cells, but the first line names %d columns"
                  .formatted(
                      file,
                      parser.getCurrentLineNumber(),
                      row.size(),
                      parser.getHeaderMap().size()));
        }
        rows.add(new Row(file, parser.getCurrentLineNumber(), row));
      }
      return rows;
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      throw new KindsException(file + " can't be read as a table: " + e.getMessage(), e);
    }
  }

  /** Spreadsheets begin their files with a byte order mark. */
  private static Reader withoutMark(Reader reader) throws IOException {
    BufferedReader buffered = new BufferedReader(reader);
    buffered.mark(1);
    if (buffered.read() != '\uFEFF') {
      buffered.reset();
    }
    return buffered;
  }

  /** The rows of a table that comes with the program. */
  static List<Row> resource(String name, String... columns) {
    try (InputStream stream = KindTable.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program's own table " + name + " is missing");
      }
      return rows(new InputStreamReader(stream, StandardCharsets.UTF_8), name, columns);
    } catch (IOException | KindsException e) {
      throw new IllegalStateException("the program's own table " + name + " is damaged", e);
    }
  }
}
