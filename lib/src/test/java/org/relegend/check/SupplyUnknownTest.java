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

class SupplyUnknownTest {
  private static final Check CHECK = new SupplyUnknown();

  private static BoardMap supply(String roleOfPin3) {
    return SupplySketch.of(
            """
            J1 mains-terminal - L=:L N=:N
            T1 transformer - 1=primary:L 2=primary:N 3=%s:A 4=secondary:B
            """
                .formatted(roleOfPin3))
        .map();
  }

  @Test
  void fires_forAWindingWithoutVolts() {
    Finding finding = only(CHECK, supply("secondary"));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(subjects(finding)).containsExactly("net:A", "net:B");
    assertThat(finding.message()).contains("T1");
  }

  @Test
  void remedy_namesTheLargestRatingThereAndNoOtherFigure() {
    BoardMap map =
        SupplySketch.of(
                """
                J1 mains-terminal - L=:L N=:N
                T1 transformer - 1=primary:L 2=primary:N 3=secondary:A 4=secondary:B
                C1 cap 10n_6kV 1=:A 2=:B
                """)
            .map();
    assertThat(only(CHECK, map).remedy()).contains("at least the 6 kV").contains("rated above it");
    assertThat(only(CHECK, supply("secondary")).remedy()).doesNotContainPattern("\\d");
  }

  @Test
  void isQuiet_whereAllIsTold() {
    assertQuiet(CHECK, HazardMaps.demo());
  }
}
