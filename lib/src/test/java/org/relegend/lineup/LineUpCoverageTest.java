package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.relegend.map.Point;

/**
 * Error and coverage against known truth: random views of a flat board on a picture of 4000 x 3000
 * pixels, clicks with 2 px noise on both pictures, spread over all four quarters of the board, some
 * pairs wrong altogether. Writes the table to {@code lib/target/lineup-coverage.md}; more trials a
 * cell give steadier figures:
 *
 * <pre>mvn -pl lib test -Dtest=LineUpCoverageTest -Drelegend.trials=2000</pre>
 */
class LineUpCoverageTest {
  private static final int TRIALS = Integer.getInteger("relegend.trials", 200);
  private static final int[] PAIRS = {4, 5, 6, 8, 10, 15, 20, 30};
  private static final int[] WRONG_SHARES = {0, 10, 20, 30};

  @Test
  void statedCircle_holdsTheTruth_forEveryNumberOfPairsAndShareOfWrongOnes() throws IOException {
    List<Cell> cells = new ArrayList<>();
    for (int pairs : PAIRS) {
      IntStream.of(WRONG_SHARES)
          .map(share -> Math.round(pairs * share / 100f))
          .distinct()
          .forEach(wrong -> cells.add(new Cell(Model.HOMOGRAPHY, pairs, wrong)));
    }
    for (Model model : List.of(Model.SIMILARITY, Model.AFFINE)) {
      for (int pairs : new int[] {model.fewest() + 1, 6, 15}) {
        cells.add(new Cell(model, pairs, 0));
        cells.add(new Cell(model, pairs, pairs / 4));
      }
    }
    cells.forEach(Cell::run);
    write(cells);
    for (int pairs : PAIRS) {
      assertThat(coverage(cells.stream().filter(c -> c.pairs == pairs && c.knowable()).toList()))
          .as("coverage of %d pairs", pairs)
          .isBetween(93.0, 97.0);
    }
    for (int share : WRONG_SHARES) {
      assertThat(
              coverage(
                  cells.stream()
                      .filter(c -> c.knowable() && Math.round(c.pairs * share / 100f) == c.wrong)
                      .toList()))
          .as("coverage with %d %% wrong", share)
          .isBetween(93.0, 97.0);
    }
    assertThat(cells.stream().filter(Cell::knowable))
        .allSatisfy(cell -> assertThat(cell.coverage()).as(cell.toString()).isBetween(91.0, 99.0));
  }

  /**
   * One wrong among so few that the rest just fix the fit can't be told from a right one by
   * anybody; what counts is that such a fit is refused or warned of, and the table says how often.
   */
  @Test
  void oneWrongOfTheFewest_isMostlyRefusedOrWarnedOf() {
    Cell four = new Cell(Model.HOMOGRAPHY, 4, 1);
    four.run();
    assertThat(four.exact).as("every fit says that its error is assumed").isEqualTo(four.fits());
    Cell five = new Cell(Model.HOMOGRAPHY, 5, 1);
    five.run();
    assertThat(five.refused + five.warned).isGreaterThan(TRIALS * 95 / 100);
  }

  private static double coverage(List<Cell> cells) {
    return 100
        * cells.stream().mapToDouble(c -> c.held).sum()
        / cells.stream().mapToInt(c -> c.told).sum();
  }

  private static void write(List<Cell> cells) throws IOException {
    StringBuilder table =
        new StringBuilder(
            """
            | model | pairs | wrong | refused % | warned % | median error px | 95 % error px | median stated radius px | covered % |
            |---|---|---|---|---|---|---|---|---|
            """);
    cells.forEach(cell -> table.append(cell.row()));
    Path target = Path.of("target");
    Files.createDirectories(target);
    Files.writeString(target.resolve("lineup-coverage.md"), table);
  }

  /** All trials of one number of pairs and of wrong ones among them. */
  private static final class Cell {
    private static final int PLACES = 8;

    final Model model;
    final int pairs;
    final int wrong;
    int refused;
    int warned;
    int exact;
    int told;
    double held;
    final double[] errors = new double[TRIALS];
    final double[] radii = new double[TRIALS];

    Cell(Model model, int pairs, int wrong) {
      this.model = model;
      this.pairs = pairs;
      this.wrong = wrong;
    }

    /** Whether the right pairs are enough to tell the wrong ones by. */
    boolean knowable() {
      return wrong == 0 || pairs - wrong > model.fewest();
    }

    int fits() {
      return TRIALS - refused;
    }

    double coverage() {
      return 100 * held / told;
    }

    void run() {
      for (int trial = 0; trial < TRIALS; trial++) {
        long seed = 1_000_003L * trial + 1009L * pairs + 31L * wrong + model.parameters();
        Simulation simulation = new Simulation(seed, model);
        List<PointPair> clicks = simulation.pairs(pairs, wrong, 2);
        FitResult result =
            Fitter.of(model)
                .expecting(Facing.SAME)
                .fit(clicks, Simulation.PICTURE, Simulation.PICTURE);
        if (result instanceof Fit fit) {
          exact += fit.warns(Warning.Kind.EXACT) ? 1 : 0;
          judge(simulation, fit);
        } else {
          refused++;
        }
      }
    }

    /** Only fits without a warning, but for what they left out or assume, count as told. */
    private void judge(Simulation simulation, Fit fit) {
      boolean doubted =
          fit.warnings().stream()
              .anyMatch(
                  w -> w.kind() != Warning.Kind.WRONG_PAIRS && w.kind() != Warning.Kind.EXACT);
      if (doubted) {
        warned++;
        return;
      }
      for (int i = 0; i < PLACES; i++) {
        Point place = simulation.place();
        double error =
            simulation.truth.apply(place).distance(fit.lineUp().carry(place).orElseThrow());
        double radius = fit.lineUp().radius95(place);
        held += error <= radius ? 1.0 / PLACES : 0;
        errors[told] = error;
        radii[told] = radius;
      }
      told++;
    }

    String row() {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %d | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |%n",
          model.title(),
          pairs,
          wrong,
          100.0 * refused / TRIALS,
          100.0 * warned / TRIALS,
          quantile(errors, 0.5),
          quantile(errors, 0.95),
          quantile(radii, 0.5),
          coverage());
    }

    private double quantile(double[] values, double share) {
      double[] sorted = Arrays.copyOf(values, told);
      Arrays.sort(sorted);
      return told == 0 ? Double.NaN : sorted[(int) (share * told)];
    }

    @Override
    public String toString() {
      return row().strip();
    }
  }
}
