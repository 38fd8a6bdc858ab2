package org.relegend.demo.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.demo.photo.Faults.Fault;
import org.relegend.demo.truth.Place;
import org.relegend.demo.truth.Truth;

/** Small photos, so that they are taken fast. */
class PhotographerTest {
  private static final Photo GOOD = Photographer.take(small("component"));

  private static Shot small(String picture) {
    Shot shot = Shots.of(picture);
    return shot.with(shot.camera().scaled(0.16));
  }

  /** The mounting holes are dark: the middle of the dark must lie where the truth says. */
  @ParameterizedTest
  @ValueSource(strings = {"solder", "other-solder"})
  void holes_areSeenWhereTheTruthSays(String picture) {
    Shot shot = Shots.of(picture);
    shot = shot.with(shot.camera().scaled(0.25)).with(Finish.GOOD.withGrain(0));
    Photo photo = Photographer.take(shot);
    List<Place> holes =
        Truth.of(picture, shot).stream().filter(p -> p.kind() == Place.Kind.HOLE).toList();
    assertThat(holes).hasSize(6);
    for (Place hole : holes) {
      double[] middle = darkMiddle(photo, hole.at().x(), hole.at().y(), 11);
      assertThat(middle[0]).as(hole.toString()).isCloseTo(hole.at().x(), within(0.6));
      assertThat(middle[1]).as(hole.toString()).isCloseTo(hole.at().y(), within(0.6));
    }
  }

  @Test
  void sameShot_givesTheSamePixels() {
    assertThat(difference(GOOD, Photographer.take(small("component")))).isZero();
  }

  static List<Fault> faults() {
    return Faults.ofGoodBoards();
  }

  /** Parallax as it really is changes nothing, since the shot has it already. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void fault_changesThePhoto(Fault fault) {
    Photo faulty = Photographer.take(fault.change().apply(small("component")));
    double changed = difference(GOOD, faulty);
    if (fault.toString().equals("parallax, weak")) {
      assertThat(changed).isZero();
    } else {
      assertThat(changed).isGreaterThan(0.05);
    }
  }

  @Test
  void blankPhoto_showsTheBenchAlone() {
    Photo photo = Photographer.take(Faults.blank(small("component")));
    int low = 255;
    int high = 0;
    for (int y = 0; y < photo.height(); y++) {
      for (int x = 0; x < photo.width(); x++) {
        int green = green(photo, x, y);
        low = Math.min(low, green);
        high = Math.max(high, green);
      }
    }
    assertThat(high - low).isLessThan(110);
  }

  @Test
  void wrongBoard_isAnother() {
    Shot shot = small("component");
    Shot wrong = Faults.wrongBoard(shot, 5);
    assertThat(wrong.specimen().design().parts()).hasSize(102);
    assertThat(difference(GOOD, Photographer.take(wrong))).isGreaterThan(5);
  }

  private static int green(Photo photo, int x, int y) {
    return photo.pixel(x, y) >> 8 & 255;
  }

  private static double difference(Photo one, Photo two) {
    long sum = 0;
    for (int y = 0; y < one.height(); y++) {
      for (int x = 0; x < one.width(); x++) {
        sum += Math.abs(green(one, x, y) - green(two, x, y));
      }
    }
    return sum / ((double) one.width() * one.height());
  }

  private static double[] darkMiddle(Photo photo, double atX, double atY, int reach) {
    int low = 255;
    int high = 0;
    for (int y = (int) atY - reach; y <= atY + reach; y++) {
      for (int x = (int) atX - reach; x <= atX + reach; x++) {
        low = Math.min(low, green(photo, x, y));
        high = Math.max(high, green(photo, x, y));
      }
    }
    assertThat(high - low).as("contrast").isGreaterThan(60);
    double half = (low + high) / 2.0;
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    for (int y = (int) atY - reach; y <= atY + reach; y++) {
      for (int x = (int) atX - reach; x <= atX + reach; x++) {
        double dark = Math.max(0, half - green(photo, x, y));
        sum += dark;
        sumX += dark * (x + 0.5);
        sumY += dark * (y + 0.5);
      }
    }
    return new double[] {sumX / sum, sumY / sum};
  }
}
