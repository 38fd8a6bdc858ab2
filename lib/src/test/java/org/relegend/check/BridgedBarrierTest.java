package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
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

  /** By hand: 2 pi x 60 Hz x 4.7 nF x 230 V = 0.41 mA each, 0.82 mA together; limit 0.5 mA. */
  @Test
  void fires_asAnError_forTwoSmallOnesSideBySide() {
    BoardMap one = bridged("4n7");
    assertThat(only(CHECK, one).severity()).isEqualTo(Severity.WARNING);
    BoardMap two = HazardMaps.joined(one, "C10", "cap", "4n7", "MAINS_L_SW", "0V");
    assertThat(CheckCase.inspect(CHECK, two))
        .hasSize(2)
        .anyMatch(finding -> finding.severity() == Severity.ERROR);
  }

  @Test
  void isQuiet_forACapacitorBetweenTheLines() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
