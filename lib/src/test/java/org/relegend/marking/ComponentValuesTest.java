package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.marking.MarkingReadings.Outcome;

/** Whole texts of parts lists: value, ratings and words together. */
class ComponentValuesTest {

  /** Spellings of parts lists, common practice; the numbers are plain arithmetic. */
  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "4k7                    | RESISTANCE  | 4700    |",
        "4k7 0.5W               | RESISTANCE  | 4700    | 500 mW",
        "4.7k                   | RESISTANCE  | 4700    |",
        "4,7k                   | RESISTANCE  | 4700    |",
        "4.7 kΩ                 | RESISTANCE  | 4700    |",
        "4k7 Ω                  | RESISTANCE  | 4700    |",
        "4k7Ω ±5%               | RESISTANCE  | 4700    |",
        "4.7 k ohm              | RESISTANCE  | 4700    |",
        "1M 0.5W mains-rated    | RESISTANCE  | 1e6     | 500 mW",
        "10R 1W                 | RESISTANCE  | 10      | 1 W",
        "10k 1/4W               | RESISTANCE  | 10000   | 250 mW",
        "4k7/2W                 | RESISTANCE  | 4700    | 2 W",
        "2x10k                  | RESISTANCE  | 10000   |",
        "10k,2W                 | RESISTANCE  | 10000   | 2 W",
        "10k 1/2 W              | RESISTANCE  | 10000   | 500 mW",
        "10k/0.5W               | RESISTANCE  | 10000   | 500 mW",
        "2M2                    | RESISTANCE  | 2.2e6   |",
        "2.2 meg                | RESISTANCE  | 2.2e6   |",
        "10k preset             | RESISTANCE  | 10000   |",
        "B100K                  | RESISTANCE  | 100000  |",
        "0                      | RESISTANCE  | 0       |",
        "0R                     | RESISTANCE  | 0       |",
        "10u 25V bead           | CAPACITANCE | 10e-6   | 25 V",
        "10 µF 25 V             | CAPACITANCE | 10e-6   | 25 V",
        "220u/25V               | CAPACITANCE | 220e-6  | 25 V",
        "47p polystyrene        | CAPACITANCE | 47e-12  |",
        "100n X-class 275 V AC  | CAPACITANCE | 100e-9  | 275 V AC",
        "1000u 40V              | CAPACITANCE | 1000e-6 | 40 V",
        "1u film                | CAPACITANCE | 1e-6    |",
        "0.047 µF 630 VDC       | CAPACITANCE | 47e-9   | 630 V DC",
        "10mfd 450V             | CAPACITANCE | 10e-6   | 450 V",
        "100mmf                 | CAPACITANCE | 100e-12 |",
        ".1                     | CAPACITANCE | 0.1e-6  |",
        "16V 0.5W               | VOLTAGE     | 16      | 500 mW",
        "0.5W 16V               | VOLTAGE     | 16      | 500 mW",
        "5V1                    | VOLTAGE     | 5.1     |",
        "230 V AC inlet block   | VOLTAGE     | 230     |",
        "T100mA 250 V           | CURRENT     | 0.1     | 250 V",
        "F2A                    | CURRENT     | 2       |",
        "500mAT                 | CURRENT     | 0.5     |",
        "1 A 100 V              | CURRENT     | 1       | 100 V",
        "10u                    | INDUCTANCE  | 10e-6   |",
        "4u7H                   | INDUCTANCE  | 4.7e-6  |",
        "100mH                  | INDUCTANCE  | 0.1     |",
        "32k768                 | FREQUENCY   | 32768   |",
        "4.000 MHz              | FREQUENCY   | 4e6     |",
      })
  void partsListText(String text, Quantity expected, double value, String ratings) {
    MarkingReadings<ValueReading> answer = ComponentValues.read(text, expected);

    assertThat(answer.outcome()).as(answer.reason()).isEqualTo(Outcome.READ);
    ValueReading first = answer.first().orElseThrow();
    assertThat(first.amount().quantity()).isEqualTo(expected);
    assertThat(first.amount().value()).isEqualTo(value);
    assertThat(first.why()).isNotBlank();
    String line = String.join(", ", first.ratings().stream().map(Amount::text).toList());
    assertThat(line).isEqualTo(ratings == null ? "" : ratings);
  }

  @Test
  void wordsBesideTheValue_areKept() {
    ValueReading reading =
        ComponentValues.read("100n X-class 275 V AC", Quantity.CAPACITANCE).only().orElseThrow();

    assertThat(reading.words()).containsExactly("X-class");
    assertThat(reading.rated(Quantity.VOLTAGE)).hasValue(275);
    assertThat(reading.rated(Quantity.POWER)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4k7 5%        | -0.05 | 0.05",
        "4k7 ±5 %      | -0.05 | 0.05",
        "4k7 +/-10%    | -0.1  | 0.1",
        "4k7 -20+80%   | -0.2  | 0.8",
        "4k7 -20 +80 % | -0.2  | 0.8",
        "4k7 +80/-20%  | -0.2  | 0.8",
        "4k7J          | -0.05 | 0.05",
        "4k7J 10%      | -0.1  | 0.1",
      })
  void tolerance_isReadAsLetterOrWrittenOut(String text, double low, double high) {
    ValueReading reading = ComponentValues.read(text).only().orElseThrow();

    assertThat(reading.tolerance()).contains(new Tolerance(low, high, Tolerance.Basis.FRACTION));
  }

  @Test
  void tolerance_inPicofarads() {
    ValueReading reading =
        ComponentValues.read("47p ±0.5pF", Quantity.CAPACITANCE).only().orElseThrow();

    assertThat(reading.tolerance()).contains(Tolerance.absolute(0.5e-12));
  }

  /** A letter and a percentage that disagree are both told. */
  @Test
  void tolerance_letterAgainstPercentage_saysSo() {
    ValueReading reading = ComponentValues.read("4k7J 10%").only().orElseThrow();

    assertThat(reading.why()).contains("±5 %").contains("±10 %");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "104   |             | 104 Ω; 100 kΩ; 100 nF; 104 pF",
        "104   | CAPACITANCE | 100 nF; 104 pF; 104 µF",
        "104   | RESISTANCE  | 104 Ω; 100 kΩ",
        "470   | CAPACITANCE | 47 pF; 470 pF; 470 µF",
        "104K  |             | 104 kΩ; 100 nF; 104 pF",
        "104K  | CAPACITANCE | 100 nF; 104 pF",
        "104K  | RESISTANCE  | 104 kΩ",
        "10u   |             | 10 µF; 10 µH",
        "4u7H  | CAPACITANCE | 4.7 µF",
        "4,700 | RESISTANCE  | 4.7 Ω; 4.7 kΩ",
        "1m    | RESISTANCE  | 1 mΩ; 1 MΩ",
        "10 mF | CAPACITANCE | 10000 µF; 10 µF",
        "1M    | CAPACITANCE | 1 pF; 1 µF",
        "4k7 10k | RESISTANCE | 4.7 kΩ; 10 kΩ",
      })
  void ambiguousText_givesAllReadings(String text, Quantity expected, String readings) {
    MarkingReadings<ValueReading> answer =
        expected == null ? ComponentValues.read(text) : ComponentValues.read(text, expected);

    List<String> lines = answer.readings().stream().map(each -> each.amount().text()).toList();
    assertThat(lines.stream().distinct()).containsExactlyInAnyOrder(readings.split("; "));
  }

  @Test
  void bareNumberBehindWords_isAValueOnlyAsACode() {
    assertThat(ComponentValues.read("ceramic 104", Quantity.CAPACITANCE).outcome())
        .isEqualTo(Outcome.READ);
    assertThat(ComponentValues.read("see note 3", Quantity.CAPACITANCE).outcome())
        .isEqualTo(Outcome.NO_VALUE);
  }

  @Test
  void severalValues_areToldAsSuch() {
    assertThat(ComponentValues.read("4k7 10k", Quantity.RESISTANCE).readings())
        .allMatch(reading -> reading.why().contains("several values"));
  }

  @Test
  void secondTolerance_isKeptAsAWord() {
    ValueReading reading = ComponentValues.read("4k7 5% 10%").only().orElseThrow();

    assertThat(reading.tolerance()).contains(Tolerance.fraction(0.05));
    assertThat(reading.words()).containsExactly("10%");
  }

  @Test
  void bandsInWords_areReadAsAResistor() {
    ValueReading first = ComponentValues.read("brown black red gold").first().orElseThrow();

    assertThat(first.amount()).isEqualTo(new Amount(Quantity.RESISTANCE, 1000));
    assertThat(first.tolerance()).contains(Tolerance.fraction(0.05));
    assertThat(ComponentValues.read("BN-BK-RD-GD").first()).contains(first);
    assertThat(ComponentValues.read("brown black red gold", Quantity.CAPACITANCE).outcome())
        .isEqualTo(Outcome.OTHER_QUANTITY);
    assertThat(ComponentValues.read("brown black").outcome()).isEqualTo(Outcome.MALFORMED);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "-",
        "medium-power NPN",
        "small-signal Si",
        "N-channel JFET",
        "mains switch",
        "five-NPN array, 14-pin",
        "dual JFET-input op-amp, 8-pin",
        "input",
        "red LED",
        "BC547",
        "BC 547",
        "1N4148",
        "1N914",
        "2N3904",
        "2SC1815",
        "74LS00",
        "TL072",
        "2 pole switch",
        "gain-reduction meter socket",
        "X2",
        "Type 40",
      })
  void description_holdsNoValue(String text) {
    MarkingReadings<ValueReading> answer = ComponentValues.read(text);

    assertThat(answer.outcome()).as(answer.readings().toString()).isEqualTo(Outcome.NO_VALUE);
    assertThat(answer.reason()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4k7k7",
        "4..7k",
        "47xyz",
        "1.2.3k",
        "-4k7",
        "4K7Q5",
        "1,23,4k",
        "12345678901234567",
        "4k70000",
        "2N3904",
        "4k7\u200F",
        "\u202E4k7",
        "4k7\u0000",
        "1e400k",
        "0.5W 4k7k7",
      })
  void malformedValue_isToldFromADescription(String text) {
    MarkingReadings<ValueReading> answer = ComponentValues.read(text, Quantity.RESISTANCE);

    assertThat(answer.outcome()).as(answer.toString()).isEqualTo(Outcome.MALFORMED);
    assertThat(answer.reason()).isNotBlank();
  }

  @Test
  void valueOfAnotherQuantity_isToldWithItsReading() {
    MarkingReadings<ValueReading> answer = ComponentValues.read("100n", Quantity.RESISTANCE);

    assertThat(answer.outcome()).isEqualTo(Outcome.OTHER_QUANTITY);
    assertThat(answer.first().orElseThrow().amount().value()).isEqualTo(100e-9);
    assertThat(answer.reason()).contains("100n").contains("capacitance").contains("resistance");
  }

  @Test
  void hostileText_isRefusedUnread() {
    String text = "9".repeat(10_000_000);

    MarkingReadings<ValueReading> answer = ComponentValues.read(text, Quantity.RESISTANCE);

    assertThat(answer.outcome()).isEqualTo(Outcome.MALFORMED);
    assertThat(answer.reason()).contains("10000000").contains("200").hasSizeLessThan(200);
  }

  /** Hostile mixtures of everything that means something: an answer each, never an exception. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void anyText_isAnsweredInItsOwnTerms(long seed) {
    String alphabet = "0123456789..,,kKMmunpRVWFHAJ%±+-/ ()Ωµx\u2126\u00A0~eEC\t";
    Random random = new Random(seed);
    Quantity[] quantities = Quantity.values();
    for (int i = 0; i < 2000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(12); length >= 0; length--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      Quantity quantity = quantities[random.nextInt(quantities.length)];
      MarkingReadings<ValueReading> answer = ComponentValues.read(text.toString(), quantity);
      long fitting =
          answer.readings().stream()
              .filter(reading -> reading.amount().quantity() == quantity)
              .count();
      assertThat(fitting)
          .as("%s as %s: %s", text, quantity, answer)
          .isEqualTo(answer.outcome() == Outcome.READ ? answer.readings().size() : 0);
    }
  }
}
