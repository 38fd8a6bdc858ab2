package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

class ChannelPartWithoutTwinTest {
  private static final Check CHECK = new ChannelPartWithoutTwin();

  private static TwinPair twins(String a, String b) {
    return new TwinPair(Subject.parse(a), Subject.parse(b), List.of(says(Evidence.MATCHED)));
  }

  private static BoardMap twoChannels() {
    return with(
        blank(),
        twoPin("R101", "resistor", "1k").withChannel("A"),
        twoPin("R201", "resistor", "1k").withChannel("B"),
        twoPin("R225", "resistor", "47k").withChannel("B"),
        twoPin("R9", "resistor", "1k"));
  }

  @Test
  void fires_forTheOneThatOnlyOneChannelHas() {
    BoardMap map = twoChannels().with(MapTables.TWINS, Table.of(List.of(twins("R101", "R201"))));
    Finding finding = only(CHECK, map);
    assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
    assertThat(finding.message()).isEqualTo("Channel B: 1 part has no twin: R225");
    assertThat(subjects(finding)).containsExactly("R225");
  }

  @Test
  void isQuiet_beforeAnyTwinIsDeclared() {
    assertQuiet(CHECK, twoChannels());
    assertQuiet(CHECK, divider());
  }
}
