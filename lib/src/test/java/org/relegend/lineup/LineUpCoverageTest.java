package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Error and coverage against known truth: random views of a flat board on a picture of 4000 x 3000
 * pixels, clicks with 2 px noise on both pictures, spread over all four quarters of the board, some
 * pairs wrong altogether. {@link LineUpTable} prints the table with more trials.
 */
class LineUpCoverageTest {
  private static final int TRIALS = Integer.getInteger("relegend.trials", 24);
  static final int[] PAIRS = {4, 5, 6, 8, 10, 15, 20, 30};
  static final int[] WRONG_SHARES = {0, 10, 20, 30};

  @Test
  void statedCircle_holdsTheTruth_forEveryNumberOfPairsAndShareOfWrongOnes() {
    List<CoverageCell> cells = new ArrayList<>();
    for (int pairs : PAIRS) {
      IntStream.of(WRONG_SHARES)
          .map(share -> wrong(pairs, share))
          .distinct()
          .forEach(
              wrong ->
                  cells.add(new CoverageCell(TransformModel.HOMOGRAPHY, pairs, wrong, TRIALS)));
    }
    for (TransformModel model : List.of(TransformModel.SIMILARITY, TransformModel.AFFINE)) {
      for (int pairs : new int[] {model.fewest() + 1, 6, 15}) {
        cells.add(new CoverageCell(model, pairs, 0, TRIALS));
        cells.add(new CoverageCell(model, pairs, pairs / 4, TRIALS));
      }
    }
    cells.forEach(CoverageCell::run);
    List<CoverageCell> knowable = cells.stream().filter(CoverageCell::knowable).toList();
    assertCovered("all", knowable);
    for (int pairs : PAIRS) {
      assertCovered(pairs + " pairs", knowable.stream().filter(c -> c.pairs == pairs).toList());
    }
    for (int share : WRONG_SHARES) {
      assertCovered(
          share + " % wrong",
          knowable.stream().filter(c -> wrong(c.pairs, share) == c.wrong).toList());
    }
    knowable.forEach(cell -> assertCovered(cell.toString(), List.of(cell)));
  }

  static int wrong(int pairs, int share) {
    return Math.round(pairs * share / 100f);
  }

  /**
   * 95 in 100, give or take three standard errors: the share of its eight places that a fit holds
   * scatters by less than 0.2 from fit to fit, as they err together.
   */
  private static void assertCovered(String what, List<CoverageCell> cells) {
    int result = cells.stream().mapToInt(cell -> cell.reported).sum();
    double held = cells.stream().mapToDouble(cell -> cell.held).sum();
    double slack = 3 * 100 * 0.2 / Math.sqrt(result);
    assertThat(100 * held / result).as(what).isBetween(95 - slack, 95 + slack);
  }

  /**
   * One wrong among so few that the rest just fix the fit can't be told from a right one by
   * anybody; what counts is that such a fit is refused or warned of, and the table says how often.
   */
  @Test
  void oneWrongOfTheFewest_isMostlyRefusedOrWarnedOf() {
    CoverageCell four = new CoverageCell(TransformModel.HOMOGRAPHY, 4, 1, 200);
    four.run();
    assertThat(four.exact).as("every fit says that its error is assumed").isEqualTo(four.fits());
    CoverageCell five = new CoverageCell(TransformModel.HOMOGRAPHY, 5, 1, 200);
    five.run();
    assertThat(five.refused + five.warned).isGreaterThan(190);
  }
}
