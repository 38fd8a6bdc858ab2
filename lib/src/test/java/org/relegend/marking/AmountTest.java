package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Writing amounts, and reading back what was written. */
class AmountTest {

  /** Codes as in the IEC 60062 examples at en.wikipedia.org/wiki/IEC/EN_60062, k in lower case. */
  @ParameterizedTest
  @CsvSource({
    "RESISTANCE,  0.47,    0R47,  470 mΩ",
    "RESISTANCE,  4.7,     4R7,   4.7 Ω",
    "RESISTANCE,  470,     470R,  470 Ω",
    "RESISTANCE,  4700,    4k7,   4.7 kΩ",
    "RESISTANCE,  47300,   47k3,  47.3 kΩ",
    "RESISTANCE,  470000,  470k,  470 kΩ",
    "RESISTANCE,  4.7e6,   4M7,   4.7 MΩ",
    "RESISTANCE,  1000,    1k0,   1 kΩ",
    "RESISTANCE,  59.04,   59R04, 59.04 Ω",
    "RESISTANCE,  0,       0R,    0 Ω",
    "CAPACITANCE, 1e-9,    1n0,   1 nF",
    "CAPACITANCE, 4.7e-12, 4p7,   4.7 pF",
    "CAPACITANCE, 0.5e-12, 0p5,   0.5 pF",
    "CAPACITANCE, 1e-3,    1000u, 1000 µF",
    "INDUCTANCE,  4.7e-6,  4u7H,  4.7 µH",
    "INDUCTANCE,  2.2,     2H2,   2.2 H",
    "VOLTAGE,     5.1,     5V1,   5.1 V",
    "VOLTAGE,     16,      16V,   16 V",
    "VOLTAGE,     0.0047,  4.7mV, 4.7 mV",
    "CURRENT,     0.1,     100mA, 100 mA",
    "NUMBER,      4700,    4700,  4700",
  })
  void amount_isWrittenAsCodeAndForPeople(
      Quantity quantity, double value, String code, String text) {
    Amount amount = new Amount(quantity, value);

    assertThat(amount.code()).isEqualTo(code);
    assertThat(amount.text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "-14.2304, 6, -14.2304 V",
    "-14.2304, 3, -14.2 V",
    "999.96, 4, 1 kV",
    "0.62, 1, 600 mV",
    "0, 6, 0 V",
  })
  void text_isRoundedToItsFigures(double volts, int figures, String text) {
    assertThat(new Amount(Quantity.VOLTAGE, volts).text(figures)).isEqualTo(text);
  }

  @Test
  void waveform_isWritten() {
    assertThat(new Amount(Quantity.VOLTAGE, 275, Waveform.AC).text()).isEqualTo("275 V AC");
  }

  @ParameterizedTest
  @EnumSource(
      names = {
        "RESISTANCE",
        "CAPACITANCE",
        "INDUCTANCE",
        "VOLTAGE",
        "CURRENT",
        "POWER",
        "FREQUENCY"
      })
  void code_readsBackAsItsAmount(Quantity quantity) {
    for (long seed = 1; seed <= 3; seed++) {
      Random random = new Random(seed);
      for (int i = 0; i < 500; i++) {
        int top = quantity == Quantity.RESISTANCE ? 8 : 1;
        int exponent = random.nextInt(12) - 12 + top;
        Amount amount =
            new Amount(quantity, DecimalParser.value(1 + random.nextInt(999), exponent));
        MarkingReadings<ValueReading> back = ComponentValues.read(amount.code(), quantity);

        assertThat(back.readings())
            .as("seed %d: %s as %s", seed, amount, amount.code())
            .anyMatch(reading -> reading.amount().equals(amount));
        assertThat(TypedAmounts.read(amount.text(), quantity).readings())
            .as("seed %d: %s as %s", seed, amount, amount.text())
            .contains(amount);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void numberThatIsNone_isRefused(double value) {
    assertThatThrownBy(() -> new Amount(Quantity.VOLTAGE, value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(String.valueOf(value));
  }

  @Test
  void impossibleWriting_isRefused() {
    Amount negative = new Amount(Quantity.RESISTANCE, -1);

    assertThatThrownBy(negative::code).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> negative.text(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> negative.text(16)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void tolerance_givesTheLimitsOfAPart() {
    // US Army fault charts: 1489 to 2015 ohm is 1752 ohm ±15 % (TM 11-6125-256-34)
    Tolerance each = Tolerance.fraction(0.15);

    assertThat(Math.round(each.lowest(1752))).isEqualTo(1489);
    assertThat(Math.round(each.highest(1752))).isEqualTo(2015);
    assertThat(Tolerance.absolute(0.25e-12).highest(4.7e-12)).isEqualTo(4.95e-12);
    assertThat(each.text()).isEqualTo("±15 %");
    assertThat(Tolerance.absolute(0.25e-12).text()).isEqualTo("±0.25 pF");
    assertThat(ToleranceLetter.Z.meanings(Quantity.CAPACITANCE, 1e-8).get(0).text())
        .isEqualTo("-20 +80 %");
    assertThatThrownBy(() -> new Tolerance(0.1, 0.2, Tolerance.Basis.FRACTION))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
