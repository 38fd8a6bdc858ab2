package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardId;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.PartId;

class DesignatorTwiceTest {
  private static final Check CHECK = new DesignatorTwice();

  @Test
  void fires_forTwoPartsOfOneBoard() {
    Part second = Part.named(new PartId("R1~2"), new Designator("R1"), MAIN);
    Finding finding = only(CHECK, with(divider(), second));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.message()).isEqualTo("Board main has 2 parts called R1");
    assertThat(subjects(finding)).containsExactly("R1", "R1~2");
  }

  @Test
  void isQuiet_whereTheOtherSitsOnAnotherBoard() {
    Part other = Part.named(new PartId("R1~2"), new Designator("R1"), new BoardId("psu"));
    assertQuiet(CHECK, with(divider(), other));
  }
}
