package org.relegend.table;

import java.util.List;
import java.util.stream.Collectors;

/** Tables that can't be taken as they are; nothing was changed. */
public final class TableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<TableProblem> problems;
  private final int count;

  /**
   * Tells of several problems.
   *
   * @param problems the first of them
   * @param count how many there are in all
   */
  public TableException(List<TableProblem> problems, int count) {
    super(text(problems, count));
    this.problems = List.copyOf(problems);
    this.count = count;
  }

  public TableException(TableProblem problem) {
    this(List.of(problem), 1);
  }

  public List<TableProblem> problems() {
    return problems;
  }

  /** How many problems there are, told or not. */
  public int count() {
    return count;
  }

  /** The first problem, and where the others are, in one line. */
  public String inOneLine() {
    if (count == 1) {
      return problems.get(0).toString();
    }
    String where =
        problems.stream()
            .skip(1)
            .map(TableProblem::where)
            .distinct()
            .collect(Collectors.joining("; "));
    return "%s (and %d more problem%s, at %s%s; nothing was changed)"
        .formatted(
            problems.get(0),
            count - 1,
            count == 2 ? "" : "s",
            where,
            count > problems.size() ? " and further down" : "");
  }

  private static String text(List<TableProblem> problems, int count) {
    String lines = problems.stream().map(TableProblem::toString).collect(Collectors.joining("\n"));
    int untold = count - problems.size();
    return untold == 0 ? lines : lines + "\nand %d more like these".formatted(untold);
  }
}
