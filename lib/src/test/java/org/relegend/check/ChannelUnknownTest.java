package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapTables;
import org.relegend.map.Table;

class ChannelUnknownTest {
  private static final Check CHECK = new ChannelUnknown();

  @Test
  void fires_forAChannelThatIsNotListed() throws EditRefusedException {
    BoardMap map =
        with(
            with(blank(), twoPin("R1", "resistor", "1k").withChannel("A")),
            net("VP", "R1.1").withChannel("A"));
    Finding finding = only(CHECK, map);
    assertThat(finding.message())
        .isEqualTo("The map doesn't list channel A, but has in it: R1, VP");
    assertFixed(CHECK, map, finding);
  }

  @Test
  void fires_evenWhereTheNameCanBeNoChannel() {
    BoardMap map = with(blank(), twoPin("R1", "resistor", "1k").withChannel("a\"b"));
    assertThat(only(CHECK, map).fix()).isEmpty();
  }

  @Test
  void isQuiet_whereTheChannelIsListedOrNoneIsNamed() {
    BoardMap map =
        with(blank(), twoPin("R1", "resistor", "1k").withChannel("A"), twoPin("R2", "", ""));
    assertQuiet(
        CHECK, map.with(MapTables.CHANNELS, Table.of(List.of(new Channel("A", "Left", "")))));
  }
}
