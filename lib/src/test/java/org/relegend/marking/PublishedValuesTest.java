package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Value codes against published examples. The last column of each row names the source; "M" marks a
 * value from memory of IEC 60062, "D" one derived from the rule.
 */
class PublishedValuesTest {

  @ParameterizedTest(name = "{0} is {1} ohm: {2}")
  @CsvSource({
    "R47,  0.47,    en.wikipedia.org/wiki/IEC/EN_60062",
    "4R7,  4.7,     en.wikipedia.org/wiki/IEC/EN_60062",
    "470R, 470,     en.wikipedia.org/wiki/IEC/EN_60062",
    "4K7,  4700,    en.wikipedia.org/wiki/IEC/EN_60062",
    "47K,  47000,   en.wikipedia.org/wiki/IEC/EN_60062",
    "47K3, 47300,   en.wikipedia.org/wiki/BS_1852",
    "470K, 470000,  en.wikipedia.org/wiki/BS_1852",
    "4M7,  4700000, en.wikipedia.org/wiki/BS_1852",
    "33K,  33000,   electrostudy.com/2011/09",
    "2k2,  2200,    electrostudy.com/2011/09",
    "1R0,  1,       M IEC 60062",
    "0R47, 0.47,    M IEC 60062",
    "R10,  0.1,     M IEC 60062",
    "4L7,  0.0047,  M IEC 60062 (L for milliohm)",
  })
  void resistorCode(String text, double ohms, String source) {
    ValueReading reading = only(text, Quantity.RESISTANCE);

    assertThat(reading.amount()).isEqualTo(new Amount(Quantity.RESISTANCE, ohms));
    assertThat(reading.tolerance()).isEmpty();
  }

  @ParameterizedTest(name = "{0} is {1} ohm, {2} %: {3}")
  @CsvSource({
    "1R8J,  1.8,   5, electrostudy.com/2011/09",
    "27KK,  27000, 10, electrostudy.com/2011/09 (the last K is the tolerance)",
    "2R2K,  2.2,   10, electronic7.com/news/20200821151052407",
    "4K7J,  4700,  5, D: the right form of 4.7 k 5 % where a page printed 4R7J",
    "4K7F,  4700,  1, capinfo.txt of 1993 citing IEC 62 (F is 1 %)",
    "100RG, 100,   2, capinfo.txt of 1993 citing IEC 62 (G is 2 %)",
    "10RM,  10,    20, capinfo.txt of 1993 citing IEC 62 (M is 20 %)",
    "1K0B,  1000,  0.1, metal film table of GB/T 5729 = IEC 60115-1",
    "1K0C,  1000,  0.25, metal film table of GB/T 5729 = IEC 60115-1",
    "1K0D,  1000,  0.5, metal film table of GB/T 5729 = IEC 60115-1",
    "1K0W,  1000,  0.05, M IEC 60062 clause 5",
  })
  void resistorCodeWithToleranceLetter(String text, double ohms, double percent, String source) {
    ValueReading reading = only(text, Quantity.RESISTANCE);

    assertThat(reading.amount().value()).isEqualTo(ohms);
    assertThat(reading.tolerance()).contains(Tolerance.fraction(percent / 100));
  }

  @ParameterizedTest(name = "{0} is {1} F: {2}")
  @CsvSource({
    "1n0,   1e-9,    M IEC 60062",
    "4p7,   4.7e-12, M IEC 60062",
    "100n,  100e-9,  a web text on IEC 60062, second hand (prefix letters)",
    "100p,  100e-12, a web text on IEC 60062, second hand",
    "10n,   10e-9,   a web text on IEC 60062, second hand",
    "4u7,   4.7e-6,  a web text on IEC 60062, second hand",
    "10m,   0.01,    a web text on IEC 60062, second hand (10m is 10 000 uF)",
    "102,   1e-9,    ashleighdionnenot3 table",
    "103,   10e-9,   D by the rule XY x 10^Z pF (primidi.com)",
    "104,   100e-9,  capinfo.txt of 1993",
    "152,   1.5e-9,  ashleighdionnenot3 table",
    "222,   2.2e-9,  ashleighdionnenot3 table",
    "472,   4.7e-9,  zikriqibov2dec table",
    "473,   47e-9,   zikriqibov2dec table",
    "683,   68e-9,   zikriqibov2dec table",
    "154,   150e-9,  zikriqibov2dec table",
    "224,   220e-9,  zikriqibov2dec table",
    "334,   330e-9,  zikriqibov2dec table",
    "474,   470e-9,  zikriqibov2dec table",
    "684,   680e-9,  zikriqibov2dec table",
    "47,    47e-12,  ashleighdionnenot3 table (one or two digits are picofarads)",
    "5,     5e-12,   ashleighdionnenot3 table",
    "109,   1e-12,   M EIA (9 stands for x0.1)",
    "478,   0.47e-12, M EIA (8 stands for x0.01)",
  })
  void capacitorCode(String text, double farads, String source) {
    ValueReading first = first(text, Quantity.CAPACITANCE);

    assertThat(first.amount()).isEqualTo(new Amount(Quantity.CAPACITANCE, farads));
  }

  @ParameterizedTest(name = "{0} is {1} F, -{2} +{3} %: {4}")
  @CsvSource({
    "474J, 470e-9, 5,  5,  zikriqibov2dec capacitor-ceramico-473-j",
    "105K, 1e-6,   10, 10, primidi.com",
    "103Z, 10e-9,  20, 80, capinfo.txt of 1993; dummies.com",
    "104M, 100e-9, 20, 20, capinfo.txt of 1993",
    "104F, 100e-9, 1,  1,  capinfo.txt of 1993",
    "103S, 10e-9,  20, 50, M IEC 60062",
    "103Q, 10e-9,  10, 30, M IEC 60062",
    "103T, 10e-9,  10, 50, M IEC 60062",
    "103N, 10e-9,  30, 30, M IEC 60062",
    "103H, 10e-9,  3,  3,  M IEC 60062",
  })
  void capacitorCodeWithToleranceLetter(
      String text, double farads, double below, double above, String source) {
    Tolerance tolerance = new Tolerance(-below / 100, above / 100, Tolerance.Basis.FRACTION);

    assertThat(ComponentValues.read(text, Quantity.CAPACITANCE).readings())
        .anySatisfy(
            reading -> {
              assertThat(reading.amount().value()).isEqualTo(farads);
              assertThat(reading.tolerance()).contains(tolerance);
            });
  }

  @ParameterizedTest(name = "{0}: {1} pF either side: {2}")
  @CsvSource({
    "4p7B, 0.1,  dummies.com capacitor tolerance code",
    "4p7C, 0.25, dummies.com; capinfo.txt of 1993",
    "4p7D, 0.5,  dummies.com; capinfo.txt of 1993",
    "4p7F, 1,    M IEC 60062",
    "4p7G, 2,    M IEC 60062",
  })
  void smallCapacitorLetter_tellsPicofarads(String text, double picofarads, String source) {
    Tolerance tolerance =
        Tolerance.absolute(DecimalParser.value(Math.round(picofarads * 100), -14));

    assertThat(ComponentValues.read(text, Quantity.CAPACITANCE).readings())
        .allSatisfy(reading -> assertThat(reading.amount().value()).isEqualTo(4.7e-12))
        .anySatisfy(reading -> assertThat(reading.tolerance()).contains(tolerance));
  }

  @ParameterizedTest(name = "{0} is not {1}: {2}")
  @CsvSource({
    "4R7J, 4700,  electronic7.com prints it for 4.7 k",
  })
  void misprintedCode_keepsItsOwnMeaning(String text, double wrong, String source) {
    ValueReading reading = only(text, Quantity.RESISTANCE);

    assertThat(reading.amount().value()).isEqualTo(4.7).isNotEqualTo(wrong);
    assertThat(reading.tolerance()).contains(Tolerance.fraction(0.05));
  }

  @ParameterizedTest(name = "{0} is not {1} %: {2}")
  @CsvSource({
    "C, 0.2,  electronic7.com (right: 0.25)",
    "L, 20,   electrostudy.com (right: M is 20)",
  })
  void wrongToleranceOfTheWeb_isNotTaken(char letter, double wrongPercent, String source) {
    List<Tolerance> meanings =
        ToleranceLetter.of(letter).orElseThrow().meanings(Quantity.RESISTANCE, 1000);

    assertThat(meanings).hasSize(1).doesNotContain(Tolerance.fraction(wrongPercent / 100));
  }

  @ParameterizedTest(name = "{0} is no tolerance letter: {1}")
  @CsvSource({"A, electronic7.com prints A for 0.05 %", "V, D: not in the standard's list"})
  void letterOutsideTheStandard_isNoTolerance(char letter, String source) {
    assertThat(ToleranceLetter.of(letter)).isEmpty();
    assertThat(ComponentValues.read("104" + letter, Quantity.CAPACITANCE).outcome())
        .isNotEqualTo(MarkingReadings.Outcome.READ);
  }

  private static ValueReading only(String text, Quantity expected) {
    MarkingReadings<ValueReading> answer = ComponentValues.read(text, expected);
    assertThat(answer.readings()).as(text + " " + answer.reason()).hasSize(1);
    return answer.only().orElseThrow();
  }

  private static ValueReading first(String text, Quantity expected) {
    Optional<ValueReading> first = ComponentValues.read(text, expected).first();
    return first.orElseThrow();
  }
}
