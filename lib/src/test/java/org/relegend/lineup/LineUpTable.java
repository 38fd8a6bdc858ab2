package org.relegend.lineup;

/**
 * Prints the README's table of error against number of pairs and share of wrong ones, from the same
 * simulation as {@link LineUpCoverageTest}; some minutes. Run it from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.lineup.LineUpTable"
 * </pre>
 */
public final class LineUpTable {
  private static final int TRIALS = 300;

  private LineUpTable() {}

  public static void main(String[] args) {
    StringBuilder table = new StringBuilder("| pairs |");
    for (int share : LineUpCoverageTest.WRONG_SHARES) {
      table.append(" %d %% wrong |".formatted(share));
    }
    table.append("\n|---|---|---|---|---|\n");
    for (int pairs : LineUpCoverageTest.PAIRS) {
      table.append("| %d |".formatted(pairs));
      int before = -1;
      for (int share : LineUpCoverageTest.WRONG_SHARES) {
        int wrong = LineUpCoverageTest.wrong(pairs, share);
        table.append(wrong == before ? " |" : " " + cell(pairs, wrong) + " |");
        before = wrong;
      }
      table.append('\n');
    }
    System.out.print(table);
  }

  private static String cell(int pairs, int wrong) {
    CoverageCell cell = new CoverageCell(TransformModel.HOMOGRAPHY, pairs, wrong, TRIALS);
    cell.run();
    return cell.summary();
  }
}
