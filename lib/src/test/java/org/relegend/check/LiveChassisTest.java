package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.HazardMaps;

class LiveChassisTest {
  private static final Check CHECK = new LiveChassis();

  @Test
  void fires_whereMainsReachesTheReference() {
    Finding finding =
        only(
            CHECK,
            HazardMaps.joined(HazardMaps.demo(), "R9", "resistor", "1M", "MAINS_N_IN", "0V"));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(subjects(finding)).containsExactly("net:0V", "R9");
    assertThat(finding.message()).contains("Mains reaches 0V").contains("through R9");
  }

  @Test
  void isQuiet_behindATransformer() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
