package org.relegend.viewer.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardTurn;
import org.relegend.map.Box;
import org.relegend.map.Point;

class ViewStateTest {
  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void toPictureAndToScreen_undoEachOther(long seed) {
    Random random = new Random(seed);
    ViewState view = anyView(random);
    Point point = anyPoint(random, view);
    ScreenPoint screen = anyScreenPoint(random, view);

    Point back = view.toPicture(view.toScreen(point));
    ScreenPoint screenBack = view.toScreen(view.toPicture(screen));

    assertThat(back.distance(point)).isLessThan(1e-6);
    assertThat(screenBack.distance(screen)).isLessThan(1e-6);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void transform_isTheSameAsToScreen(long seed) {
    Random random = new Random(seed);
    ViewState view = anyView(random);
    Point point = anyPoint(random, view);
    Point2D painted = view.transform().transform(new Point2D.Double(point.x(), point.y()), null);
    ScreenPoint screen = view.toScreen(point);

    assertThat(painted.distance(screen.x(), screen.y())).isLessThan(1e-6);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void zoom_keepsWhatIsUnderThePointer(long seed) {
    Random random = new Random(seed);
    ViewState view = anyView(random).fitted();
    view = view.zoomedBy(1 + 20 * random.nextDouble(), view.toScreen(anyPoint(random, view)));
    ScreenPoint anchor = view.toScreen(anyPoint(random, view));
    Point before = view.toPicture(anchor);

    ViewState zoomed = view.zoomedBy(1 + random.nextDouble(), anchor);

    assertThat(zoomed.toPicture(anchor).distance(before)).isLessThan(1e-6 * view.pictureWidth());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anyWalk_neverLosesThePicture(long seed) {
    Random random = new Random(seed);
    ViewState view = anyView(random).fitted();
    for (int i = 0; i < 50; i++) {
      ScreenPoint anchor = anyScreenPoint(random, view);
      view =
          random.nextBoolean()
              ? view.zoomedBy(Math.exp(random.nextGaussian()), anchor)
              : view.pannedBy(500 * random.nextGaussian(), 500 * random.nextGaussian());
      Box picture = new Box(0, 0, view.pictureWidth(), view.pictureHeight()).grown(1e-6);
      assertThat(picture.contains(view.centre())).isTrue();
      assertThat(view.scale()).isBetween(view.fitScale() / 4.01, ViewState.MAX_SCALE);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void fitted_showsAllOfThePictureAndTouchesTwoEdges(long seed) {
    ViewState view = anyView(new Random(seed)).fitted();

    Box seen = view.onScreen(new Box(0, 0, view.pictureWidth(), view.pictureHeight()));

    assertThat(seen.left()).isGreaterThan(-1e-6);
    assertThat(seen.top()).isGreaterThan(-1e-6);
    assertThat(seen.right()).isLessThan(view.width() + 1e-6);
    assertThat(seen.bottom()).isLessThan(view.height() + 1e-6);
    double share = Math.max(seen.width() / view.width(), seen.height() / view.height());
    assertThat(view.scale() == ViewState.MAX_SCALE || share > 1 - 1e-9).isTrue();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void panned_movesThePictureAlong(long seed) {
    Random random = new Random(seed);
    ViewState view = anyView(random).fitted().zoomedBy(30, new ScreenPoint(1, 1));
    view = view.centredOn(new Point(view.pictureWidth() / 2, view.pictureHeight() / 2));
    Point point = view.centre();
    ScreenPoint before = view.toScreen(point);

    ScreenPoint after = view.pannedBy(3, -2).toScreen(point);

    assertThat(after.x() - before.x()).isCloseTo(3, within(1e-6));
    assertThat(after.y() - before.y()).isCloseTo(-2, within(1e-6));
  }

  @Test
  void revealing_whatIsSeen_changesNothing() {
    ViewState view = ViewState.fit(1000, 500, 800, 600, Orientation.UPRIGHT);

    assertThat(view.revealing(new Box(400, 200, 420, 210), 40)).isEqualTo(view);
  }

  @Test
  void revealing_whatIsOutside_keepsTheScaleIfItFits() {
    ViewState view =
        ViewState.fit(1000, 500, 800, 600, Orientation.UPRIGHT).centredOn(new Point(10, 10), 4);
    Box small = new Box(900, 400, 920, 420);
    Box large = new Box(0, 0, 1000, 500);

    assertThat(view.revealing(small, 40).scale()).isEqualTo(4);
    assertThat(view.revealing(small, 40).centre().distance(small.centre())).isLessThan(1e-9);
    assertThat(view.revealing(large, 40).scale()).isLessThan(4);
    assertThat(view.revealing(large, 40).visible().contains(new Point(0, 0))).isTrue();
  }

  @Test
  void nearing_whatIsTooSmallToMakeOut_zoomsIn() {
    ViewState fitted = ViewState.fit(1000, 500, 800, 600, Orientation.UPRIGHT);
    Box small = new Box(300, 100, 330, 110);

    ViewState near = fitted.nearing(small, 40);

    assertThat(near.onScreen(small).width()).isCloseTo(120, within(1e-9));
    assertThat(near.centre().distance(small.centre())).isLessThan(1e-9);
    assertThat(near.nearing(small, 40)).isEqualTo(near);
    Box speck = new Box(300, 100, 300, 100);
    assertThat(fitted.nearing(speck, 40).scale()).isEqualTo(6 * fitted.scale());
  }

  @Test
  void nearing_whatCanBeMadeOut_keepsTheScale() {
    ViewState view =
        ViewState.fit(1000, 500, 800, 600, Orientation.UPRIGHT).centredOn(new Point(300, 100), 20);
    Box small = new Box(600, 300, 630, 310);

    assertThat(view.nearing(small, 40).scale()).isEqualTo(20);
    assertThat(view.nearing(small, 40).centre().distance(small.centre())).isLessThan(1e-9);
  }

  @Test
  void resized_keepsTheMiddleOrTheFit() {
    ViewState fitted = ViewState.fit(1000, 500, 800, 600, Orientation.UPRIGHT);
    ViewState zoomed = fitted.centredOn(new Point(300, 200), 4);

    assertThat(fitted.resizedTo(400, 100)).isEqualTo(fitted.resizedTo(400, 100).fitted());
    assertThat(zoomed.resizedTo(400, 100).centre().distance(new Point(300, 200))).isLessThan(1e-9);
    assertThat(zoomed.resizedTo(400, 100).scale()).isEqualTo(4);
  }

  /**
   * A board turned like a page shows left and right exchanged; like a wall calendar, top and
   * bottom.
   */
  @ParameterizedTest
  @CsvSource({"SIDE_EDGE, 90, 20", "UNKNOWN, 90, 20", "TOP_EDGE, 10, 80"})
  void throughBoard_putsPlacesWhereTheComponentSideHasThem(BoardTurn turn, double x, double y) {
    ViewState view = ViewState.fit(100, 100, 100, 100, Orientation.throughBoard(turn));

    assertThat(view.toScreen(new Point(10, 20)).distance(new ScreenPoint(x, y))).isLessThan(1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 10, 20", "1, 80, 10", "2, 90, 80", "3, 20, 90"})
  void quarterTurns_areClockwise(int turns, double x, double y) {
    ViewState view = ViewState.fit(100, 100, 100, 100, Orientation.UPRIGHT.turned(turns));

    assertThat(view.toScreen(new Point(10, 20))).isEqualTo(new ScreenPoint(x, y));
  }

  @Test
  void flipped_exchangesLeftAndRightOnTheScreen() {
    for (int turns = 0; turns < 4; turns++) {
      Orientation turned = new Orientation(turns, false, 5);
      ScreenPoint before = ViewState.fit(100, 100, 200, 200, turned).toScreen(new Point(10, 20));
      ScreenPoint after =
          ViewState.fit(100, 100, 200, 200, turned.flipped()).toScreen(new Point(10, 20));

      assertThat(after.distance(new ScreenPoint(200 - before.x(), before.y()))).isLessThan(1e-9);
    }
  }

  @Test
  void nonsense_isRefused() {
    assertThatThrownBy(() -> new Orientation(4, false, 0)).hasMessageContaining("0 to 3");
    assertThatThrownBy(() -> new Orientation(0, false, 16)).hasMessageContaining("tilt");
    assertThatThrownBy(() -> new Orientation(0, false, Double.NaN)).hasMessageContaining("tilt");
    assertThatThrownBy(() -> ViewState.fit(0, 5, 5, 5, Orientation.UPRIGHT))
        .hasMessageContaining("0.0 x 5.0");
    assertThatThrownBy(() -> ViewState.fit(5, 5, 5, 0, Orientation.UPRIGHT))
        .hasMessageContaining("5 x 0");
    assertThatThrownBy(() -> new ScreenPoint(Double.NaN, 0)).hasMessageContaining("finite");
  }

  private static ViewState anyView(Random random) {
    Orientation orientation =
        new Orientation(
            random.nextInt(4),
            random.nextBoolean(),
            random.nextBoolean() ? 0 : 30 * random.nextDouble() - 15);
    double width = List.of(842.0, 12_000.0, 30.0).get(random.nextInt(3));
    double height = width * (0.3 + 2 * random.nextDouble());
    return new ViewState(
        width,
        height,
        1 + random.nextInt(3000),
        1 + random.nextInt(2000),
        Math.exp(6 * random.nextDouble() - 3),
        new Point(width * random.nextGaussian(), height * random.nextGaussian()),
        orientation);
  }

  private static Point anyPoint(Random random, ViewState view) {
    return new Point(
        view.pictureWidth() * random.nextDouble(), view.pictureHeight() * random.nextDouble());
  }

  private static ScreenPoint anyScreenPoint(Random random, ViewState view) {
    return new ScreenPoint(view.width() * random.nextDouble(), view.height() * random.nextDouble());
  }
}
