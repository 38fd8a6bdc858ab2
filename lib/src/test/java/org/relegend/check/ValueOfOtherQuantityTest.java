package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;

class ValueOfOtherQuantityTest {
  private static final Check CHECK = new ValueOfOtherQuantity();

  @Test
  void fires_forAResistorOfFarads() {
    Finding finding = only(CHECK, with(blank(), twoPin("R1", "resistor", "100nF")));
    assertThat(finding.message()).startsWith("R1 is a resistor: ").contains("capacitance");
  }

  @Test
  void isQuiet_whereTheKindFitsOrIsUnknown() {
    assertQuiet(CHECK, with(divider(), twoPin("C1", "cap", "100nF"), twoPin("X1", "", "100nF")));
  }
}
