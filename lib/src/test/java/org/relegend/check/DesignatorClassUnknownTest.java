package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class DesignatorClassUnknownTest {
  private static final Check CHECK = new DesignatorClassUnknown();

  @Test
  void fires_forLettersOfNoClass() {
    List<Finding> findings =
        inspect(
            CHECK,
            with(divider(), part("QZX7", "", ""), part("QZX8", "", ""), part("amplifier", "", "")));
    assertThat(findings).extracting(Finding::severity).containsOnly(Severity.INFORMATION);
    assertThat(findings)
        .extracting(Finding::message)
        .containsExactly(
            "amplifier: no designator of class letters and a number",
            "QZX7, QZX8: the letters QZX stand for no known class of part");
  }

  /** Class letters after IEEE 315 and its nesting of units, as the letters table cites them. */
  @Test
  void isQuiet_forKnownClasses() {
    assertQuiet(
        CHECK,
        with(
            divider(),
            part("RV1", "", ""),
            part("1A2R3", "", ""),
            part("U101", "", ""),
            part("R17A", "", "")));
  }
}
