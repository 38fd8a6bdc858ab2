package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;

class PackagesTest {
  private static final Packages KNOWN = Packages.known();

  /**
   * Pitch 0.100 in; rows 0.300 in = JEDEC MS-001, 0.400 in = MS-010, 0.600 in = MS-011 (as quoted
   * by data sheets); pin counts by row: yawiki.org, Dual in-line package.
   */
  @ParameterizedTest
  @CsvSource({
    "DIP-8, 8, 7.62, 7.62",
    "DIP-14, 14, 7.62, 15.24",
    "DIP-16, 16, 7.62, 17.78",
    "DIP-20, 20, 7.62, 22.86",
    "DIP-24, 24, 15.24, 27.94",
    "DIP-28, 28, 15.24, 33.02",
    "DIP-40, 40, 15.24, 48.26",
    "DIP300-24, 24, 7.62, 27.94",
    "DIP400-22, 22, 10.16, 25.4",
    "dip600-24, 24, 15.24, 27.94",
    "DIP900-64, 64, 22.86, 78.74",
    "DIP-24/7.62, 24, 7.62, 27.94",
    "DIP-16/7.5/2.5, 16, 7.5, 17.5"
  })
  void dualInLine_hasJedecRowsAndPitch(String name, int count, double row, double length) {
    PackageShape shape = KNOWN.named(name).orElseThrow();
    assertThat(shape.pins()).hasSize(count);
    assertThat(shape.span()).isCloseTo(row, within(1e-9));
    assertThat(shape.pin(1).distance(shape.pin(count / 2))).isCloseTo(length, within(1e-9));
    // opposite pins sum to N + 1
    for (int pin = 1; pin <= count / 2; pin++) {
      Point left = shape.pin(pin);
      Point right = shape.pin(count + 1 - pin);
      assertThat(right.y()).isEqualTo(left.y());
      assertThat(right.x() - left.x()).isCloseTo(row, within(1e-9));
    }
  }

  /** The JEDEC pattern: pin i at (0, (i-1) p), the rest at (e, (N-i) p), y downwards, top view. */
  @ParameterizedTest
  @ValueSource(ints = {8, 14, 18})
  void dualInLine_everyPinLiesWhereThePatternPutsIt(int count) {
    PackageShape shape = KNOWN.named("DIP-" + count).orElseThrow();
    for (int i = 1; i <= count; i++) {
      double x = i <= count / 2 ? 0 : 7.62;
      double y = 2.54 * (i <= count / 2 ? i - 1 : count - i);
      assertThat(shape.pin(i).distance(new Point(x, y))).isLessThan(1e-9);
    }
  }

  /** Body by lead pitch, from the lead-form table at tokenchina.com. */
  @ParameterizedTest
  @CsvSource({
    "AXIAL-0.125W, 6, 3.2, 1.5",
    "AXIAL-0.25W, 10, 6, 2.3",
    "AXIAL-0.5W, 12.5, 9, 3",
    "AXIAL-1W, 15, 11, 4",
    "AXIAL-2W, 20, 15, 5",
    "AXIAL-3W, 25, 17, 6",
    "AXIAL-5W, 30, 24, 8"
  })
  void axial_hasThePublishedLeadPitchAndBody(
      String name, double pitch, double length, double diameter) {
    PackageShape shape = KNOWN.named(name).orElseThrow();
    assertThat(shape.span()).isEqualTo(pitch);
    assertThat(Extent.around(shape.body()).height()).isCloseTo(length, within(1e-9));
    assertThat(Extent.around(shape.body()).width()).isCloseTo(diameter, within(1e-9));
  }

  @Test
  void bodies_lieBetweenOrRoundTheirPins() {
    for (String name : new String[] {"DIP-14", "DIP-14/10.16", "SIP-5", "TO-92", "TO-220"}) {
      PackageShape shape = KNOWN.named(name).orElseThrow();
      Extent body = Extent.around(shape.body());
      Extent pins = Extent.around(shape.pins());
      assertThat(body.height()).as(name).isGreaterThan(pins.height());
      assertThat(body.left()).as(name).isLessThan(pins.right());
      assertThat(body.right()).as(name).isGreaterThan(pins.left());
    }
    // the notch marks the end of pin 1
    PackageShape dip = KNOWN.named("DIP-14").orElseThrow();
    assertThat(dip.body()).anyMatch(p -> p.y() > -1 && p.y() < 0 && Math.abs(p.x() - 3.81) < 1e-9);
    // the flat of a TO-92 is where its pins read left to right, the tab of a TO-220 behind them
    assertThat(Extent.around(KNOWN.named("TO-92").orElseThrow().body()).left())
        .isCloseTo(-1.9, within(1e-9));
    assertThat(Extent.around(KNOWN.named("TO-220").orElseThrow().body()).centre().x()).isPositive();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "DIP",
        "DIP-",
        "DIP-7",
        "DIP-2",
        "DIP-66",
        "DIP-8x",
        "DIP-8/",
        "DIP-8/0",
        "DIP-8/a/b",
        "DIP-8/7.62/2.54/1",
        "SIP-1",
        "SIP-5/2",
        "TO-92-3",
        "FLATPACK-8",
        "DIP-99999999999999"
      })
  void unknownNames_haveNoPackage(String name) {
    assertThat(KNOWN.named(name)).isEmpty();
  }

  static IntStream everyRow() {
    return IntStream.range(0, KNOWN.families().size());
  }

  @ParameterizedTest
  @MethodSource("everyRow")
  void everyFamily_hasAPackageWithASource(int index) {
    String family = KNOWN.families().get(index);
    PackageShape shape = KNOWN.named(family).or(() -> KNOWN.named(family + "-8")).orElseThrow();
    assertThat(shape.source()).isNotBlank();
    assertThat(shape.body()).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void table_canBeExtended_andGoesFirst() throws IOException {
    Packages more =
        KNOWN.with(
            new StringReader(
                """
                family,pins,layout,pitch,row,along,across,source
                CAN-8,8,single,2,,9,9,measured
                DIP,6-6,dual,2.54,10.16,,8,measured
                """));
    assertThat(more.named("can-8").orElseThrow().pins()).hasSize(8);
    assertThat(more.named("DIP-8").orElseThrow().span()).isEqualTo(7.62);
    assertThat(KNOWN.named("CAN-8")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "X,2,single,two,,5,5,s | row 2: pitch must be a length in millimetres, not \"two\"",
        "X,2,single,2,,5,,s | row 2: across must be a length",
        "X,2,dual,2,,5,5,s | row 2: row must be a length",
        "X,many,single,2,,5,5,s | row 2: ",
        "X,2,curly,2,,5,5,s | row 2: ",
      })
  void badTable_isRefusedWithItsLine(String row, String message) {
    StringReader table =
        new StringReader("family,pins,layout,pitch,row,along,across,source\n" + row);
    assertThatThrownBy(() -> KNOWN.with(table))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message.strip());
  }
}
