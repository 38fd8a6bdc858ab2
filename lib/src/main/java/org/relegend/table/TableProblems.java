package org.relegend.table;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong, so that a technician can mend a table in one go. */
public final class TableProblems {
  /** How many are told one by one; the rest is counted. */
  public static final int LIMIT = 20;

  private final List<TableProblem> first = new ArrayList<>();
  private int count;

  public void add(TableProblem problem) {
    count++;
    if (first.size() < LIMIT) {
      first.add(problem);
    }
  }

  public int count() {
    return count;
  }

  /**
   * Goes on only where nothing is wrong.
   *
   * @throws TableException with all that was collected
   */
  public void throwIfAny() throws TableException {
    if (count > 0) {
      throw exception();
    }
  }

  /** All that was collected. */
  TableException exception() {
    return new TableException(first, count);
  }
}
