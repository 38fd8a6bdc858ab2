package org.relegend.viewer.mode.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.net;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.check.CheckContext;
import org.relegend.check.Checks;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Potential;
import org.relegend.viewer.session.SessionBench;

class FindingFixTest {
  private static BoardMap carrying(
      BoardMap map, String net, Potential.Nature nature, double volts) {
    Net found = map.net(new NetId(net)).orElseThrow();
    return map.with(
        MapTables.NETS, map.nets().with(found.withPotential(new Potential(nature, volts))));
  }

  /** Mains and high voltage on one photo: each finding gets the zone it asks for. */
  @Test
  void unmarkedDangerOfEachKind_getsAZoneOfThatKind() {
    BoardMap map = BoardMapSamples.with(SessionBench.twoChannels(), net("LIVE", "R225.1"));
    map = carrying(map, "LIVE", Potential.Nature.MAINS, 230);
    map = carrying(map, "B_ATT", Potential.Nature.DC, 300);
    map = SessionBench.placed(map, TOP, "R225.1", 1000, 1000);
    map = SessionBench.placed(map, TOP, "C202.-", 3000, 1000);
    List<Finding> unmarked =
        Checks.inspect(CheckContext.of(map, picture -> Optional.empty())).stream()
            .filter(finding -> finding.code().equals("unmarked-danger"))
            .toList();
    assertThat(unmarked).hasSize(2);
    for (Finding finding : unmarked) {
      SessionBench bench = new SessionBench(map);
      bench.session.room(FindingFix.class).mend(finding);
      HazardZone.Kind expected =
          finding.message().contains("high voltage")
              ? HazardZone.Kind.HIGH_VOLTAGE
              : HazardZone.Kind.MAINS;
      assertThat(bench.session.map().zones())
          .as(finding.message())
          .extracting(HazardZone::kind)
          .containsExactly(expected);
    }
  }
}
