package org.relegend.demo.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourCodeTest {
  /**
   * The first three are worked examples of published colour code charts after IEC 60062 (brown
   * black red gold = 1 k, yellow violet red gold = 4.7 k, red violet green gold = 2.7 M); the
   * others follow from the same digits, figures being brown 1, orange 3, and so on.
   */
  @ParameterizedTest(name = "{0} is {1} {2} and ten to the {3}")
  @CsvSource({
    "1k 0.5W, 1, 0, 2",
    "4k7, 4, 7, 2",
    "2M7, 2, 7, 5",
    "10R 1W, 1, 0, 0",
    "100R, 1, 0, 1",
    "1k5, 1, 5, 2",
    "330k, 3, 3, 4",
    "1M 0.5W mains-rated, 1, 0, 5",
    "2M2, 2, 2, 5"
  })
  void value_hasItsBands(String value, int first, int second, int power) {
    assertThat(ColourCode.digits(value)).isEqualTo(List.of(first, second, power));
  }

  @Test
  void tolerance_isGold_metallic() {
    assertThat(ColourCode.bands("4k7").get(3).metal()).isTrue();
  }

  @Test
  void whatIsNoResistorValue_isRefused() {
    assertThatThrownBy(() -> ColourCode.bands("100n disc"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("100n disc");
  }
}
