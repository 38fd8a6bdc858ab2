package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.Point;

/**
 * The eight values as Exif 2.32 (CIPA DC-008-2019), section 4.6.4 A, tag Orientation, defines them:
 * at which visual side the 0th row and the 0th column of the stored pixels are.
 */
class ExifOrientationTest {
  private static final int WIDTH = 5;
  private static final int HEIGHT = 3;

  @ParameterizedTest(name = "{0}: 0th row at the {1}, 0th column at the {2}")
  @CsvSource({
    "1, top,        left-hand",
    "2, top,        right-hand",
    "3, bottom,     right-hand",
    "4, bottom,     left-hand",
    "5, left-hand,  top",
    "6, right-hand, top",
    "7, right-hand, bottom",
    "8, left-hand,  bottom"
  })
  void seen_putsRowAndColumnAtTheSidesOfTheDefinition(int value, String row, String column) {
    ExifOrientation orientation = new ExifOrientation(value);

    for (double x = 0.5; x < WIDTH; x++) {
      assertAtSide(orientation.seen(new Point(x, 0), WIDTH, HEIGHT), orientation, row);
    }
    for (double y = 0.5; y < HEIGHT; y++) {
      assertAtSide(orientation.seen(new Point(0, y), WIDTH, HEIGHT), orientation, column);
    }
  }

  private static void assertAtSide(Point seen, ExifOrientation orientation, String side) {
    int width = orientation.seenWidth(WIDTH, HEIGHT);
    int height = orientation.seenHeight(WIDTH, HEIGHT);
    switch (side) {
      case "top" -> assertThat(seen.y()).isZero();
      case "bottom" -> assertThat(seen.y()).isEqualTo(height);
      case "left-hand" -> assertThat(seen.x()).isZero();
      case "right-hand" -> assertThat(seen.x()).isEqualTo(width);
      default -> throw new IllegalArgumentException(side);
    }
    assertThat(seen.x()).isBetween(0.0, (double) width);
    assertThat(seen.y()).isBetween(0.0, (double) height);
  }

  @Test
  void valuesOutsideTheDefinition_areRefused() {
    assertThatThrownBy(() -> new ExifOrientation(0)).hasMessageContaining("1 to 8");
    assertThatThrownBy(() -> new ExifOrientation(9)).hasMessageContaining("1 to 8");
  }
}
