package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.ZoneId;

class UnmarkedDangerTest {
  private static final Check CHECK = new UnmarkedDanger();

  @Test
  void fires_forMainsPinsOutsideOfAnyZone() {
    BoardMap map = HazardMaps.demo();
    Finding finding =
        only(CHECK, map.with(MapTables.ZONES, map.zones().without(new ZoneId("mains-top"))));
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.subjects()).hasSize(14);
    assertThat(finding.picture()).contains(BoardMapSamples.TOP);
    assertThat(finding.message()).startsWith("On Component side places lie outside of every mains");
  }

  @Test
  void isQuiet_whereAllIsInZones() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
