package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.lineup.FitWarning.Kind;
import org.relegend.lineup.Refusal.Reason;
import org.relegend.map.Point;

class FitterTest {
  private static final Extent PICTURE = Simulation.PICTURE;
  private static final Fitter PERSPECTIVE = Fitter.of(TransformModel.HOMOGRAPHY);

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void wrongPairs_areFoundAndNamed_andTheRestIsFitted(long seed) {
    Simulation simulation = new Simulation(seed);
    Fit fit = fitted(PERSPECTIVE, simulation.pairs(20, 6, 2));
    assertThat(fit.inliers()).hasSize(14).doesNotContain(0, 1, 2, 3, 4, 5);
    assertThat(fit.doubtful()).extracting(PairError::pair).contains(0, 1, 2, 3, 4, 5);
    assertThat(fit.warns(Kind.WRONG_PAIRS)).isTrue();
    // 2 px on both pictures, the first one's seen through scales from 0.7 to 1.4 and a slant
    assertThat(fit.scatter()).isBetween(1.2, 5.5);
    assertThat(fit.freedom()).isEqualTo(20);
    assertThat(fit.rms()).isLessThanOrEqualTo(fit.p95());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void trustingAll_usesEveryPair_andStillNamesTheBadClick(long seed) {
    Simulation simulation = new Simulation(seed);
    List<PointPair> pairs = simulation.pairs(12, 0, 1);
    PointPair moved = pairs.get(7);
    pairs.set(7, new PointPair(moved.from(), moved.to().plus(80, -60)));
    Fit fit = fitted(PERSPECTIVE.trustingAll(), pairs);
    assertThat(fit.inliers()).hasSize(12);
    assertThat(fit.doubtful().get(0).pair()).isEqualTo(7);
    // without it, the fit says how far off it really is
    assertThat(fit.errors().get(7).leaveOneOut()).isCloseTo(100, within(12.0));
    assertThat(fit.errors().get(7).residual()).isLessThan(fit.errors().get(7).leaveOneOut());
  }

  @Test
  void leaveOneOut_byTheLinearFormula_equalsTheFitMadeAnew() {
    // an affine fit is linear, so for many pairs the formula is exact
    Simulation simulation = new Simulation(3);
    List<PointPair> pairs = simulation.pairs(50, 0, 2);
    Fit fit = fitted(Fitter.of(TransformModel.AFFINE).trustingAll(), pairs);
    for (int i : List.of(0, 17, 49)) {
      List<PointPair> rest = new ArrayList<>(pairs);
      PointPair left = rest.remove(i);
      Transform without = fitted(Fitter.of(TransformModel.AFFINE).trustingAll(), rest).transform();
      assertThat(fit.errors().get(i).leaveOneOut())
          .isCloseTo(without.apply(left.from()).distance(left.to()), within(1e-8));
    }
  }

  @Test
  void samePairs_giveTheSameFit() {
    List<PointPair> pairs = new Simulation(9).pairs(30, 9, 2);
    assertThat(fitted(PERSPECTIVE, pairs).transform())
        .isEqualTo(fitted(PERSPECTIVE, pairs).transform());
  }

  @ParameterizedTest
  @EnumSource(TransformModel.class)
  void tooFewPairs_areRefused_withTheNumberMissing(TransformModel model) {
    List<PointPair> pairs = new Simulation(1).pairs(model.fewest() - 1, 0, 0);
    Refusal refusal = refused(Fitter.of(model), pairs);
    assertThat(refusal.reason()).isEqualTo(Reason.TOO_FEW_PAIRS);
    assertThat(refusal.message()).contains(model.title()).endsWith("Add 1 more.");
  }

  @ParameterizedTest
  @EnumSource(TransformModel.class)
  void asManyPairsAsNeeded_fitExactly(TransformModel model) {
    Transform truth = Transform.shift(20, -5);
    List<PointPair> pairs = new ArrayList<>();
    for (Point p : PICTURE.corners().subList(0, model.fewest())) {
      pairs.add(new PointPair(p, truth.apply(p)));
    }
    Fit fit = fitted(Fitter.of(model), pairs);
    assertThat(fit.transform().apply(new Point(1000, 700)).distance(new Point(1020, 695)))
        .isLessThan(1e-9);
    boolean exact = 2 * model.fewest() == model.parameters();
    assertThat(fit.warns(Kind.EXACT)).isEqualTo(exact);
  }

  @Test
  void exactFit_statesTheAssumedErrorOfAClick() {
    List<PointPair> pairs = List.of(PointPair.of(0, 0, 0, 0), PointPair.of(100, 0, 200, 0));
    Fitter careful = Fitter.of(TransformModel.SIMILARITY).assumingClickError(0.5);
    // 0.5 px on the second picture, and 0.5 px on the first seen through a scale of 2
    assertThat(fitted(careful, pairs).scatter()).isCloseTo(Math.hypot(0.5, 1), within(1e-12));
    assertThat(fitted(careful, pairs).errors().get(0).leaveOneOut()).isInfinite();
    assertThatThrownBy(() -> careful.assumingClickError(0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void repeatedPoint_isRefused_andNamed() {
    List<PointPair> pairs = new ArrayList<>(new Simulation(1).pairs(6, 0, 2));
    pairs.set(4, new PointPair(pairs.get(1).from(), pairs.get(4).to()));
    assertThat(refused(PERSPECTIVE, pairs))
        .isEqualTo(
            new Refusal(
                Reason.REPEATED_POINT,
                "Pairs 2 and 5 use the same point of the first picture. Take one of them away."));
    List<PointPair> second = pairs.stream().map(PointPair::swapped).toList();
    assertThat(refused(PERSPECTIVE, second).message()).contains("the second picture");
  }

  @Test
  void pointsOnALine_areRefused() {
    List<PointPair> pairs = new ArrayList<>();
    Transform truth = new Simulation(4).truth;
    for (int i = 0; i < 8; i++) {
      Point p = new Point(300 + 400 * i, 500 + 200 * i);
      pairs.add(new PointPair(p, truth.apply(p)));
    }
    assertThat(refused(PERSPECTIVE, pairs).reason()).isEqualTo(Reason.ON_A_LINE);
    assertThat(refused(Fitter.of(TransformModel.AFFINE), pairs).reason())
        .isEqualTo(Reason.ON_A_LINE);
    // a similarity has enough in a line
    Simulation turned = new Simulation(4);
    List<PointPair> line = new ArrayList<>();
    Transform similarity = Transform.of(0.6, -0.8, 5, 0.8, 0.6, 9, 0, 0, 1);
    for (PointPair pair : pairs) {
      line.add(new PointPair(pair.from(), turned.clicked(similarity.apply(pair.from()), 1)));
    }
    fitted(Fitter.of(TransformModel.SIMILARITY), line);
  }

  @Test
  void allButOnePointOnALine_fixNoPerspective() {
    List<PointPair> pairs = new ArrayList<>();
    Transform truth = new Simulation(4).truth;
    for (int i = 0; i < 6; i++) {
      Point p = i == 3 ? new Point(500, 2500) : new Point(300 + 500 * i, 400 + 2 * i * i);
      pairs.add(new PointPair(p, truth.apply(p)));
    }
    Refusal refusal = refused(PERSPECTIVE, pairs);
    assertThat(refusal.reason()).isEqualTo(Reason.ON_A_LINE);
    assertThat(refusal.message()).contains("all but one").contains("Add a pair");
    assertThat(fitted(Fitter.of(TransformModel.AFFINE).trustingAll(), pairs)).isNotNull();
  }

  @Test
  void pointsNearlyOnALine_areWarnedOf() {
    Simulation simulation = new Simulation(4);
    List<PointPair> pairs = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      Point p = new Point(300 + 350 * i, 1500 + (i % 2) * 180);
      pairs.add(new PointPair(p, simulation.clicked(simulation.truth.apply(p), 1)));
    }
    Fit fit = fitted(PERSPECTIVE, pairs);
    assertThat(fit.warns(Kind.NEARLY_ON_A_LINE)).isTrue();
    double there = fit.lineUp().radius95(new Point(2000, 1600));
    assertThat(fit.lineUp().radius95(new Point(2000, 100))).isGreaterThan(5 * there);
  }

  @Test
  void pointsInACorner_areWarnedOf() {
    Simulation simulation = new Simulation(6);
    List<PointPair> pairs = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      Point p = new Point(100 + 400 * (i % 3), 100 + 300 * (i / 3));
      pairs.add(new PointPair(p, simulation.clicked(simulation.truth.apply(p), 1)));
    }
    assertThat(fitted(PERSPECTIVE, pairs).warns(Kind.CROWDED)).isTrue();
    // the same points fill a smaller picture
    FitResult small = PERSPECTIVE.fit(pairs, Extent.of(1200, 900), PICTURE);
    assertThat(((Fit) small).warns(Kind.CROWDED)).isFalse();
  }

  @Test
  void horizonThroughThePicture_isWarnedOf_andNothingIsCarriedFromBeyond() {
    Transform steep = Transform.of(1, 0, 0, 0, 1, 0, -1 / 3000.0, 0, 1);
    List<PointPair> pairs = new ArrayList<>();
    for (Point p : Extent.of(2000, 3000).corners()) {
      pairs.add(new PointPair(p, steep.apply(p)));
    }
    Fit fit = fitted(PERSPECTIVE, pairs);
    assertThat(fit.warns(Kind.FOLDS)).isTrue();
    assertThat(fit.lineUp().carry(new Point(3500, 1000))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 300})
  void cornersInADifferentOrder_areRefused(double moved) {
    List<Point> corners = PICTURE.corners();
    List<PointPair> pairs =
        List.of(
            new PointPair(corners.get(0), corners.get(0).plus(moved, 0)),
            new PointPair(corners.get(1), corners.get(2)),
            new PointPair(corners.get(2), corners.get(1)),
            new PointPair(corners.get(3), corners.get(3)));
    assertThat(refused(PERSPECTIVE, pairs).reason()).isEqualTo(Reason.FOLDED);
  }

  @Test
  void steepView_isWarnedOf() {
    List<PointPair> pairs = new ArrayList<>();
    for (Point p : PICTURE.corners()) {
      pairs.add(new PointPair(p, new Point(p.x(), p.y() / 2.5)));
    }
    assertThat(fitted(PERSPECTIVE, pairs).warns(Kind.SLANTED)).isTrue();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void unrelatedPictures_areRefused(long seed) {
    Simulation simulation = new Simulation(seed);
    assertThat(refused(PERSPECTIVE, simulation.pairs(12, 12, 2)).reason())
        .isEqualTo(Reason.NO_AGREEMENT);
    assertThat(refused(Fitter.of(TransformModel.SIMILARITY), simulation.pairs(12, 12, 2)).reason())
        .isEqualTo(Reason.NO_AGREEMENT);
  }

  @Test
  void modelTooPlain_isWarnedOf() {
    Simulation simulation = new Simulation(14);
    Fit fit =
        fitted(Fitter.of(TransformModel.SIMILARITY).trustingAll(), simulation.pairs(12, 0, 2));
    assertThat(fit.warns(Kind.LARGE_ERROR)).isTrue();
    assertThat(fitted(PERSPECTIVE, simulation.pairs(12, 0, 2)).warnings()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = TransformModel.class,
      names = {"RIGID", "SIMILARITY", "AFFINE", "HOMOGRAPHY"})
  void mirroredPictures_areToldFromUnmirrored(TransformModel model) {
    Transform turned = Transform.of(0.8, -0.6, 300, 0.6, 0.8, -100, 0, 0, 1);
    Transform flipped = turned.after(Transform.of(-1, 0, 4000, 0, 1, 0, 0, 0, 1));
    Simulation simulation = new Simulation(8);
    List<PointPair> straight = new ArrayList<>();
    List<PointPair> mirrored = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Point p = simulation.place();
      straight.add(new PointPair(p, simulation.clicked(turned.apply(p), 1)));
      mirrored.add(new PointPair(p, simulation.clicked(flipped.apply(p), 1)));
    }
    Fitter fitter = Fitter.of(model);
    assertThat(fitted(fitter, straight).mirrors()).isFalse();
    assertThat(fitted(fitter, mirrored).mirrors()).isTrue();
    assertThat(fitted(fitter.expecting(SideRelation.SAME), straight).mirrors()).isFalse();
    assertThat(fitted(fitter.expecting(SideRelation.OPPOSITE), mirrored).mirrors()).isTrue();
    assertThat(refused(fitter.expecting(SideRelation.SAME), mirrored).reason())
        .isEqualTo(Reason.MIRRORED);
    assertThat(refused(fitter.expecting(SideRelation.OPPOSITE), straight).reason())
        .isEqualTo(Reason.NOT_MIRRORED);
  }

  @Test
  void twoPairs_takeTheSideThatIsExpected() {
    List<PointPair> pairs = List.of(PointPair.of(0, 0, 0, 0), PointPair.of(100, 0, 100, 0));
    Fitter similar = Fitter.of(TransformModel.SIMILARITY);
    assertThat(fitted(similar.expecting(SideRelation.OPPOSITE), pairs).mirrors()).isTrue();
    assertThat(fitted(similar.expecting(SideRelation.SAME), pairs).mirrors()).isFalse();
    assertThat(fitted(similar, pairs).mirrors()).isFalse();
  }

  @Test
  void mirroredShift_exchangesLeftAndRight() {
    List<PointPair> pairs =
        List.of(
            PointPair.of(100, 50, 900, 52),
            PointPair.of(300, 700, 700, 702),
            PointPair.of(650, 200, 350, 202));
    Fit fit = fitted(Fitter.of(TransformModel.SHIFT), pairs);
    assertThat(fit.mirrors()).isTrue();
    assertThat(fit.transform().matrix())
        .containsExactly(new double[] {-1, 0, 1000, 0, 1, 2, 0, 0, 1}, within(1e-9));
  }

  @Test
  void richestFor_followsTheNumberOfPairs() {
    assertThat(TransformModel.richestFor(1)).isEqualTo(TransformModel.SHIFT);
    assertThat(TransformModel.richestFor(2)).isEqualTo(TransformModel.SIMILARITY);
    assertThat(TransformModel.richestFor(3)).isEqualTo(TransformModel.AFFINE);
    assertThat(TransformModel.richestFor(40)).isEqualTo(TransformModel.HOMOGRAPHY);
    assertThatThrownBy(() -> TransformModel.richestFor(0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void noPairs_areRefusedLikeTooFew() {
    assertThat(refused(Fitter.of(TransformModel.SHIFT), List.of()).message())
        .isEqualTo("A shift needs at least 1 pair; there are 0. Add 1 more.");
  }

  private static Fit fitted(Fitter fitter, List<PointPair> pairs) {
    FitResult result = fitter.fit(pairs, PICTURE, PICTURE);
    assertThat(result).isInstanceOf(Fit.class);
    return (Fit) result;
  }

  private static Refusal refused(Fitter fitter, List<PointPair> pairs) {
    FitResult result = pairs.isEmpty() ? fitter.fit(pairs) : fitter.fit(pairs, PICTURE, PICTURE);
    assertThat(result).isInstanceOf(Refusal.class);
    return (Refusal) result;
  }
}
