package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.hazard.HazardMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Potential;

class VoltageBetweenTest {
  private static final Check CHECK = new VoltageBetween();

  /** The rails of an amplifier: 45 V each is below the 60 V of IEC 61010-1, 90 V isn't. */
  @Test
  void fires_forRailsOf45Volts() {
    BoardMap map =
        BoardMapSamples.with(
            BoardMapSamples.blank(),
            BoardMapSamples.net("VP", "R1.1"),
            BoardMapSamples.net("VN", "R1.2"));
    map = HazardMaps.with(map, "VP", Potential.Nature.DC, 45);
    Finding finding = only(CHECK, HazardMaps.with(map, "VN", Potential.Nature.DC, -45));
    assertThat(finding.message()).contains("90.0 V");
    assertThat(subjects(finding)).containsExactly("net:VP", "net:VN");
  }

  @Test
  void isQuiet_whereAllIsTold() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
