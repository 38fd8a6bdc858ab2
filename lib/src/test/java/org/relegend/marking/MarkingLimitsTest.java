package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every limit of the package from both sides: what is just inside, and what is just outside. */
class MarkingLimitsTest {

  /** A mark just inside each limit and one just outside, with all that each reads as. */
  @ParameterizedTest(name = "{0}: {1}, {3}: {5}")
  @CsvSource({
    "FUSE, 31.9, 31.9 A, 32, 32 mA | 32 A, bare numbers from 32 on may be milliamperes",
    "CRYSTAL, 200, 200 MHz | 200 kHz, 201, 201 kHz, overtone crystals end at 200 MHz",
    "CRYSTAL, 1.000, 1 MHz | 1 kHz, 0.999, 999 kHz, crystals begin at 1 kHz",
    "CRYSTAL, 1000, 1 kHz | 1 MHz, 999, 999 kHz, whole numbers from 1000 on may be hertz",
    "DIODE, 999, 999 V, 1000, unread, bare volts have three figures",
    "RESISTOR, 96A, 976 Ω, 97A, unread, E96 has 96 members",
    "RESISTOR, 01A, 100 Ω, 00A, unread, E96 begins at 1",
    "RESISTOR, 99R99, 99.99 Ω, 100R01, unread, codes have four figures",
    "CRYSTAL, 999k999, 999.999 kHz, 1000k999, unread, frequencies have six figures",
    "CAPACITOR, 104K10, 100 nF, 104K9, unread, volts run on begin at 10",
    "CAPACITOR, 104K50KV, 100 nF, 104K51KV, unread, no more than 50 kV",
    "CAPACITOR, 0.9/16, 900 nF, 1/16, 1 µF | 1 pF, from 1 on picofarads are possible too",
    "CAPACITOR, 3W102J, 1 nF, 4A102J, unread, voltage codes count three zeros",
    "DIODE, 1N4728A, 3.3 V, 1N4727A, unread, first of its family",
    "DIODE, 1N4764A, 100 V, 1N4765A, unread, last of its family",
    "DIODE, 1N5221B, 2.4 V, 1N5220B, unread, first of its family",
    "DIODE, 1N5281B, 200 V, 1N5282B, unread, last of its family",
    "DIODE, 1N5333B, 3.3 V, 1N5332B, unread, first of its family",
    "DIODE, 1N5388B, 200 V, 1N5389B, unread, last of its family",
    "DIODE, 1N746A, 3.3 V, 1N745A, unread, first of its family",
    "DIODE, 1N759A, 12 V, 1N760A, unread, last of its family",
    "DIODE, 1N957B, 6.8 V, 1N956B, unread, first of its family",
    "DIODE, 1N992B, 200 V, 1N993B, unread, last of its family",
  })
  void mark_isReadJustInside_otherwiseJustOutside(
      PartClass part, String inside, String read, String outside, String then, String limit) {
    assertThat(text(inside, part)).isEqualTo(read);
    assertThat(text(outside, part)).isEqualTo(then);
  }

  private static String text(String mark, PartClass part) {
    List<String> texts = texts(mark, part);
    return texts.isEmpty() ? "unread" : String.join(" | ", texts);
  }

  private static List<String> texts(String mark, PartClass part) {
    MarkingReadings<ValueReading> answer = ComponentValues.read(mark, part);
    return answer.outcome() == MarkingReadings.Outcome.READ
        ? answer.readings().stream().map(each -> each.amount().text()).distinct().toList()
        : List.of();
  }

  @Test
  void text_has200Characters_quotesHave40() {
    String longest = "4k7" + " ".repeat(197);

    assertThat(ComponentValues.read(longest).outcome()).isEqualTo(MarkingReadings.Outcome.READ);
    assertThat(ComponentValues.read(longest + " ").outcome())
        .isEqualTo(MarkingReadings.Outcome.MALFORMED);
    assertThat(MarkingText.quoted("a".repeat(40))).doesNotContain("…");
    assertThat(MarkingText.quoted("a".repeat(41))).contains("…");
  }

  @Test
  void number_has15Figures() {
    assertThat(Numeral.at("1".repeat(15), 0)).isPresent();
    assertThat(Numeral.at("1".repeat(16), 0)).isEmpty();
  }

  @Test
  void letter_tellsPicofaradsBelow10pF() {
    assertThat(ToleranceLetter.C.meanings(Quantity.CAPACITANCE, 9.99e-12))
        .containsExactly(Tolerance.absolute(0.25e-12));
    assertThat(ToleranceLetter.C.meanings(Quantity.CAPACITANCE, 10e-12))
        .containsExactly(Tolerance.fraction(0.0025));
  }

  @Test
  void amount_isWrittenWith1To15Figures_codesWith4() {
    Amount ohms = new Amount(Quantity.RESISTANCE, 1234.5);

    assertThat(ohms.text(1)).isEqualTo("1 kΩ");
    assertThat(ohms.text(15)).isEqualTo("1.2345 kΩ");
    assertThatThrownBy(() -> ohms.text(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ohms.text(16)).isInstanceOf(IllegalArgumentException.class);
    assertThat(ohms.code()).isEqualTo("1k235");
  }

  @ParameterizedTest
  @CsvSource({"1900, 1900, true", "1899, 1950, false", "2000, 2200, true", "2000, 2201, false"})
  void years_reachFrom1900To2200(int first, int last, boolean range) {
    if (range) {
      assertThat(new YearRange(first, last).contains(first)).isTrue();
      assertThat(new YearRange(first, last).contains(last + 1)).isFalse();
    } else {
      assertThatThrownBy(() -> new YearRange(first, last))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @ParameterizedTest
  @CsvSource({"7801, true", "7800, false", "7653, true", "7854, false", "M1, true", "M0, false"})
  void weeks_are1To53_monthsFrom1(String code, boolean read) {
    assertThat(DateCodes.read(code, YearRange.upTo(2026)).readings().isEmpty()).isEqualTo(!read);
  }

  @Test
  void anyYear_is1945To2044() {
    assertThat(years("4501")).contains(1945).doesNotContain(2045);
    assertThat(years("4401")).contains(2044).doesNotContain(1944);
  }

  private static List<Integer> years(String code) {
    return DateCodes.read(code).readings().stream().map(DateReading::year).toList();
  }

  @Test
  void bands_are3To6() {
    assertThat(bands(2)).isEqualTo(MarkingReadings.Outcome.MALFORMED);
    assertThat(bands(3)).isEqualTo(MarkingReadings.Outcome.READ);
    assertThat(bands(6)).isEqualTo(MarkingReadings.Outcome.READ);
    assertThat(bands(7)).isEqualTo(MarkingReadings.Outcome.MALFORMED);
  }

  private static MarkingReadings.Outcome bands(int count) {
    return ColourBands.read(Collections.nCopies(count, BandColour.RED)).outcome();
  }

  @Test
  void bands_tellUpTo1e12Ohms_exclusiveOfZero() {
    assertThatThrownBy(() -> ColourBands.of(1.1e12, 0.05))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ColourBands.of(-1, 0.05)).isInstanceOf(IllegalArgumentException.class);
    assertThat(ColourBands.of(91e9, 0.05)).hasSize(4);
    assertThat(ColourBands.of(4700, 0.05)).hasSize(4); // two figures at 5 % and wider
    assertThat(ColourBands.of(4700, 0.02)).hasSize(5); // three below
  }

  @Test
  void sections_are2To9() {
    assertThat(CapacitorSections.of("8 450V")).isEmpty();
    assertThat(CapacitorSections.of("8+8 450V")).hasSize(2);
    assertThat(CapacitorSections.of("1+1+1+1+1+1+1+1+1 450V")).hasSize(9);
    assertThat(CapacitorSections.of("1+1+1+1+1+1+1+1+1+1 450V")).isEmpty();
  }

  @Test
  void ceramicColours_tellPercentFrom10pF() {
    assertThat(texts("black brown black black green", PartClass.CAPACITOR)).contains("10 pF");
    assertThat(texts("black white brown white green", PartClass.CAPACITOR))
        .doesNotContain("9.1 pF");
  }

  /** 1e-6 of closeness; reach from 1e-30 to 1e30. */
  @Test
  void series_takeMembersWithin1e6th() {
    assertThat(PreferredSeries.E24.contains(4700 * (1 + 0.9e-6))).isTrue();
    assertThat(PreferredSeries.E24.contains(4700 * (1 + 1.2e-6))).isFalse();
    assertThat(PreferredSeries.E24.contains(4700 * (1 - 0.9e-6))).isTrue();
    assertThat(PreferredSeries.E24.contains(4700 * (1 - 1.2e-6))).isFalse();
    assertThat(PreferredSeries.E3.contains(1e-30)).isTrue();
    assertThat(PreferredSeries.E3.contains(1e-31)).isFalse();
    assertThat(PreferredSeries.E3.contains(1e30)).isTrue();
    assertThat(PreferredSeries.E3.contains(1e31)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "0.2, E6",
    "0.21, E3",
    "0.1, E12",
    "0.101, E6",
    "0.05, E24",
    "0.051, E12",
    "0.02, E48",
    "0.021, E24",
    "0.01, E96",
    "0.011, E48",
    "0.005, E192",
    "0.0051, E96"
  })
  void series_isThatOfTheNextWiderTolerance(double tolerance, PreferredSeries series) {
    assertThat(PreferredSeries.pairedWith(tolerance)).isEqualTo(series);
  }
}
