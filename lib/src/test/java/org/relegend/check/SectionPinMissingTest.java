package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Section;

class SectionPinMissingTest {
  private static final Check CHECK = new SectionPinMissing();

  /** A dual operational amplifier's element has out, -in and +in: standards, section 5. */
  @Test
  void fires_whereAnElementLacksAPin() {
    Part amp =
        part("U1", "dual-opamp", "", "1", "2")
            .withPins(
                List.of(new Pin("1", ""), new Pin("2", "")),
                List.of(new Section("X", Map.of("1", "out", "2", "-in"))));
    Finding finding = only(CHECK, with(blank(), amp));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).isEqualTo("Section X of U1 (dual-opamp) has no pin for: +in");
    assertThat(subjects(finding)).containsExactly("U1/X");
  }

  @Test
  void fires_whereAnElementNamesAPinThatIsNotThere() {
    Part gizmo =
        part("U1", "gizmo", "", "1")
            .withPins(List.of(new Pin("1", "")), List.of(new Section("X", Map.of("7", "out"))));
    Finding finding = only(CHECK, with(blank(), gizmo));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message()).contains("names pin 7, which U1 doesn't have");
  }

  @Test
  void isQuiet_whereTheElementIsWhole() {
    Part amp =
        part("U1", "dual-opamp", "", "1", "2", "3")
            .withPins(
                List.of(new Pin("1", ""), new Pin("2", ""), new Pin("3", "")),
                List.of(new Section("X", Map.of("1", "out", "2", "-in", "3", "+in"))));
    assertQuiet(CHECK, with(divider(), amp));
  }
}
