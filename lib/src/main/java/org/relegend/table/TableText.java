package org.relegend.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.relegend.map.NameRules;

/**
 * A table as spreadsheets export it: RFC 4180, or divided by semicolons or tabs, which its header
 * row tells. Rows without any content are skipped; line breaks inside cells become single ones.
 *
 * @param warnings what was left out, as columns that mean nothing here
 */
public record TableText(TableHeader header, List<TableRow> rows, List<String> warnings) {
  /** Longest cell taken, in characters. */
  static final int MAX_CELL = 20_000;

  /** How many unknown columns a warning names. */
  private static final int NAMED = 8;

  private static final char[] SEPARATORS = {',', ';', '\t'};

  public TableText {
    rows = List.copyOf(rows);
    warnings = List.copyOf(warnings);
  }

  /**
   * Reads a table.
   *
   * @throws TableException where it is none, or lacks a required column, or has ragged rows
   */
  public static TableText read(TableSource source, TableColumns columns) throws TableException {
    return new Parser(source, columns).table();
  }

  private static final class Parser {
    private final String name;
    private final String text;
    private final TableColumns columns;
    private final TableProblems problems = new TableProblems();
    private final List<String> warnings = new ArrayList<>();

    Parser(TableSource source, TableColumns columns) throws TableException {
      name = source.name();
      String decoded = TextDecoder.decode(source);
      text = withoutSeparatorLine(decoded);
      this.columns = columns;
    }

    TableText table() throws TableException {
      char separator = separator();
      try (CSVParser parser = parser(separator)) {
        return rows(parser, separator);
      } catch (IOException impossible) {
        throw new UncheckedIOException(impossible);
      }
    }

    private TableText rows(CSVParser parser, char separator) throws TableException {
      List<TableRow> rows = new ArrayList<>();
      Iterator<CSVRecord> records = parser.iterator();
      TableHeader header = null;
      while (true) {
        // blank lines count too, so a row begins on the line after the one before it ended
        int line = (int) parser.getCurrentLineNumber() + 1;
        List<String> cells = next(records, line);
        if (cells.isEmpty()) {
          break;
        }
        if (cells.stream().allMatch(String::isEmpty)) {
          continue;
        }
        if (header == null) {
          header = header(cells, line, separator);
        } else {
          addRow(rows, header, line, cells);
        }
      }
      if (header == null) {
        throw new TableException(
            new TableProblem(
                name, 0, "", "holds no row: a table begins with a row of column names"));
      }
      problems.throwIfAny();
      return new TableText(header, rows, warnings);
    }

    /** The cells of the next row, stripped; none at the end of the table. */
    private List<String> next(Iterator<CSVRecord> records, int line) throws TableException {
      try {
        if (!records.hasNext()) {
          return List.of();
        }
        return Arrays.stream(records.next().values()).map(Parser::plain).toList();
      } catch (UncheckedIOException quotes) {
        problems.add(
            new TableProblem(
                name,
                line,
                "",
                "a quotation mark opens in this row and isn't closed, or text follows a closing"
                    + " one; a quotation mark inside a cell is written twice"));
        throw problems.exception();
      }
    }

    private TableHeader header(List<String> cells, int line, char separator) throws TableException {
      List<String> names =
          cells.stream().map(cell -> NameRules.printable(cell.toLowerCase(Locale.ROOT))).toList();
      Set<String> seen = new LinkedHashSet<>();
      for (String column : names) {
        if (!column.isEmpty() && !seen.add(column)) {
          problems.add(
              new TableProblem(name, line, column, "stands twice in the row of column names"));
        }
      }
      warnOfUnknown(seen);
      for (String column : columns.required()) {
        if (!seen.contains(column)) {
          problems.add(
              new TableProblem(
                  name,
                  line,
                  column,
                  "is missing from the row of column names, which begins with \"%s\""
                      .formatted(NameRules.printable(String.join(" ", names)))));
        }
      }
      problems.throwIfAny();
      return new TableHeader(name, separator, names);
    }

    /** One warning for all of them. */
    private void warnOfUnknown(Set<String> names) {
      List<String> unknown =
          names.stream().filter(column -> !columns.all().contains(column)).toList();
      if (!unknown.isEmpty()) {
        String first = unknown.stream().limit(NAMED).collect(Collectors.joining(", "));
        int rest = unknown.size() - NAMED;
        warnings.add(
            "%s: left out: %s%s; the columns known here are %s"
                .formatted(name, first, rest > 0 ? " and %d more".formatted(rest) : "", columns));
      }
    }

    private void addRow(List<TableRow> rows, TableHeader header, int line, List<String> cells) {
      int width = header.columns().size();
      int used = cells.size();
      while (used > width && cells.get(used - 1).isEmpty()) {
        used--;
      }
      if (used != width) {
        problems.add(
            new TableProblem(
                name,
                line,
                "",
                "has %s where the header has %d: is a %s inside a cell not in quotes?"
                    .formatted(
                        used == 1 ? "1 cell" : used + " cells",
                        width,
                        separatorName(header.separator()))));
        return;
      }
      for (int i = 0; i < width; i++) {
        if (cells.get(i).length() > MAX_CELL) {
          problems.add(
              new TableProblem(
                  name,
                  line,
                  header.columns().get(i),
                  "is longer than 20,000 characters: is a quotation mark not closed?"));
          return;
        }
      }
      rows.add(new TableRow(header, line, cells.subList(0, width)));
    }

    /** The separator by which the first row gives the most columns that are known. */
    private char separator() {
      char best = ',';
      long most = 0;
      for (char candidate : SEPARATORS) {
        long known =
            firstRow(candidate).stream()
                .map(cell -> cell.toLowerCase(Locale.ROOT))
                .filter(columns.all()::contains)
                .count();
        if (known > most) {
          best = candidate;
          most = known;
        }
      }
      return best;
    }

    private List<String> firstRow(char separator) {
      try (CSVParser parser = parser(separator)) {
        for (CSVRecord record : parser) {
          List<String> cells = Arrays.stream(record.values()).map(Parser::strip).toList();
          if (!cells.stream().allMatch(String::isEmpty)) {
            return cells;
          }
        }
      } catch (IOException | UncheckedIOException notSoDivided) {
        return List.of();
      }
      return List.of();
    }

    private CSVParser parser(char separator) throws IOException {
      CSVFormat format =
          CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(false).get();
      return CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get();
    }

    /** Some spreadsheets write "sep=;" above the header; it is blanked so that lines count on. */
    private static String withoutSeparatorLine(String text) {
      boolean has =
          text.length() > 5 && text.startsWith("sep=") && "\r\n".indexOf(text.charAt(5)) >= 0;
      return has ? text.substring(5) : text;
    }

    /** Stripped, and with one sort of line breaks. */
    private static String plain(String cell) {
      String stripped = strip(cell);
      return stripped.indexOf('\r') < 0
          ? stripped
          : stripped.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static String strip(String cell) {
      int start = 0;
      int end = cell.length();
      while (start < end && isSpace(cell.charAt(start))) {
        start++;
      }
      while (end > start && isSpace(cell.charAt(end - 1))) {
        end--;
      }
      return cell.substring(start, end);
    }

    private static boolean isSpace(char c) {
      return Character.isWhitespace(c) || c == '\u00a0';
    }

    private static String separatorName(char separator) {
      return switch (separator) {
        case ';' -> "semicolon";
        case '\t' -> "tab";
        default -> "comma";
      };
    }
  }
}
