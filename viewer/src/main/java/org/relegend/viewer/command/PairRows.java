package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.relegend.lineup.PointPair;
import org.relegend.table.TableColumns;
import org.relegend.table.TableException;
import org.relegend.table.TableProblems;
import org.relegend.table.TableRow;
import org.relegend.table.TableSource;
import org.relegend.table.TableText;

/** Reads a table of point pairs: {@code x1,y1,x2,y2}. */
final class PairRows {
  private static final TableColumns COLUMNS =
      new TableColumns(List.of("x1", "y1", "x2", "y2"), List.of());

  private PairRows() {}

  static List<PointPair> read(Path file) throws CommandFailure {
    List<PointPair> pairs = new ArrayList<>();
    TableProblems problems = new TableProblems();
    try {
      for (TableRow row : TableText.read(TableSource.of(file), COLUMNS).rows()) {
        double[] numbers = new double[4];
        for (int i = 0; i < numbers.length; i++) {
          OptionalDouble number = row.number(COLUMNS.required().get(i), problems);
          numbers[i] = number.orElse(0);
        }
        pairs.add(PointPair.of(numbers[0], numbers[1], numbers[2], numbers[3]));
      }
      problems.throwIfAny();
      return pairs;
    } catch (TableException wrong) {
      throw new CommandFailure(wrong.inOneLine());
    }
  }
}
