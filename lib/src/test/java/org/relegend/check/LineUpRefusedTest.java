package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.lineup.LinedUpMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Side;

class LineUpRefusedTest {
  private static final Check CHECK = new LineUpRefused();

  private static BoardMap linedUp(int pairs) {
    return new LinedUpMaps(1)
        .photo("solder", Side.SOLDER)
        .pairs("component", "solder", pairs, 1)
        .map();
  }

  @Test
  void fires_forPairsThatAreTooFew() throws EditRefusedException {
    Finding finding = only(CHECK, linedUp(3));
    assertThat(finding.message())
        .isEqualTo(
            "Component side and solder can't be lined up: A perspective fit needs at least 4 pairs;"
                + " there are 3. Add 1 more.");
    assertFixed(CHECK, linedUp(3), finding);
  }

  @Test
  void isQuiet_whereThePairsAgree() {
    assertQuiet(CHECK, linedUp(6));
  }
}
