package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;

import org.junit.jupiter.api.Test;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.BoardMap;

class BridgedBarrierTest {
  private static final Check CHECK = new BridgedBarrier();

  private static BoardMap bridged(String value) {
    return HazardMaps.joined(HazardMaps.demo(), "C9", "cap", value, "MAINS_L_SW", "0V");
  }

  @Test
  void fires_forASmallCapacitorAcrossTheTransformer() {
    Finding finding = only(CHECK, bridged("2n2"));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message())
        .isEqualTo("C9 bridges the isolation from the mains and passes up to 0.19 mA");
  }

  @Test
  void fires_asAnError_forALargeOne() {
    assertThat(only(CHECK, bridged("47n")).severity()).isEqualTo(Severity.ERROR);
    assertThat(only(CHECK, bridged("")).message()).endsWith("its value isn't known");
  }

  @Test
  void isQuiet_forACapacitorBetweenTheLines() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
