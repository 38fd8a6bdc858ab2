package org.relegend.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.relegend.map.Names;

/**
 * One row of a table.
 *
 * @param line where it begins, counted from 1
 */
public record Row(Header header, int line, List<String> cells) {
  private static final Pattern POINT = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern COMMA = Pattern.compile("[+-]?(\\d+,\\d*|,\\d+)");
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");

  public Row {
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
  public OptionalDouble number(String column, Problems problems) {
    String text = text(column);
    if (POINT.matcher(text).matches()) {
      return OptionalDouble.of(Double.parseDouble(text));
    }
    if (COMMA.matcher(text).matches()) {
      return decimalComma(column, text, problems);
    }
    problems.add(
        problem(
            column,
            "a number like 812.5 was expected, not \"%s\"".formatted(Names.printable(text))));
    return OptionalDouble.empty();
  }

  private OptionalDouble decimalComma(String column, String text, Problems problems) {
    boolean sure = header.separator() == ';';
    boolean likely = header.separator() == '\t' && !GROUPED.matcher(text).matches();
    if (sure || likely) {
      return OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
    }
    problems.add(
        problem(
            column,
            "the comma in \"%s\" may divide decimals or thousands: write the number with a point"
                .formatted(text)));
    return OptionalDouble.empty();
  }

  /** What a reading of the cell gives, or nothing and a problem where it is refused. */
  public <T> Optional<T> read(String column, Function<String, T> reading, Problems problems) {
    try {
      return Optional.of(reading.apply(text(column)));
    } catch (IllegalArgumentException refused) {
      problems.add(problem(column, String.valueOf(refused.getMessage())));
      return Optional.empty();
    }
  }

  /** Something wrong with this row, or with its cell of that column. */
  public Problem problem(String column, String message) {
    return new Problem(header.file(), line, column, message);
  }
}
