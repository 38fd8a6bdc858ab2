package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.relegend.lineup.PointPair;
import org.relegend.table.Columns;
import org.relegend.table.Problems;
import org.relegend.table.Row;
import org.relegend.table.Source;
import org.relegend.table.TableException;
import org.relegend.table.TableText;

/** Reads a table of point pairs: {@code x1,y1,x2,y2}. */
final class PairRows {
  private static final Columns COLUMNS = new Columns(List.of("x1", "y1", "x2", "y2"), List.of());

  private PairRows() {}

  static List<PointPair> read(Path file) throws CommandFailure {
    List<PointPair> pairs = new ArrayList<>();
    Problems problems = new Problems();
    try {
      for (Row row : TableText.read(Source.of(file), COLUMNS).rows()) {
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
