package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class OnePinNetTest {
  private static final Check CHECK = new OnePinNet();

  @Test
  void fires_onceForAllOfThem() {
    Finding finding = only(CHECK, divider());
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).isEqualTo("2 nets have just one pin: 0V, VP");
    assertThat(subjects(finding)).containsExactly("net:0V", "net:VP");
  }

  @Test
  void isQuiet_whereEachNetJoinsSomething() {
    assertQuiet(CHECK, with(divider(), net("VP", "R1.1", "R2.2"), net("0V")));
  }
}
