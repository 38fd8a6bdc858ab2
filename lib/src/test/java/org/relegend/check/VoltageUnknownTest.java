package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.Potential;

class VoltageUnknownTest {
  private static final Check CHECK = new VoltageUnknown();

  @Test
  void fires_forANetThatCarriesSomeVoltage() {
    Finding finding = only(CHECK, HazardMaps.with(HazardMaps.demo(), "VP", Potential.Nature.DC, 0));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(subjects(finding)).containsExactly("net:VP");
  }

  @Test
  void isQuiet_whereVoltagesAreGivenOrNothingIsSaid() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
