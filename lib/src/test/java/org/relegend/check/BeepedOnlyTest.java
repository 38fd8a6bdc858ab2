package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Net;
import org.relegend.map.PinRef;

/** A beep may come through a part of few ohms (common practice; 10 to 40, some beepers 100). */
class BeepedOnlyTest {
  private static final Check CHECK = new BeepedOnly();

  /** R1 leads from A to B; C1.1 is on A, which somebody knows so. */
  private static BoardMap map(String kind, String value, Evidence evidence) {
    BoardMap parts =
        with(
            blank(),
            twoPin("R1", kind, value),
            twoPin("C1", "cap", "1u"),
            twoPin("R2", "resistor", "47k"));
    Net a =
        net("A", "R1.1", "R2.1")
            .withMembers(
                List.of(
                    new Net.Member(PinRef.parse("R1.1"), List.of(says(Evidence.SEEN))),
                    new Net.Member(PinRef.parse("C1.1"), List.of(says(evidence)))));
    return with(parts, a, net("B", "R1.2", "R2.2"));
  }

  @ParameterizedTest
  @CsvSource({"resistor, 10R", "resistor, 100R", "inductor, 10mH", "fuse, T100mA"})
  void fires_whereALowPartLeadsElsewhere(String kind, String value) {
    Finding finding = only(CHECK, map(kind, value, Evidence.BEEPED));
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).contains("A (C1.1; past R1)");
    assertThat(finding.remedy()).contains("half an ohm");
    assertThat(subjects(finding)).containsExactly("net:A");
  }

  @Test
  void isQuiet_whereMoreIsKnown_orNothingLowIsThere() {
    assertQuiet(CHECK, map("resistor", "10R", Evidence.MEASURED));
    assertQuiet(CHECK, map("resistor", "10R", Evidence.SEEN));
    assertQuiet(CHECK, map("resistor", "4k7", Evidence.BEEPED));
    assertQuiet(CHECK, map("cap", "100n", Evidence.BEEPED));
    assertQuiet(CHECK, map("resistor", "", Evidence.BEEPED));
  }
}
