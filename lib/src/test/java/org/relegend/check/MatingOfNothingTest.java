package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.PartId;
import org.relegend.map.Table;

class MatingOfNothingTest {
  private static final Check CHECK = new MatingOfNothing();

  private static BoardMap plugged(String a, String b) {
    return divider()
        .with(MapTables.MATINGS, Table.of(List.of(new Mating(new PartId(a), new PartId(b)))));
  }

  @Test
  void fires_forAConnectorThatIsGone() throws EditRefusedException {
    Finding finding = only(CHECK, plugged("R1", "P9"));
    assertThat(finding.message()).endsWith("plugged together, but the map doesn't have P9");
    assertFixed(CHECK, plugged("R1", "P9"), finding);
  }

  @Test
  void isQuiet_whereBothAreThere() {
    assertQuiet(CHECK, plugged("R1", "R2"));
  }
}
