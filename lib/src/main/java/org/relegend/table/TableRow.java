package org.relegend.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.relegend.map.NameRules;

/**
 * One row of a table.
 *
 * @param line where it begins, counted from 1
 */
public record TableRow(TableHeader header, int line, List<String> cells) {
  private static final Pattern POINT = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern COMMA = Pattern.compile("[+-]?(\\d+,\\d*|,\\d+)");
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");

  public TableRow {
    cells = List.copyOf(cells);
  }

  /** The cell of a column without spaces around it; empty where the table hasn't the column. */
  public String text(String column) {
    int index = header.index(column);
    return index < 0 ? "" : cells.get(index);
  }

  public boolean has(String column) {
    return !text(column).isEmpty();
  }

  /**
   * The number in a column. Where the table is divided by semicolons or tabs its comma may be a
   * decimal comma.
   */
  public OptionalDouble number(String column, TableProblems problems) {
    String text = text(column);
    if (COMMA.matcher(text).matches() && !isDecimal(text)) {
      problems.add(
          problem(
              column,
              ("the comma in \"%s\" may divide decimals or thousands: write the number with a"
                      + " point")
                  .formatted(NameRules.printable(text))));
      return OptionalDouble.empty();
    }
    String point = text.replace(',', '.');
    double number = POINT.matcher(point).matches() ? Double.parseDouble(point) : Double.NaN;
    if (!Double.isFinite(number)) {
      problems.add(
          problem(
              column,
              "a number like 812.5 was expected, not \"%s\"".formatted(NameRules.printable(text))));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(number);
  }

  /** Whether the comma can be nothing but a decimal one. */
  private boolean isDecimal(String text) {
    return header.separator() == ';'
        || header.separator() == '\t' && !GROUPED.matcher(text).matches();
  }

  /** What a reading of the cell gives, or nothing and a problem where it is refused. */
  public <T> Optional<T> read(String column, Function<String, T> reading, TableProblems problems) {
    try {
      return Optional.of(reading.apply(text(column)));
    } catch (IllegalArgumentException refused) {
      problems.add(problem(column, String.valueOf(refused.getMessage())));
      return Optional.empty();
    }
  }

  /** Something wrong with this row, or with its cell of that column. */
  public TableProblem problem(String column, String message) {
    return new TableProblem(header.file(), line, column, message);
  }
}
