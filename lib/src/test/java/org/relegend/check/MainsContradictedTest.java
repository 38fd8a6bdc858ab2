package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.Potential;

class MainsContradictedTest {
  private static final Check CHECK = new MainsContradicted();

  @Test
  void fires_whereTheInletIsOnANetOfAnotherNature() {
    Finding finding =
        only(CHECK, HazardMaps.with(HazardMaps.demo(), "MAINS_L_IN", Potential.Nature.DC, 24));
    assertThat(subjects(finding)).containsExactly("J1.L", "net:MAINS_L_IN");
    assertThat(finding.message())
        .isEqualTo("J1.L on MAINS_L_IN brings the mains in, but its net is declared to be DC");
  }

  @Test
  void isQuiet_whereBothAgree() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
