package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.NetId;
import org.relegend.map.Potential;
import org.relegend.viewer.work.TaskRunner;

/** Which maps bring the cautions as they are opened. */
class FirstCautionTest {
  private static boolean called(BoardMap map) throws Exception {
    CompletableFuture<Boolean> called = new CompletableFuture<>();
    try (TaskRunner jobs = new TaskRunner("test", 1, Runnable::run)) {
      FirstCaution.run(jobs, map, called::complete);
      return called.get(20, TimeUnit.SECONDS);
    }
  }

  private static BoardMap carrying(Potential potential) {
    BoardMap map = BoardMapSamples.divider();
    return map.with(
        MapTables.NETS,
        map.nets().with(map.net(new NetId("VP")).orElseThrow().withPotential(potential)));
  }

  @Test
  void anInletOnNoDeclaredNet_callsForThem() throws Exception {
    BoardMap inlet =
        BoardMapSamples.with(
            BoardMapSamples.divider(), part("J1", "mains-inlet", "", "L", "N", "PE"));
    inlet = BoardMapSamples.with(inlet, net("IN", "J1.L"));
    assertThat(called(inlet)).isTrue();
  }

  @Test
  void declaredMains_andHighVoltage_callForThem_aFewVoltsDoNot() throws Exception {
    assertThat(called(carrying(new Potential(Potential.Nature.MAINS, 230)))).isTrue();
    assertThat(called(carrying(new Potential(Potential.Nature.DC, 300)))).isTrue();
    assertThat(called(carrying(new Potential(Potential.Nature.DC, 15)))).isFalse();
  }
}
