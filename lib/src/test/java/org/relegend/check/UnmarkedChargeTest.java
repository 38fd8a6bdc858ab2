package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.ZoneId;

class UnmarkedChargeTest {
  private static final Check CHECK = new UnmarkedCharge();

  @Test
  void fires_forReservoirsOutsideOfAnyZone() {
    BoardMap map = HazardMaps.demo();
    Finding finding =
        only(CHECK, map.with(MapTables.ZONES, map.zones().without(new ZoneId("charge-solder"))));
    assertThat(subjects(finding)).containsExactly("C2", "C3");
    assertThat(finding.picture()).contains(HazardMaps.SOLDER);
  }

  @Test
  void isQuiet_whereAllIsInZones() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
