package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.Potential;
import org.relegend.map.Table;

class MainsReachTest {
  /** L and N at a transformer, and its secondary at 0V and AC. */
  static BoardMap supply() {
    Part transformer =
        part("T1", "transformer", "")
            .withPins(
                List.of(
                    new Pin("1", "pri"),
                    new Pin("2", "pri"),
                    new Pin("3", "sec"),
                    new Pin("4", "sec")),
                List.of());
    BoardMap parts =
        with(BoardMapSamples.blank(), part("J1", "mains-terminal", "", "L", "N", "E"), transformer);
    BoardMap map =
        with(
            parts,
            net("L", "J1.L", "T1.1"),
            net("N", "J1.N", "T1.2"),
            net("PE", "J1.E"),
            net("0V", "T1.3"),
            net("AC", "T1.4"));
    return HazardMaps.with(map, "0V", Potential.Nature.REFERENCE, 0);
  }

  private static MainsReach reach(BoardMap map) {
    return MainsReach.of(Circuit.of(map));
  }

  private static Set<String> nets(MainsReach reach) {
    Set<String> nets = new TreeSet<>();
    reach.nodes().forEach(node -> nets.add(node.subject().toString().replace("net:", "")));
    return nets;
  }

  private static Net join(BoardMap map, String name, String pin) {
    Net net = map.net(new NetId(name)).orElseThrow();
    return net.withMember(net(name, pin).members().get(0));
  }

  @Test
  void transformer_isolates() {
    MainsReach reach = reach(supply());
    assertThat(nets(reach)).containsExactly("L", "N");
    assertThat(reach.barriers()).hasSize(1);
    assertThat(reach.barriers().get(0).failure()).isEmpty();
  }

  @Test
  void windingsThatNobodyTold_areTakenAsJoined() {
    BoardMap map = supply();
    map =
        map.with(
            MapTables.PARTS, map.parts().with(part("T1", "transformer", "", "1", "2", "3", "4")));
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("0V", "AC", "L", "N");
    assertThat(reach.assumed()).containsExactly(new PartId("T1"));
    assertThat(reach.chassis()).map(Object::toString).containsExactly("0V");
  }

  @Test
  void resistorAcrossTheBarrier_makesTheChassisLive() {
    MainsReach reach = reach(HazardMaps.joined(supply(), "R9", "resistor", "1M", "L", "0V"));
    assertThat(nets(reach)).containsExactly("0V", "AC", "L", "N");
    assertThat(reach.chassis()).map(Object::toString).containsExactly("0V");
    assertThat(reach.barriers().get(0).failure()).contains(MainsReach.Barrier.Failure.BYPASSED);
    assertThat(reach.barriers().get(0).way()).containsExactly(new PartId("R9"));
  }

  /** 2 pi x 60 Hz x 2.2 nF x 230 V = 0.19 mA is below 0.5 mA; 47 nF passes 4.1 mA. */
  @Test
  void capacitorAcrossTheBarrier_bridgesIt_andALargeOneIsWalked() {
    MainsReach small = reach(HazardMaps.joined(supply(), "C9", "cap", "2n2", "L", "0V"));
    assertThat(nets(small)).containsExactly("L", "N");
    assertThat(small.bridges()).hasSize(1);
    assertThat(small.bridges().get(0).walked()).isFalse();
    assertThat(small.bridges().get(0).amps().orElseThrow() * 1e3).isCloseTo(0.1908, within(1e-3));
    MainsReach large = reach(HazardMaps.joined(supply(), "C9", "cap", "47n", "L", "0V"));
    assertThat(nets(large)).contains("0V");
    assertThat(large.bridges().get(0).walked()).isTrue();
    MainsReach unknown = reach(HazardMaps.joined(supply(), "C9", "cap", "", "L", "0V"));
    assertThat(nets(unknown)).contains("0V");
    assertThat(unknown.bridges().get(0).amps()).isEmpty();
  }

  /** A series dropper: nothing isolates what lies behind it, however small it is. */
  @Test
  void capacitorThatLeadsToNoBarrier_isWalked() {
    BoardMap map = with(supply(), twoPin("C9", "cap", "2n2"));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "L", "C9.1")));
    map = with(map, net("DROP", "C9.2"));
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("DROP", "L", "N");
    assertThat(reach.bridges()).isEmpty();
  }

  @Test
  void protectiveEarth_isNamedAndNotWalkedThrough() {
    BoardMap map = HazardMaps.joined(supply(), "R9", "resistor", "1M", "L", "PE");
    map = with(map, twoPin("R10", "resistor", "10R"));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "PE", "R10.1")));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "0V", "R10.2")));
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("L", "N");
    assertThat(reach.earthed()).map(step -> step.in().part().text()).containsExactly("R9");
  }

  @Test
  void bothSidesOnOneNet_isolateNothing() {
    BoardMap map = supply();
    map = map.with(MapTables.NETS, map.nets().without(new NetId("0V")));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "N", "T1.3")));
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("AC", "L", "N");
    assertThat(reach.barriers().get(0).failure()).contains(MainsReach.Barrier.Failure.SHORTED);
  }

  @Test
  void contradictingDeclaration_isToldAndTakenAsMains() {
    BoardMap map = HazardMaps.with(supply(), "N", Potential.Nature.EARTH, 0);
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("L", "N");
    assertThat(reach.contradictions()).hasSize(1);
    assertThat(reach.contradictions().get(0).message()).contains("protective earth");
    MainsReach dc = reach(HazardMaps.with(supply(), "L", Potential.Nature.DC, 5));
    assertThat(dc.contradictions()).hasSize(1);
    assertThat(nets(dc)).containsExactly("L", "N");
  }

  @Test
  void unknownKind_joinsAllItsPins_andALoosePinIsReached() {
    BoardMap map = with(supply(), part("X9", "", "", "1", "2", "3"));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "L", "X9.1")));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "AC", "X9.2")));
    MainsReach reach = reach(map);
    assertThat(nets(reach)).containsExactly("0V", "AC", "L", "N", "X9.3");
    assertThat(reach.assumed()).containsExactly(new PartId("X9"));
  }

  @Test
  void pluggedConnectors_areWalked() {
    BoardMap map =
        with(supply(), part("P1", "connector", "", "1"), part("P2", "connector", "", "1"));
    map = map.with(MapTables.NETS, map.nets().with(join(map, "L", "P1.1")));
    map =
        with(map, net("FAR", "P2.1"))
            .with(
                MapTables.MATINGS,
                Table.of(List.of(new Mating(new PartId("P1"), new PartId("P2")))));
    assertThat(nets(reach(map))).containsExactly("FAR", "L", "N");
  }

  @Test
  void emptyMap_knowsOfNoMains_andSaysNoMore() {
    Hazards hazards = Hazards.of(Circuit.of(BoardMapSamples.blank()), VoltageLimits.INSTRUMENTS);
    assertThat(hazards.knowsMains()).isFalse();
    assertThat(hazards.reached()).isEmpty();
    assertThat(hazards.charges()).isEmpty();
  }
}
