package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.NOON;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.circuit.Circuit;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.NodeHazard;
import org.relegend.hazard.SupplySketch;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.NetId;
import org.relegend.map.Potential;

/** Tables of nets: volts, nature, reference and channel. */
class NetRowsTest {
  /**
   * A 350 V winding of a valve amplifier, its rectifier and reservoir; the map tells of no volts.
   */
  private static final BoardMap MAP =
      SupplySketch.of(
              """
              J1 mains-terminal - L=:L N=:N
              T1 transformer - 1=primary:L 2=primary:N 3=secondary:SEC 4=secondary:GND
              D1 diode - A=:SEC K=:HT
              C1 cap-pol 47u_450V +=:HT -=:GND
              R1 resistor 10k 1=:HT 2=:AN
              net L mains 230
              """)
          .map();

  private static ImportPlan plan(BoardMap map, String table, boolean replace)
      throws TableException {
    TableSource source =
        new TableSource("nets.csv", table.replace('/', '\n').getBytes(StandardCharsets.UTF_8));
    return TableImport.plan(
        map, Map.of(TableSort.NETS, source), new ImportOptions("K", NOON, replace));
  }

  private static BoardMap taken(BoardMap map, String table, boolean replace)
      throws TableException, EditRefusedException {
    return plan(map, table, replace).edit().applyTo(map);
  }

  private static Potential potential(BoardMap map, String net) {
    return map.net(new NetId(net)).orElseThrow().potential();
  }

  @Test
  void voltsReferenceAndChannel_areTaken_andTheHazardsKnow()
      throws TableException, EditRefusedException {
    NodeHazard before = Hazards.of(Circuit.of(MAP), VoltageLimits.INSTRUMENTS).at(new NetId("HT"));
    assertThat(before.grade()).isEqualTo(NodeHazard.Grade.UNKNOWN);
    BoardMap map =
        taken(
            MAP,
            "net,volts,nature,reference,channel,note/HT,450,dc,GND,,after warm-up/GND,,reference,,,"
                + "/SEC,350 V AC,,GND,,/AN,0.25k,dc,,A,",
            false);
    assertThat(potential(map, "HT")).isEqualTo(new Potential(Potential.Nature.DC, 450));
    assertThat(potential(map, "GND").nature()).isEqualTo(Potential.Nature.REFERENCE);
    assertThat(potential(map, "SEC")).isEqualTo(new Potential(Potential.Nature.AC, 350));
    assertThat(potential(map, "AN")).isEqualTo(new Potential(Potential.Nature.DC, 250));
    assertThat(map.net(new NetId("AN")).orElseThrow().channel()).isEqualTo("A");
    assertThat(map.channels().has("A")).isTrue();
    assertThat(map.net(new NetId("HT")).orElseThrow().note()).isEqualTo("after warm-up");
    assertThat(Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS).at(new NetId("HT")).grade())
        .isEqualTo(NodeHazard.Grade.CARRIES);
    assertThat(map.net(new NetId("HT")).orElseThrow().pins())
        .isEqualTo(MAP.net(new NetId("HT")).orElseThrow().pins());
  }

  @Test
  void theSameAgain_changesNothing() throws TableException, EditRefusedException {
    String table = "net,volts,nature,channel/HT,450,dc,A/L,230,mains,";
    BoardMap once = taken(MAP, table, false);
    assertThat(plan(once, table, false).edit().steps()).isEmpty();
    assertThat(plan(once, table, false).summary().toString()).isEqualTo("nothing new");
  }

  /** Column, and what the message must hold. Nothing is taken of a table with a fault. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "net,volts,nature/NOWHERE,5,dc | net: | neither in the map nor in the table of pins",
        "net,volts,nature/,5,dc | net: | name of a net",
        "net,volts/HT,450 | nature: | write dc, ac or mains",
        "net,volts,nature/HT,450,direct | nature: | direct",
        "net,volts,nature/HT,much,dc | volts: | is no reading",
        "net,volts,nature/HT,4k7 ohm,dc | volts: | where voltage",
        "net,volts,nature/HT,6.3 V AC,dc | volts: | alternating volts on a net that is dc",
        "net,volts,nature/SEC,-350,ac | volts: | without a sign",
        "net,volts,nature/GND,5,reference | volts: | no volts of its own",
        "net,volts,nature/HT,2000000,dc | volts: | can't be",
        "net,volts,nature/HT,450,dc/HT,300,dc | net: | stands in line 2 already",
        "net,volts,nature,reference/HT,450,dc,SEC | reference: | not the reference",
        "net,volts,nature,reference/HT,450,dc,CHASSIS | reference: | neither in the map",
        "net,volts,nature/L,12,dc | volts: | mains 230 V",
        "volts,nature/450,dc | : | net",
      })
  void whatCannotBe_isToldWithLineAndColumn(String table, String where, String message) {
    assertThatThrownBy(() -> plan(MAP, table, false))
        .isInstanceOf(TableException.class)
        .hasMessageContaining(where)
        .hasMessageContaining(message);
  }

  @Test
  void replacing_theTableWins_andMainsThatIsNoneAnyMoreIsTold()
      throws TableException, EditRefusedException {
    ImportPlan plan = plan(MAP, "net,volts,nature/L,12,dc", true);
    assertThat(potential(plan.edit().applyTo(MAP), "L"))
        .isEqualTo(new Potential(Potential.Nature.DC, 12));
    assertThat(plan.warnings()).singleElement().asString().contains("L was mains", "look twice");
  }
}
