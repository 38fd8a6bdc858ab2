package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

class TwinKindDiffersTest {
  private static final Check CHECK = new TwinKindDiffers();

  private static TwinPair twins(String a, String b) {
    return new TwinPair(Subject.parse(a), Subject.parse(b), List.of(says(Evidence.MATCHED)));
  }

  private static BoardMap pair(String kindA, String kindB) {
    return with(blank(), twoPin("C101", kindA, ""), twoPin("C201", kindB, ""))
        .with(MapTables.TWINS, Table.of(List.of(twins("C101", "C201"), twins("C101.1", "C201.1"))));
  }

  @Test
  void fires_forTwinsOfTwoKinds() {
    Finding finding = only(CHECK, pair("cap-pol", "cap"));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message())
        .isEqualTo("The twins C101 and C201 differ in kind: C101 is a cap-pol, C201 is a cap");
    assertThat(only(CHECK, pair("gizmo", "gadget")).subjects()).hasSize(2);
  }

  @Test
  void fix_dropsThePair() throws EditRefusedException {
    BoardMap map = pair("cap-pol", "resistor");
    assertFixed(CHECK, map, only(CHECK, map));
  }

  @Test
  void isQuiet_forOneKindUnderTwoWordsOrUnknown() {
    assertQuiet(CHECK, pair("cap-pol", "electrolytic"));
    assertQuiet(CHECK, pair("gizmo", "Gizmo"));
    assertQuiet(CHECK, pair("cap", ""));
  }
}
