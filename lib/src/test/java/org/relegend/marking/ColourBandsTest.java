package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.marking.BandColour.BLACK;
import static org.relegend.marking.BandColour.BROWN;
import static org.relegend.marking.BandColour.GOLD;
import static org.relegend.marking.BandColour.ORANGE;
import static org.relegend.marking.BandColour.RED;
import static org.relegend.marking.BandColour.VIOLET;
import static org.relegend.marking.BandColour.YELLOW;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The colour code against published tables and examples; each row names its source. */
class ColourBandsTest {

  @ParameterizedTest(name = "{0} is {1} ohm {2} %: {3}")
  @CsvSource({
    "brown black red gold, 1000, 5, resistorcolorcodes.org/chart",
    "yellow violet red gold, 4700, 5, resistorcolorcodes.org/chart",
    "red red orange gold, 22000, 5, resistorcolorcodes.org/chart",
    "red violet green gold, 2.7e6, 5, ethanhaus3/ResistorDecoder README",
    "brown black black gold brown, 10, 1, resistorcolorcodes.org/chart",
    "red red blue brown brown, 2260, 1, wikimili.com/en/Electronic_color_code",
    "brown black red, 1000, 20, kodekata.net (no fourth band is 20 %)",
    "brown black pink gold, 0.01, 5, D from resistorcolorcodes.org/chart (pink is 10^-3)",
    "brown black silver silver, 0.1, 10, D from kodekata.net (silver is 10^-2 and 10 %)",
  })
  void bands_areReadAsPublished(String colours, double ohms, double percent, String source) {
    BandReading first = ColourBands.read(BandColour.list(colours)).first().orElseThrow();

    assertThat(first.reversed()).isFalse();
    assertThat(first.value().amount()).isEqualTo(new Amount(Quantity.RESISTANCE, ohms));
    assertThat(first.value().tolerance()).contains(Tolerance.fraction(percent / 100));
  }

  @ParameterizedTest(name = "{0}: digit {1}, 10^{2}, {3} ppm/K")
  @CsvSource({
    // digits and multipliers: resistorcolorcodes.org/chart; coefficients: the same
    "PINK,   ,  -3,",
    "SILVER, ,  -2,",
    "GOLD,   ,  -1,",
    "BLACK,  0, 0, 250",
    "BROWN,  1, 1, 100",
    "RED,    2, 2, 50",
    "ORANGE, 3, 3, 15",
    "YELLOW, 4, 4, 25",
    "GREEN,  5, 5, 20",
    "BLUE,   6, 6, 10",
    "VIOLET, 7, 7, 5",
    "GREY,   8, 8, 1",
    "WHITE,  9, 9,",
  })
  void colour_hasItsPublishedMeanings(BandColour colour, Integer digit, int exponent, Integer ppm) {
    assertThat(colour.digit())
        .isEqualTo(digit == null ? OptionalInt.empty() : OptionalInt.of(digit));
    assertThat(colour.exponent()).isEqualTo(exponent);
    assertThat(colour.coefficient())
        .isEqualTo(ppm == null ? OptionalInt.empty() : OptionalInt.of(ppm));
  }

  @ParameterizedTest(name = "{0}: {1}: {2}")
  @CsvSource({
    "silver, 10,   resistorcolorcodes.org/chart",
    "gold,   5,    resistorcolorcodes.org/chart",
    "brown,  1,    resistorcolorcodes.org/chart",
    "red,    2,    resistorcolorcodes.org/chart",
    "green,  0.5,  resistorcolorcodes.org/chart",
    "blue,   0.25, resistorcolorcodes.org/chart",
    "violet, 0.1,  resistorcolorcodes.org/chart",
    "orange, 0.05, elektropage.com tid=36 (2016 edition)",
    "yellow, 0.02, elektropage.com tid=36 (2016 edition)",
    "grey,   0.05 0.01, exercism resistor-color-expert for 0.05; M for 0.01 of 2016",
  })
  void toleranceBand_tellsTheToleranceOfEveryEdition(String band, String percents, String source) {
    List<Double> lines = tolerances("yellow violet black red " + band);

    assertThat(lines)
        .containsExactlyElementsOf(
            Arrays.stream(percents.split(" ")).map(Double::parseDouble).toList());
  }

  @ParameterizedTest(name = "{0} is not {1} %: {2}")
  @CsvSource({
    "violet, 0.5, kodekata.net (right: 0.1)",
    "grey,   0.1, kodekata.net (right: 0.05 or 0.01)",
    "orange, 3,   gist pwillard a415d93f (not in IEC)",
    "yellow, 4,   gist pwillard a415d93f (not in IEC)",
  })
  void wrongToleranceOfTheWeb_isNotTaken(String band, double wrong, String source) {
    assertThat(tolerances("yellow violet black red " + band)).isNotEmpty().doesNotContain(wrong);
  }

  @Test
  void greyTolerance_namesTheEditionOfEachReading() {
    List<BandReading> readings =
        ColourBands.read(BandColour.list("yellow violet black red grey")).readings();

    assertThat(readings)
        .filteredOn(reading -> !reading.reversed())
        .extracting(reading -> reading.value().why())
        .anyMatch(why -> why.contains("2016") && !why.contains("before"))
        .anyMatch(why -> why.contains("before 2016"));
  }

  /** 10 kΩ from one end is 120 Ω from the other, and both are E12 values (D). */
  @Test
  void bandsPlausibleFromBothEnds_giveBothReadings() {
    List<BandReading> readings =
        ColourBands.read(List.of(BROWN, BLACK, BLACK, RED, BROWN)).readings();

    assertThat(readings)
        .extracting(reading -> reading.value().amount().value())
        .contains(10_000.0, 120.0);
    assertThat(readings).anyMatch(BandReading::reversed);
  }

  @Test
  void bandsThatMakeSenseFromOneEndOnly_areReadFromThere() {
    List<BandReading> readings = ColourBands.read(List.of(GOLD, RED, VIOLET, YELLOW)).readings();

    assertThat(readings).hasSize(1);
    assertThat(readings.get(0).reversed()).isTrue();
    assertThat(readings.get(0).value().amount().value()).isEqualTo(4700);
  }

  /** A fifth band may be a failure rate: tangible-technology.com R_Color_Code. */
  @Test
  void fifthBandBehindGold_mayBeAFailureRate() {
    List<BandReading> readings =
        ColourBands.read(List.of(YELLOW, VIOLET, RED, GOLD, BROWN)).readings();

    assertThat(readings)
        .anySatisfy(
            reading -> {
              assertThat(reading.value().amount().value()).isEqualTo(4700);
              assertThat(reading.value().tolerance()).contains(Tolerance.fraction(0.05));
              assertThat(reading.value().why()).contains("failure rate");
            });
    assertThat(readings)
        .anyMatch(reading -> reading.value().amount().value() == 47.2); // three figures, 0.1
  }

  /** Six bands are five and a temperature coefficient (MakersWorkbench wiki "Resistor-Bands"). */
  @Test
  void sixthBand_tellsTheTemperatureCoefficient() {
    BandReading first =
        ColourBands.read(BandColour.list("yellow violet black red brown red"))
            .first()
            .orElseThrow();

    assertThat(first.value().amount().value()).isEqualTo(47_000);
    assertThat(first.coefficient()).hasValue(50);
  }

  @Test
  void blackBandAlone_isALink() {
    BandReading reading = ColourBands.read(List.of(BLACK)).only().orElseThrow();

    assertThat(reading.value().amount().value()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "'brown black',3 to 6",
    "'red red red red red red red',3 to 6",
    "'gold silver gold silver',neither end",
    "'black black black black',neither end",
  })
  void bandsThatTellNothing_areRefused(String colours, String reason) {
    MarkingReadings<BandReading> answer = ColourBands.read(BandColour.list(colours));

    assertThat(answer.outcome()).isEqualTo(MarkingReadings.Outcome.MALFORMED);
    assertThat(answer.reason()).contains(reason);
  }

  @Test
  void noBands_areRefused() {
    assertThat(ColourBands.read(List.of()).outcome()).isEqualTo(MarkingReadings.Outcome.MALFORMED);
  }

  @Test
  void bandsOfAValue_followTheFiguresOfItsTolerance() {
    // two figures from 5 % up, three from 2 % down: instrumentationtools.com
    assertThat(ColourBands.of(4700, 0.05)).containsExactly(YELLOW, VIOLET, RED, GOLD);
    assertThat(ColourBands.of(4700, 0.01)).containsExactly(YELLOW, VIOLET, BLACK, BROWN, BROWN);
    assertThat(ColourBands.of(1000, 0.20)).containsExactly(BROWN, BLACK, RED);
    assertThat(ColourBands.of(1000, 0.0005)).endsWith(ORANGE);
    assertThat(ColourBands.of(0, 0.05)).containsExactly(BLACK);
  }

  @ParameterizedTest
  @EnumSource(names = {"E24", "E96"})
  void bandsOfEveryPreferredValue_readBackAsThatValue(PreferredSeries series) {
    double tolerance = series == PreferredSeries.E24 ? 0.05 : 0.01;
    for (int decade = -3; decade <= 5; decade++) {
      for (int member : series.members()) {
        double ohms = DecimalParser.value(member, decade);
        List<BandColour> bands = ColourBands.of(ohms, tolerance);

        assertThat(ColourBands.read(bands).readings())
            .as(bands.toString())
            .filteredOn(reading -> !reading.reversed())
            .anyMatch(
                reading ->
                    reading.value().amount().value() == ohms
                        && reading.value().tolerance().orElseThrow().high() == tolerance);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "4750, 0.05",
    "4700, 0.03",
    "-5, 0.05",
    "1e13, 0.05",
    "0.001, 0.01",
    "NaN, 0.05",
    "4700, NaN"
  })
  void valueThatNoBandsTell_isRefused(double ohms, double tolerance) {
    assertThatThrownBy(() -> ColourBands.of(ohms, tolerance))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(
            tolerance == 0.03 || Double.isNaN(tolerance) ? "tolerance" : Double.toString(ohms));
  }

  private static List<Double> tolerances(String colours) {
    return ColourBands.read(BandColour.list(colours)).readings().stream()
        .filter(reading -> !reading.reversed() && !reading.value().why().contains("failure"))
        .map(reading -> reading.value().tolerance().orElseThrow().high() * 100)
        .map(percent -> Math.round(percent * 1e6) / 1e6)
        .toList();
  }
}
