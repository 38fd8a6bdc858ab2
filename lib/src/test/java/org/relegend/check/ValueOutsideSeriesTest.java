package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class ValueOutsideSeriesTest {
  private static final Check CHECK = new ValueOutsideSeries();

  /** IEC 60063: 4.5 k is in none of E3 to E192, and 450 isn't in E24 at 5 %. */
  @ParameterizedTest
  @CsvSource({
    "4k5,any preferred series,4.7 k\u03a9",
    "450R 5%,the E24 series of its tolerance,470 \u03a9",
    "4k64 10%,the E12 series of its tolerance,4.7 k\u03a9"
  })
  void fires_forAValueOfNoSeries(String value, String series, String nearest) {
    Finding finding = only(CHECK, with(blank(), twoPin("R1", "resistor", value)));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).contains("is not in " + series, "the nearest is " + nearest);
  }

  /** IEC 60063: 4.64 is in E96 (1 %), 4.7 in E24, in which close parts are made too. */
  @ParameterizedTest
  @ValueSource(strings = {"4k7", "4k64 1%", "4k7 1%", "4k64", "0R", "10M 10%", "", "preset"})
  void isQuiet_forPreferredValues(String value) {
    assertQuiet(CHECK, with(blank(), twoPin("R1", "resistor", value)));
  }

  @Test
  void isQuiet_forPartsThatAreNotMadeInSeries() {
    assertQuiet(CHECK, with(blank(), twoPin("T1", "speaker", "45R"), twoPin("R2", "", "4k5")));
  }
}
