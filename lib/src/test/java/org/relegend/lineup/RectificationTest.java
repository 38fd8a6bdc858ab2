package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.Point;

class RectificationTest {
  /** Here of a board of 80 mm by 64 mm, ten units to the millimetre. */
  private static final Transform PUBLISHED = TransformTest.WALL;

  private static List<Point> corners(Transform view) {
    return new ArrayList<>(
        List.of(
            view.apply(new Point(0, 0)),
            view.apply(new Point(800, 0)),
            view.apply(new Point(800, 640)),
            view.apply(new Point(0, 640))));
  }

  @Test
  void aPublishedView_isUndone() {
    Rectification drawn = Rectification.of(corners(PUBLISHED), 80, 64);

    double margin = 0.04 * 80;
    for (double[] mm : new double[][] {{0, 0}, {80, 64}, {10, 10}, {40, 32}, {79.9, 0.1}}) {
      Point at = new Point(margin + mm[0], margin + mm[1]);
      Point onDrawing =
          new Point(at.x() * drawn.pixelsPerMillimetre(), at.y() * drawn.pixelsPerMillimetre());
      Point expected = PUBLISHED.apply(new Point(10 * mm[0], 10 * mm[1]));
      assertThat(drawn.toPhoto().apply(onDrawing).distance(expected)).isLessThan(1e-6);
    }
    assertThat(drawn.width() / (80 + 2 * margin))
        .isCloseTo(drawn.pixelsPerMillimetre(), within(0.02));
    assertThat(drawn.height() / (64 + 2 * margin))
        .isCloseTo(drawn.pixelsPerMillimetre(), within(0.02));
  }

  @Test
  void theOrderOfTheCorners_doesNotMatter() {
    List<Point> corners = corners(PUBLISHED);
    Rectification drawn = Rectification.of(corners, 80, 64);
    Random shuffled = new Random(3);
    for (int i = 0; i < 10; i++) {
      Collections.shuffle(corners, shuffled);
      assertThat(Rectification.of(corners, 80, 64)).isEqualTo(drawn);
    }
  }

  @Test
  void seenSquareOn_theDrawingIsThePhotoItself_withAMargin() {
    List<Point> corners =
        List.of(new Point(50, 50), new Point(850, 50), new Point(850, 650), new Point(50, 650));
    Rectification drawn = Rectification.of(corners, 80, 60);
    assertThat(drawn.pixelsPerMillimetre()).isCloseTo(10, within(1e-9));
    assertThat(drawn.toPhoto().apply(new Point(32, 32)).distance(new Point(50, 50)))
        .isLessThan(1e-9);
  }

  @Test
  void aLargePhoto_isDrawnWithin24Megapixels() {
    List<Point> corners =
        List.of(new Point(0, 0), new Point(12000, 0), new Point(12000, 9000), new Point(0, 9000));
    Rectification drawn = Rectification.of(corners, 120, 90);
    assertThat((double) drawn.width() * drawn.height()).isLessThan(24.1e6).isGreaterThan(23.9e6);
  }

  @ParameterizedTest
  @CsvSource({
    "0 0 800 0 800 640 400 320, 80, 64, no corners of a rectangle",
    "0 0 800 0 400 0 0 640, 80, 64, no corners of a rectangle",
    "0 0 800 0 800 8 0 8, 80, 64, no corners of a rectangle",
    "0 0 800 0 800 640, 80, 64, four corners are needed",
    "0 0 800 0 800 640 0 640 1 1, 80, 64, four corners are needed",
    "0 0 800 0 800 640 0 640, 0, 64, two lengths above 0",
    "0 0 800 0 800 640 0 640, 80, NaN, two lengths above 0",
    "0 0 800 0 800 500 0 500, 50, 80, exchange width and height"
  })
  void whatIsNoRectangle_isRefused(String corners, double width, double height, String why) {
    List<Point> points = new ArrayList<>();
    String[] numbers = corners.split(" ", -1);
    for (int i = 0; i < numbers.length; i += 2) {
      points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
    }
    assertThatThrownBy(() -> Rectification.of(points, width, height))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }

  @Test
  void spots_lineTheTwoUp() {
    Rectification drawn = Rectification.of(corners(PUBLISHED), 80, 64);
    List<PointPair> spots = drawn.spots(Extent.of(800, 640));
    assertThat(spots).hasSizeGreaterThan(20);
    LineUp kept = MatchedLineUp.of(spots).orElseThrow();
    Point middle = new Point(drawn.width() / 2.0, drawn.height() / 2.0);
    assertThat(kept.carry(middle).orElseThrow().distance(drawn.toPhoto().apply(middle)))
        .isLessThan(0.01);
    assertThat(kept.radius95(middle)).isLessThan(0.5);
  }
}
