package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.HazardMaps;
import org.relegend.hazard.SupplySketch;
import org.relegend.map.BoardMap;

class LooksLikeMainsTest {
  private static final Check CHECK = new LooksLikeMains();

  @Test
  void fires_forAConnectorCalledMains() {
    BoardMap map = SupplySketch.of("J1 connector IEC_inlet_230V 1=:A 2=:B").map();
    Finding finding = only(CHECK, map);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(subjects(finding)).containsExactly("J1", "net:A", "net:B");
  }

  @Test
  void isQuiet_whereAllIsTold() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
