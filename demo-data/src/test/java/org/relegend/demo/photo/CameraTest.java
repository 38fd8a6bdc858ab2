package org.relegend.demo.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.demo.design.Spot;
import org.relegend.demo.ray.Ray;
import org.relegend.demo.ray.Vec;

class CameraTest {
  private static Camera overhead(double parallax) {
    return new Camera(
        new Vec(100, 80, 400), new Spot(100, 80), 0, 6000, 4000, 3000, 0, 0, parallax);
  }

  /** The textbook pinhole camera: picture offset = focal length times offset over distance. */
  @Test
  void cameraOverhead_followsThePinholeRule() {
    Spot seen = overhead(1).view().see(new Vec(130, 60, 25));
    assertThat(seen.x()).isCloseTo(2000 + 6000 * 30 / 375.0, within(1e-9));
    assertThat(seen.y()).isCloseTo(1500 - 6000 * 20 / 375.0, within(1e-9));
  }

  @Test
  void withoutParallax_heightDoesNotMatter() {
    Camera.View view = overhead(0).view();
    assertThat(view.see(new Vec(130, 60, 25))).isEqualTo(view.see(new Vec(130, 60, 0)));
  }

  @Test
  void rolledCamera_turnsThePicture() {
    Camera camera = overhead(1).from(new Vec(100, 80, 400), new Spot(100, 80), 90);
    Spot seen = camera.view().see(new Vec(120, 80, 0));
    assertThat(seen.x()).isCloseTo(2000, within(1e-9));
    assertThat(seen.y()).isCloseTo(1500 - 6000 * 20 / 400.0, within(1e-9));
  }

  /** Aiming through the point where a place is seen meets that place again. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aimingWhereAPlaceIsSeen_meetsThePlace(long seed) {
    Random random = new Random(seed);
    Camera camera =
        new Camera(
            new Vec(60 + random.nextInt(120), 20 + random.nextInt(160), 420),
            new Spot(110 + random.nextInt(30), 80),
            random.nextInt(360),
            6000,
            4000,
            3000,
            -0.2 * random.nextDouble(),
            0.05 * random.nextDouble(),
            2 * random.nextDouble());
    Camera.View view = camera.view();
    Ray ray = new Ray();
    for (int k = 0; k < 50; k++) {
      Vec place = new Vec(random.nextInt(250), random.nextInt(160), 30 * random.nextDouble());
      Spot seen = view.see(place);
      view.aim(seen.x(), seen.y(), 40, ray);
      assertThat(ray.atX(40 - place.z())).isCloseTo(place.x(), within(1e-6));
      assertThat(ray.atY(40 - place.z())).isCloseTo(place.y(), within(1e-6));
    }
  }

  /** Barrel distortion as its usual polynomial: what lies far out is drawn inwards. */
  @Test
  void distortion_movesPointsByItsPolynomial() {
    Camera camera = overhead(1).withLens(0.3, 0);
    Spot seen = camera.view().see(new Vec(200, 80, 0));
    double drawn = (seen.x() - 2000) / 6000;
    assertThat(drawn * (1 + 0.3 * drawn * drawn)).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void cameraOnTheBoard_isRefused() {
    assertThatThrownBy(() -> overhead(1).from(new Vec(0, 0, 3), new Spot(0, 0), 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
