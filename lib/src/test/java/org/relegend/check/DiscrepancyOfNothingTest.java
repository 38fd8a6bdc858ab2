package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.Table;

class DiscrepancyOfNothingTest {
  private static final Check CHECK = new DiscrepancyOfNothing();

  private static DrawingDiscrepancy drawn(
      String subject, DrawingDiscrepancy.Aspect aspect, String drawn) {
    return new DrawingDiscrepancy(
        Subject.parse(subject), aspect, drawn, List.of(says(Evidence.MEASURED)), "");
  }

  @Test
  void fires_forAPinThatIsGone() throws EditRefusedException {
    BoardMap map =
        divider()
            .with(
                MapTables.DISCREPANCIES,
                Table.of(List.of(drawn("R9.1", DrawingDiscrepancy.Aspect.NET, "VP"))));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).contains("drawn net of R9.1");
    assertFixed(CHECK, map, finding);
  }

  @Test
  void isQuiet_forAPinOfTheMap() {
    assertQuiet(
        CHECK,
        divider()
            .with(
                MapTables.DISCREPANCIES,
                Table.of(List.of(drawn("R1.1", DrawingDiscrepancy.Aspect.NET, "0V")))));
  }
}
