package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;

class PinNotInPackageTest {
  private static final Check CHECK = new PinNotInPackage();

  @Test
  void fires_forANumberBeyondThePackage() {
    Part circuit = part("U1", "ic", "", "1", "8", "9", "0").withCasing("dip-8");
    Finding finding = only(CHECK, with(blank(), circuit));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message()).isEqualTo("U1 can have no pin 9, 0: a dip-8 has pins 1 to 8");
    assertThat(subjects(finding)).containsExactly("U1.9", "U1.0");
  }

  @Test
  void fires_forANumberThatNoPinoutOfTheKindHas() {
    Finding finding = only(CHECK, with(blank(), part("R1", "resistor", "1k", "1", "3")));
    assertThat(finding.message()).isEqualTo("R1 can have no pin 3: a resistor has pins 1 2");
    assertThat(subjects(finding)).containsExactly("R1.3");
  }

  @Test
  void isQuiet_forUsualPinsUnknownKindsAndOpenOnes() {
    assertQuiet(
        CHECK,
        with(
            divider(),
            part("C1", "cap-pol", "", "+", "-"),
            part("C2", "cap-pol", "", "1", "2"),
            part("U1", "ic", "", "39"),
            part("X1", "gizmo", "", "a", "b"),
            part("J1", "connector", "", "1", "50"),
            part("Q1", "npn", "")));
  }
}
