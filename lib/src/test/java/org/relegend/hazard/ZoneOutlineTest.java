package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Picture;
import org.relegend.map.Point;

class ZoneOutlineTest {
  private static final Picture PICTURE =
      BoardMapSamples.blank().picture(BoardMapSamples.TOP).orElseThrow();

  private static List<Point> outline(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }

  @Test
  void contains_concaveOutline_itsEdgesIncluded() {
    List<Point> notch = outline(0, 0, 10, 0, 10, 10, 5, 4, 0, 10);
    assertThat(ZoneOutline.contains(notch, new Point(5, 2))).isTrue();
    assertThat(ZoneOutline.contains(notch, new Point(5, 7))).isFalse();
    assertThat(ZoneOutline.contains(notch, new Point(5, 4))).isTrue();
    assertThat(ZoneOutline.contains(notch, new Point(10, 3))).isTrue();
    assertThat(ZoneOutline.contains(notch, new Point(10.01, 3))).isFalse();
  }

  @Test
  void covers_allOfIt_notOnlyItsCorners() {
    List<Point> notch = outline(0, 0, 10, 0, 10, 10, 5, 4, 0, 10);
    assertThat(ZoneOutline.covers(notch, outline(1, 1, 9, 1, 9, 3))).isTrue();
    assertThat(ZoneOutline.covers(notch, notch)).isTrue();
    assertThat(ZoneOutline.covers(notch, outline(10, 0, 10, 10, 5, 4, 0, 10, 0, 0))).isTrue();
    assertThat(ZoneOutline.covers(notch, outline(0, 0, 10, 0, 10, 10, 0, 10))).isFalse();
    assertThat(ZoneOutline.covers(notch, outline(0, 0, 10, 0, 10, 10.1, 5, 4, 0, 10))).isFalse();
    assertThat(ZoneOutline.covers(outline(0, 0, 10, 10, 10, 0, 0, 10), outline(8, 4, 9, 5, 8, 6)))
        .isFalse();
  }

  /** Against the areas of the Java library's geometry. */
  @Test
  void covers_agreesWithAreasThatAreTakenAway() {
    Random random = new Random(5);
    int held = 0;
    for (int i = 0; i < 2000; i++) {
      List<Point> outer = outline(0, 0, 20, 0, 20, 20, 10, 5 + random.nextInt(15), 0, 20);
      double x = random.nextInt(15);
      double y = random.nextInt(15);
      double w = 1 + random.nextInt(6);
      double h = 1 + random.nextInt(6);
      Area left = new Area(new Rectangle2D.Double(x, y, w, h));
      Path2D path = new Path2D.Double();
      path.moveTo(0, 0);
      outer.forEach(corner -> path.lineTo(corner.x(), corner.y()));
      path.closePath();
      left.subtract(new Area(path));
      boolean covers = ZoneOutline.covers(outer, outline(x, y, x + w, y, x + w, y + h, x, y + h));
      assertThat(covers)
          .as(outer + " " + x + " " + y + " " + w + " " + h)
          .isEqualTo(left.isEmpty());
      held += covers ? 1 : 0;
    }
    assertThat(held).isBetween(200, 1800);
  }

  @Test
  void crossesItself_bowTie_retracedEdge_andNothingEnclosed() {
    assertThat(ZoneOutline.crossesItself(outline(0, 0, 10, 10, 10, 0, 0, 10))).isTrue();
    assertThat(ZoneOutline.crossesItself(outline(0, 0, 10, 0, 5, 0))).isTrue();
    assertThat(ZoneOutline.crossesItself(outline(0, 0, 10, 0, 10, 10, 5, 4, 0, 10))).isFalse();
    assertThat(ZoneOutline.crossesItself(outline(0, 0, 10, 0, 0, 10))).isFalse();
  }

  @Test
  void overlap() {
    List<Point> square = outline(0, 0, 10, 0, 10, 10, 0, 10);
    assertThat(ZoneOutline.overlap(square, outline(2, 2, 3, 2, 3, 3))).isTrue();
    assertThat(ZoneOutline.overlap(square, outline(-5, 4, 15, 4, 15, 6, -5, 6))).isTrue();
    assertThat(ZoneOutline.overlap(square, outline(20, 20, 30, 20, 30, 30))).isFalse();
    assertThat(ZoneOutline.overlap(square, List.of())).isFalse();
  }

  /** Whatever the points, at the picture's corners too, the proposal holds them and the margin. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void around_holdsEveryPointWithItsMargin(long seed) {
    Random random = new Random(seed);
    for (int round = 0; round < 50; round++) {
      List<Point> points = new ArrayList<>();
      int count = 1 + random.nextInt(6);
      for (int i = 0; i < count; i++) {
        points.add(new Point(random.nextInt(9) * 500, random.nextInt(7) * 500));
      }
      List<Point> zone = ZoneOutline.around(points, 80, PICTURE);
      assertThat(ZoneOutline.crossesItself(zone)).isFalse();
      assertThat(zone).allMatch(PICTURE::contains);
      for (Point point : points) {
        for (int k = 0; k < 16; k++) {
          double x = point.x() + 79.9 * Math.cos(k * Math.PI / 8);
          double y = point.y() + 79.9 * Math.sin(k * Math.PI / 8);
          if (PICTURE.contains(new Point(x, y))) {
            assertThat(ZoneOutline.contains(zone, new Point(x, y))).isTrue();
          }
        }
        assertThat(ZoneOutline.contains(zone, point)).isTrue();
      }
    }
  }

  @Test
  void around_nothing_isRefused() {
    assertThatThrownBy(() -> ZoneOutline.around(List.of(), 5, PICTURE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ZoneOutline.around(outline(1, 1), 0, PICTURE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
