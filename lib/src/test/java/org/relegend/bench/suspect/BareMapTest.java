package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.bench.Boards;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Potential;
import org.relegend.map.Table;

/** Maps that say less: no voltages, no twins, no channels of nets, as tables bring them. */
class BareMapTest {
  private static BoardMap bare() {
    BoardMap map = DemoUnit.circuit().map();
    List<Net> nets =
        map.nets().stream()
            .map(net -> net.withPotential(Potential.UNKNOWN).withChannel(""))
            .toList();
    return map.with(MapTables.NETS, Table.of(nets)).with(MapTables.TWINS, Table.empty());
  }

  /** The same readings of both channels, on a map that only knows parts and nets. */
  @Test
  void theTwinAlone_leadsToTheFault() {
    Job job = JobSamples.blank();
    String[][] readings = {
      {"B1", "2.51", "2.51"}, {"C1", "9.01", "9.44"}, {"ATT", "5.34", "-0.0047"},
      {"VB1", "0.101", "-0.0047"}, {"VC1", "10.27", "12.58"}, {"VC2", "15.08", "12.56"}
    };
    for (String[] row : readings) {
      job = DemoUnit.read(job, "A_" + row[0], Double.parseDouble(row[1]));
      job = DemoUnit.read(job, "B_" + row[0], Double.parseDouble(row[2]));
    }
    UnitReadings unit = UnitReadings.of(job, Circuit.of(bare()));
    assertThat(unit.isReference(new NetId("0V"))).isTrue();
    assertThat(unit.isRail(new NetId("VP"))).isTrue();
    assertThat(unit.channel(new NetId("A_ATT"))).isEqualTo("A");
    assertThat(unit.twins().net(new NetId("A_ATT"))).contains(new NetId("B_ATT"));
    assertThat(unit.twins().part(new PartId("C102"))).contains(new PartId("C202"));
    assertThat(Suspects.of(unit).suspects().get(0).part()).isEqualTo(new PartId("C102"));
  }

  /** On a board without channels a node with a voltage is no rail for that alone. */
  @Test
  void oneChannel_hasNodesThatAreNoRails() {
    UnitReadings unit =
        new Boards()
            .parts(
                "J1 jack input T=IN",
                "C1 cap 1u 1=IN 2=B",
                "R1 resistor 220k 1=VP 2=B",
                "R2 resistor 47k 1=B 2=0V",
                "U1 opamp TL071 3=B 2=OUT 6=OUT 7=VP 4=0V",
                "J2 jack output T=OUT")
            .nominal("VP", 15)
            .nominal("B", 2.6)
            .nominal("OUT", 2.6)
            .read("B", 15)
            .read("OUT", 14.2)
            .unit();
    assertThat(unit.isRail(new NetId("VP"))).isTrue();
    assertThat(unit.isRail(new NetId("B"))).isFalse();
    assertThat(Suspects.of(unit).suspects().get(0).part()).isEqualTo(new PartId("R2"));
  }

  /** Nothing read, nothing known: still an answer. */
  @Test
  void anEmptyMap_andAnEmptyJob_giveNoSuspects() {
    Suspects none = Suspects.of(new Boards().unit());
    assertThat(none.suspects()).isEmpty();
    assertThat(none.findings()).isEmpty();
    assertThat(none.next()).isEmpty();
    Suspects unread = Suspects.of(DemoUnit.unit(JobSamples.blank()));
    assertThat(unread.suspects()).hasSize(102);
    assertThat(unread.next()).isPresent();
  }
}
