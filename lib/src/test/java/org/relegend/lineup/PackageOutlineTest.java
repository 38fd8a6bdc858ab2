package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;
import org.relegend.map.Side;

class PackageOutlineTest {
  private static final PackageShape DIP14 = Packages.known().named("DIP-14").orElseThrow();
  private static final PackageShape DIP8 = Packages.known().named("DIP-8").orElseThrow();

  /**
   * Notch up at 10 px a millimetre: 1 to 7 down on the left, 8 to 14 up on the right (top view).
   */
  @Test
  void dualInLine_fromTheComponentSide_countsCounterClockwise() {
    PackageOutline outline =
        PackageOutline.place(DIP14, new Point(100, 50), new Point(176.2, 50), Side.COMPONENT);
    for (int pin = 1; pin <= 7; pin++) {
      assertAt(outline, pin, 100, 50 + 25.4 * (pin - 1));
      assertAt(outline, 15 - pin, 176.2, 50 + 25.4 * (pin - 1));
    }
    assertThat(outline.scale()).isCloseTo(10, within(1e-9));
    assertThat(turn(outline)).isNegative(); // y runs downwards: negative is counter-clockwise
  }

  @Test
  void dualInLine_fromTheSolderSide_countsClockwise() {
    // the same two clicks, pins 1 and 8 above, on a picture of the other side
    PackageOutline outline =
        PackageOutline.place(DIP8, new Point(176.2, 50), new Point(100, 50), Side.SOLDER);
    assertAt(outline, 2, 176.2, 75.4);
    assertAt(outline, 4, 176.2, 126.2);
    assertAt(outline, 5, 100, 126.2);
    assertThat(turn(outline)).isPositive();
  }

  @ParameterizedTest(name = "turned by {0} degrees")
  @ValueSource(doubles = {0, 30, 90, 137, 180, 270, 301})
  void turnedPackage_keepsItsShape(double degrees) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    Transform laid = Transform.of(12 * c, -12 * s, 700, 12 * s, 12 * c, 300, 0, 0, 1);
    PackageOutline outline =
        PackageOutline.place(
            DIP14, laid.apply(DIP14.pin(1)), laid.apply(DIP14.pin(14)), Side.COMPONENT);
    for (int pin = 1; pin <= 14; pin++) {
      assertThat(outline.pins().get(pin - 1).distance(laid.apply(DIP14.pin(pin)))).isLessThan(1e-9);
    }
    for (int i = 0; i < DIP14.body().size(); i++) {
      assertThat(outline.body().get(i).distance(laid.apply(DIP14.body().get(i)))).isLessThan(1e-9);
    }
  }

  /** The solder side seen from behind is the component side with left and right exchanged. */
  @ParameterizedTest
  @ValueSource(strings = {"DIP-14", "DIP-40", "SIP-9", "TO-92", "TO-220", "AXIAL", "RADIAL"})
  void solderSide_isTheComponentSideMirrored(String name) {
    PackageShape shape = Packages.known().named(name).orElseThrow();
    Point first = new Point(210, 80);
    Point last = new Point(330, 140);
    PackageOutline above = PackageOutline.place(shape, first, last, Side.COMPONENT);
    PackageOutline below = PackageOutline.place(shape, flipped(first), flipped(last), Side.SOLDER);
    for (int i = 0; i < above.pins().size(); i++) {
      assertThat(below.pins().get(i).distance(flipped(above.pins().get(i)))).isLessThan(1e-9);
    }
    for (int i = 0; i < above.body().size(); i++) {
      assertThat(below.body().get(i).distance(flipped(above.body().get(i)))).isLessThan(1e-9);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void inPerspective_followsTheBoard(long seed) {
    Simulation view = new Simulation(seed);
    // truth: the package lies square on the plane at 20 units a millimetre
    Transform onPlane = Transform.of(0, -20, 2100, 20, 0, 1400, 0, 0, 1);
    Transform onPicture = view.truth.after(onPlane);
    Transform toPlane = view.truth.inverse();
    PackageOutline outline =
        PackageOutline.place(
            DIP14,
            onPicture.apply(DIP14.pin(1)),
            onPicture.apply(DIP14.pin(14)),
            Side.COMPONENT,
            toPlane);
    for (int pin = 1; pin <= 14; pin++) {
      assertThat(outline.pins().get(pin - 1).distance(onPicture.apply(DIP14.pin(pin))))
          .isLessThan(1e-6);
    }
    assertThat(outline.scale()).isCloseTo(20, within(1e-9));
    // the solder side, lined up with a plane that shows the component side
    Transform flip = Transform.of(-1, 0, 4000, 0, 1, 0, 0, 0, 1);
    Transform below = flip.after(onPicture);
    PackageOutline mirrored =
        PackageOutline.place(
            DIP14,
            below.apply(DIP14.pin(1)),
            below.apply(DIP14.pin(14)),
            Side.SOLDER,
            toPlane.after(flip.inverse()));
    for (int pin = 1; pin <= 14; pin++) {
      assertThat(mirrored.pins().get(pin - 1).distance(below.apply(DIP14.pin(pin))))
          .isLessThan(1e-6);
    }
  }

  @Test
  void singleRow_isSpacedEvenly() {
    PackageShape sip = Packages.known().named("SIP-5").orElseThrow();
    PackageOutline outline =
        PackageOutline.place(sip, new Point(0, 0), new Point(80, 40), Side.COMPONENT);
    assertAt(outline, 3, 40, 20);
    assertAt(outline, 4, 60, 30);
  }

  @Test
  void sameClickTwice_orBeyondTheHorizon_isRefused() {
    Point p = new Point(3, 4);
    assertThatThrownBy(() -> PackageOutline.place(DIP8, p, p, Side.COMPONENT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the first and the last pin can't both be at 3.0, 4.0");
    Transform steep = Transform.of(1, 0, 0, 0, 1, 0, -0.01, 0, 1);
    assertThatThrownBy(
            () -> PackageOutline.place(DIP8, p, new Point(200, 4), Side.COMPONENT, steep))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("horizon");
  }

  private static Point flipped(Point p) {
    return new Point(1000 - p.x(), p.y());
  }

  private static void assertAt(PackageOutline outline, int pin, double x, double y) {
    assertThat(outline.pins().get(pin - 1).distance(new Point(x, y))).isLessThan(1e-9);
  }

  /** Twice the signed area that the pins go round. */
  private static double turn(PackageOutline outline) {
    List<Point> pins = outline.pins();
    double sum = 0;
    for (int i = 0; i < pins.size(); i++) {
      Point a = pins.get(i);
      Point b = pins.get((i + 1) % pins.size());
      sum += a.x() * b.y() - b.x() * a.y();
    }
    return sum;
  }
}
