package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PaperTest {
  @Test
  void words_areReadInAnyCase_andOthersRefusedWithTheList() {
    assertThat(Paper.of("A4")).isEqualTo(Paper.A4);
    assertThat(Paper.of("letter")).isEqualTo(Paper.LETTER);
    assertThatThrownBy(() -> Paper.of("a5"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a5")
        .hasMessageContaining("a4, letter");
  }
}
