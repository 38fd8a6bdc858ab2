package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaitTimeTest {
  @ParameterizedTest
  @CsvSource({
    "0.169, 169 ms",
    "14.76, 14.8 s",
    "119, 119 s",
    "121, 3 min",
    "3540, 59 min",
    "37200, 10 h 20 min",
    "36000, 10 h",
    "36001, 10 h 1 min",
    "86400, 1 d",
    "266400, 3 d 2 h"
  })
  void text_isWhatPeopleSay_andNeverLessThanItIs(double seconds, String text) {
    assertThat(WaitTime.text(seconds)).isEqualTo(text);
  }
}
