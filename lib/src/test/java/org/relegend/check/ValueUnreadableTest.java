package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class ValueUnreadableTest {
  private static final Check CHECK = new ValueUnreadable();

  @ParameterizedTest
  @ValueSource(strings = {"4k7k7", "1e400k", "4..7k"})
  void fires_forAValueThatIsNone(String value) {
    Finding finding = only(CHECK, with(blank(), twoPin("R1", "resistor", value)));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).startsWith("R1: ").contains(value);
    assertThat(subjects(finding)).containsExactly("R1");
  }

  @Test
  void isQuiet_forValuesDescriptionsAndNothing() {
    assertQuiet(
        CHECK,
        with(
            divider(),
            twoPin("R3", "resistor", ""),
            twoPin("C1", "cap", "104K"),
            twoPin("C2", "cap", "47p polystyrene"),
            twoPin("Q1", "npn", "BC54XX"),
            twoPin("F1", "fuse", "T100mA 250 V"),
            twoPin("F2", "fuse", "1 1/2A"),
            twoPin("C3", "cap-multi", "40u+40u+20u 450V"),
            twoPin("RV1", "pot", "50KA"),
            twoPin("R4", "resistor", "01C"),
            twoPin("X1", "gizmo", "two of a sort")));
  }
}
