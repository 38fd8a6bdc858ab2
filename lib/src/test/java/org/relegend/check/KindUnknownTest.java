package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class KindUnknownTest {
  private static final Check CHECK = new KindUnknown();

  @Test
  void fires_onceForAllPartsOfOneKind() {
    Finding finding =
        only(CHECK, with(divider(), twoPin("R3", "resitor", ""), twoPin("R4", "resitor", "")));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message())
        .isEqualTo("The kind \"resitor\" is not one that is known: R3, R4");
    assertThat(subjects(finding)).containsExactly("R3", "R4");
  }

  @Test
  void isQuiet_forKindsWordsForThemAndNone() {
    assertQuiet(CHECK, with(divider(), twoPin("C1", "Electrolytic", ""), twoPin("X1", "", "")));
  }
}
