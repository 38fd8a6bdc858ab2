package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NameRulesTest {
  @ParameterizedTest
  @ValueSource(strings = {"", " R1", "R1 ", "R\"1", "R\n1", "R\u202e1", "R\u00001", "R\u200b1"})
  void netId_withMarksThatMislead_isRefused(String text) {
    assertThatThrownBy(() -> new NetId(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"R/1", "R\\1", "R.1", "R 1", "C:1"})
  void partId_withDividers_isRefused(String text) {
    assertThatThrownBy(() -> new PartId(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("R".equals(text.substring(0, 1)) ? "part id" : "colon");
  }

  @Test
  void netId_barredAndSignedNames_areTaken() {
    assertThat(Stream.of("/RESET", "+15V", "-15 V", "0V", "µ-ctl").map(NetId::new)).hasSize(5);
  }

  @Test
  void message_showsHiddenMarks() {
    assertThatThrownBy(() -> new NetId("A\u202eB")).hasMessageContaining("<U+202E>");
  }

  @Test
  void natural_numbersCompareAsNumbers() {
    List<String> sorted =
        Stream.of("R10", "R2", "R1", "R02", "C3", "R2.10", "R2.9")
            .sorted(NameRules.NATURAL)
            .toList();
    assertThat(sorted).containsExactly("C3", "R1", "R02", "R2", "R2.9", "R2.10", "R10");
  }

  @Test
  void natural_isATotalOrderThatAgreesWithEquals() {
    Random random = new Random(7);
    List<String> words =
        Stream.generate(
                () ->
                    random
                        .ints(5, 0, 5)
                        .mapToObj(i -> "R019a".substring(i, i + 1))
                        .reduce("", String::concat))
            .limit(60)
            .toList();
    for (String a : words) {
      for (String b : words) {
        int order = NameRules.NATURAL.compare(a, b);
        assertThat(Integer.signum(order))
            .isEqualTo(-Integer.signum(NameRules.NATURAL.compare(b, a)));
        assertThat(order == 0).isEqualTo(a.equals(b));
        for (String c : words) {
          if (order < 0 && NameRules.NATURAL.compare(b, c) < 0) {
            assertThat(NameRules.NATURAL.compare(a, c)).as("%s %s %s", a, b, c).isNegative();
          }
        }
      }
    }
  }
}
