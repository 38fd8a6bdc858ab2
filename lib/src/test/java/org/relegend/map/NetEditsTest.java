package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;

class NetEditsTest {
  private static final NetId MID = new NetId("MID");
  private static final NetId VP = new NetId("VP");

  @Test
  void mergeNets_joinsPinsAndCarriesLabelsAndDiscrepanciesOver() throws EditRefusedException {
    BoardMap map = divider();
    Placement label =
        new Placement(BoardMapSamples.PAGE, Subject.of(VP), new Point(1, 2), says(Evidence.SEEN));
    Placement own =
        new Placement(BoardMapSamples.PAGE, Subject.of(MID), new Point(3, 4), says(Evidence.SEEN));
    map = MapTables.PLACEMENTS.put(label).applyTo(MapTables.PLACEMENTS.put(own).applyTo(map));
    DrawingDiscrepancy drawn =
        new DrawingDiscrepancy(
            Subject.of(PinRef.parse("R2.2")),
            DrawingDiscrepancy.Aspect.NET,
            "VP",
            List.of(says(Evidence.MEASURED)),
            "");
    map = MapTables.DISCREPANCIES.put(drawn).applyTo(map);

    BoardMap merged = new NetEdits.MergeNets(MID, VP).applyTo(map);

    assertThat(merged.net(VP)).isEmpty();
    assertThat(merged.net(MID).orElseThrow().pins())
        .map(PinRef::toString)
        .containsExactly("R1.1", "R1.2", "R2.1");
    assertThat(merged.placements())
        .map(Placement::at)
        .containsExactlyInAnyOrder(new Point(1, 2), new Point(3, 4));
    assertThat(merged.discrepancies().find(drawn.key()).orElseThrow().drawn()).isEqualTo("MID");
  }

  @Test
  void mergeNets_whereOneSideKnowsMore_keepsIt() throws EditRefusedException {
    Potential mains = new Potential(Potential.Nature.MAINS, 230);
    Net known =
        BoardMapSamples.net("VP", "R1.1").withPotential(mains).withChannel("A").withNote("live");
    BoardMap map = BoardMapSamples.with(divider(), known);

    Net merged = new NetEdits.MergeNets(MID, VP).applyTo(map).net(MID).orElseThrow();

    assertThat(merged.potential()).isEqualTo(mains);
    assertThat(merged.channel()).isEqualTo("A");
    assertThat(merged.note()).isEqualTo("live");
  }

  @Test
  void movePin_takesItOffTheOldNet() throws EditRefusedException {
    PinRef pin = PinRef.parse("R1.1");
    BoardMap moved = new NetEdits.MovePin(pin, MID, says(Evidence.BEEPED)).applyTo(divider());
    assertThat(new MapIndex(moved).netsOf(pin)).map(Net::id).containsExactly(MID);
  }

  @Test
  void joinPins_again_addsTheEvidence() throws EditRefusedException {
    Net.Member again = new Net.Member(PinRef.parse("R1.2"), List.of(says(Evidence.MEASURED)));
    BoardMap joined = new NetEdits.JoinPins(MID, List.of(again)).applyTo(divider());
    assertThat(joined.net(MID).orElseThrow().member(again.pin()).orElseThrow().evidence())
        .map(Attestation::evidence)
        .containsExactlyInAnyOrder(Evidence.INFERRED, Evidence.MEASURED);
  }

  @Test
  void removePart_leavesNothingThatSpeaksOfIt() throws EditRefusedException {
    BoardMap map = divider();
    TwinPair twins =
        new TwinPair(
            Subject.of(new PartId("R1")),
            Subject.of(new PartId("R2")),
            List.of(says(Evidence.MATCHED)));
    Placement body =
        new Placement(
            BoardMapSamples.TOP,
            Subject.of(new PartId("R1")),
            new Point(5, 5),
            says(Evidence.SEEN));
    map = MapTables.TWINS.put(twins).applyTo(MapTables.PLACEMENTS.put(body).applyTo(map));

    BoardMap rest = MapTables.PARTS.remove(new PartId("R1")).applyTo(map);

    assertThat(rest.twins()).isEmpty();
    assertThat(rest.placements()).isEmpty();
    assertThat(rest.nets())
        .flatExtracting(Net::pins)
        .map(PinRef::toString)
        .containsExactlyInAnyOrder("R2.1", "R2.2");
  }
}
