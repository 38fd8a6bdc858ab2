package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SubjectTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "R101",
        "U101/Ta",
        "R101.1",
        "C102.+",
        "U1.V-",
        "net:A_ATT",
        "net:/RESET",
        "J1.a/b",
        "U1/1.5"
      })
  void parse_readsWhatToStringWrites(String text) {
    assertThat(Subject.parse(text)).hasToString(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ".1", "R1.", "net:", "/X", "R 1"})
  void parse_otherText_isRefused(String text) {
    assertThatThrownBy(() -> Subject.parse(text)).isInstanceOf(IllegalArgumentException.class);
  }
}
