package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;

class PinOnTwoNetsTest {
  private static final Check CHECK = new PinOnTwoNets();

  @Test
  void fires_forThePinsThatNetsShare() {
    BoardMap map = with(divider(), net("OTHER", "R1.1", "R2.1"), net("THIRD", "R1.1"));
    List<Finding> findings = inspect(CHECK, map);
    assertThat(findings).extracting(Finding::severity).containsOnly(Severity.ERROR);
    assertThat(findings)
        .extracting(Finding::message)
        .containsExactly(
            "R2.1 is on the nets MID and OTHER", "R1.1 is on the nets OTHER and THIRD and VP");
    assertThat(subjects(findings.get(0))).containsExactly("R2.1", "net:MID", "net:OTHER");
  }

  @Test
  void isQuiet_whereEachPinIsOnOneNet() {
    assertQuiet(CHECK, divider());
  }
}
