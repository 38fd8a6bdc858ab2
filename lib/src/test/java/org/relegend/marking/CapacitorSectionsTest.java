package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cans with several sections as parts lists write them (common practice); sums are arithmetic. */
class CapacitorSectionsTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "40u+40u+20u 450V       | 40 µF 450 V, 40 µF 450 V, 20 µF 450 V",
        "8+8 450                | 8 µF 450 V, 8 µF 450 V",
        "32+32/350              | 32 µF 350 V, 32 µF 350 V",
        "8 + 8 µF 450 V DC      | 8 µF 450 V DC, 8 µF 450 V DC",
        "40u 450V + 20u 25V     | 40 µF 450 V, 20 µF 25 V",
        "20/450 + 20/25         | 20 µF 450 V, 20 µF 25 V",
        "40/20/10uF 450V        | 40 µF 450 V, 20 µF 450 V, 10 µF 450 V",
        "2x50u 450V             | 50 µF 450 V, 50 µF 450 V",
        "0.1u+2x2.5n 250V~      | 100 nF 250 V AC, 2.5 nF 250 V AC, 2.5 nF 250 V AC",
        "50+50 500VW            | 50 µF 500 V, 50 µF 500 V",
        "100+50                 | 100 µF, 50 µF",
      })
  void sections_keepValueAndRatingEach(String text, String line) {
    List<CapacitorSection> sections = CapacitorSections.of(text);

    assertThat(String.join(", ", sections.stream().map(CapacitorSection::text).toList()))
        .isEqualTo(line);
  }

  /** One section, a range, ends missing, ratings that could be anyone's. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "40u 450V",
        "8",
        "16-16 450V",
        "8+8+",
        "+8 450",
        "8++8",
        "10/40pF",
        "3/2/1A",
        "1/2/3",
        "40u 450V + 20u + 10u 25V",
        "0+8 450",
        "8+k 450",
        "2x10k",
        "1+1+1+1+1+1+1+1+1+1",
        "8+8\u200F",
        "8+8 450V 105"
      })
  void textWithoutSections_givesNone(String text) {
    assertThat(CapacitorSections.of(text)).isEmpty();
  }

  @Test
  void value_isTheSum_withItsSections() {
    ValueReading reading =
        ComponentValues.read("40u 450V + 20u 25V", Quantity.CAPACITANCE).only().orElseThrow();

    assertThat(reading.amount().value()).isEqualTo(60e-6);
    assertThat(reading.sections()).hasSize(2);
    assertThat(reading.rated(Quantity.VOLTAGE)).hasValue(450);
    assertThat(reading.why()).contains("2 sections");
  }

  @Test
  void section_ofNothingOrInOtherUnits_isRefused() {
    Amount farads = new Amount(Quantity.CAPACITANCE, 8e-6);
    Amount ohms = new Amount(Quantity.RESISTANCE, 8);

    assertThatThrownBy(() -> new CapacitorSection(ohms, Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CapacitorSection(farads, Optional.of(ohms)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new CapacitorSection(new Amount(Quantity.CAPACITANCE, 0), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
