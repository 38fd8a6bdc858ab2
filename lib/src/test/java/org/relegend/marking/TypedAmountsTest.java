package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.marking.MarkingReadings.Outcome;

/** Readings as typed at the bench; prefixes after ISO 80000-1, spellings common practice. */
class TypedAmountsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-0.62        | NUMBER     | -0.62",
        "101 mV       | VOLTAGE    | 0.101",
        "4.7k         | NUMBER     | 4700",
        "−12,5 V      | VOLTAGE    | -12.5",
        "22 M         | NUMBER     | 22e6",
        "22 m         | NUMBER     | 0.022",
        "+5.34 V      | VOLTAGE    | 5.34",
        "- 4.7 mV     | VOLTAGE    | -0.0047",
        "33 kΩ        | RESISTANCE | 33000",
        "33 kohm      | RESISTANCE | 33000",
        "47R          | RESISTANCE | 47",
        "0R47         | RESISTANCE | 0.47",
        "4k7          | NUMBER     | 4700",
        "4k7 Ω        | RESISTANCE | 4700",
        "28 mA        | CURRENT    | 0.028",
        "100 uA       | CURRENT    | 100e-6",
        "100 µA       | CURRENT    | 100e-6",
        "1.2 kHz      | FREQUENCY  | 1200",
        "10 mF        | CAPACITANCE| 0.01",
        "15 s         | TIME       | 15",
        "49 mW        | POWER      | 0.049",
        "1.2E-3       | NUMBER     | 0.0012",
        "1.00E+03 V   | VOLTAGE    | 1000",
        "1,234.5 V    | VOLTAGE    | 1234.5",
        "1.234,5 V    | VOLTAGE    | 1234.5",
        "1\u00A0234 V      | VOLTAGE    | 1234",
        ".5           | NUMBER     | 0.5",
        "-0           | NUMBER     | 0",
      })
  void typedReading(String text, Quantity quantity, double value) {
    MarkingReadings<Amount> answer = TypedAmounts.read(text);

    assertThat(answer.only()).as(answer.toString()).contains(new Amount(quantity, value));
  }

  @Test
  void waveform_isReadWhereTyped() {
    assertThat(TypedAmounts.read("230 V AC").only())
        .contains(new Amount(Quantity.VOLTAGE, 230, Waveform.AC));
    assertThat(TypedAmounts.read("230 Vrms").only())
        .contains(new Amount(Quantity.VOLTAGE, 230, Waveform.AC));
    assertThat(TypedAmounts.read("-15.35VDC").only())
        .contains(new Amount(Quantity.VOLTAGE, -15.35, Waveform.DC));
  }

  @ParameterizedTest
  @CsvSource({"-0.62, -0.62", "101 m, 0.101", "101 mV, 0.101", "4.7k, 4700"})
  void assumedQuantity_standsInForAMissingUnit(String text, double volts) {
    assertThat(TypedAmounts.read(text, Quantity.VOLTAGE).only())
        .contains(new Amount(Quantity.VOLTAGE, volts));
  }

  @Test
  void unitOfAnotherQuantity_isToldWithItsReading() {
    MarkingReadings<Amount> answer = TypedAmounts.read("33 kΩ", Quantity.VOLTAGE);

    assertThat(answer.outcome()).isEqualTo(Outcome.OTHER_QUANTITY);
    assertThat(answer.first()).contains(new Amount(Quantity.RESISTANCE, 33_000));
    assertThat(answer.reason()).contains("resistance").contains("voltage");
  }

  @Test
  void commaBeforeThreeDigits_givesBothReadings_decimalFirst() {
    List<Amount> readings = TypedAmounts.read("-1,250 V").readings();

    assertThat(readings).extracting(Amount::value).containsExactly(-1.25, -1250.0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "OL",
        "abc",
        "1.2.3",
        "1,23,4",
        "5 V 6",
        "1 234 V",
        "5-3 V",
        "12 Q",
        "--5",
        "5-",
        "1e400",
        "4k7k",
        "4k7 V7",
        "12 MV",
        "10 MF",
        "<0.5 V",
        "0x10",
        "12345678901234567",
        "NaN",
        "Infinity",
        "1e999 V",
        "5 V\u0007",
      })
  void textThatIsNoReading_isRefused(String text) {
    MarkingReadings<Amount> answer = TypedAmounts.read(text, Quantity.VOLTAGE);

    assertThat(answer.outcome()).as(answer.toString()).isEqualTo(Outcome.MALFORMED);
    assertThat(answer.reason()).isNotBlank();
  }

  @Test
  void emptyOrHostileText_isAnswered() {
    assertThat(TypedAmounts.read("  ").outcome()).isEqualTo(Outcome.NO_VALUE);
    assertThat(TypedAmounts.read("1".repeat(10_000_000)).outcome()).isEqualTo(Outcome.MALFORMED);
  }
}
