package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.Table;

class DrawnOtherwiseTest {
  private static final Check CHECK = new DrawnOtherwise();

  private static DrawingDiscrepancy drawn(
      String subject, DrawingDiscrepancy.Aspect aspect, String drawn) {
    return new DrawingDiscrepancy(
        Subject.parse(subject), aspect, drawn, List.of(says(Evidence.MEASURED)), "");
  }

  @Test
  void fires_onceForEachPart() {
    BoardMap map =
        divider()
            .with(
                MapTables.DISCREPANCIES,
                Table.of(
                    List.of(
                        drawn("R1.1", DrawingDiscrepancy.Aspect.NET, "0V"),
                        drawn("R1.2", DrawingDiscrepancy.Aspect.NET, ""),
                        drawn("R2", DrawingDiscrepancy.Aspect.VALUE, "12k"),
                        drawn("R2", DrawingDiscrepancy.Aspect.KIND, ""))));
    map = with(map, net("0V", "R2.2").withName("GROUND"));
    List<Finding> findings = inspect(CHECK, map);
    assertThat(findings).extracting(Finding::severity).containsOnly(Severity.INFORMATION);
    assertThat(findings)
        .extracting(Finding::message)
        .containsExactly(
            "The drawing differs from the board at R1: pin 1 is drawn on GROUND and built on VP;"
                + " pin 2 is drawn on nothing and built on MID",
            "The drawing differs from the board at R2: its value is drawn as 12k; its kind is drawn"
                + " as nothing");
    assertThat(subjects(findings.get(1))).containsExactly("R2");
  }

  @Test
  void isQuiet_whereDrawingAndBoardAgreeOrThePartIsGone() {
    assertQuiet(CHECK, divider());
    assertQuiet(
        CHECK,
        divider()
            .with(
                MapTables.DISCREPANCIES,
                Table.of(List.of(drawn("R9.1", DrawingDiscrepancy.Aspect.NET, "VP")))));
  }
}
