package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PaperSizeTest {
  @Test
  void words_areReadInAnyCase_andOthersRefusedWithTheList() {
    assertThat(PaperSize.of("A4")).isEqualTo(PaperSize.A4);
    assertThat(PaperSize.of("letter")).isEqualTo(PaperSize.LETTER);
    assertThatThrownBy(() -> PaperSize.of("a5"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a5")
        .hasMessageContaining("a4, letter");
  }
}
