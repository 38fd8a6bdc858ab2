package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.JobSamples;
import org.relegend.map.NetId;

/** The nets before and behind another, against a closure that knows single steps alone. */
class SignalPathTest {
  private static SignalPath path;

  @BeforeAll
  static void find() {
    path = SignalPath.of(DemoUnit.unit(JobSamples.blank()));
  }

  /** Adds what one more step leads to until nothing is new. */
  private static Set<NetId> closure(NetId start) {
    Set<NetId> all = new HashSet<>();
    Set<NetId> more = step(Set.of(start));
    while (all.addAll(more)) {
      more = step(all);
    }
    return all;
  }

  private static Set<NetId> step(Set<NetId> nets) {
    Set<NetId> next = new HashSet<>();
    nets.forEach(net -> path.from(net).forEach(edge -> next.add(edge.to())));
    return next;
  }

  @Test
  void downstream_isTheClosureOfSingleSteps_andUpstreamItsConverse() {
    List<NetId> nets = path.nets();
    assertThat(nets).hasSizeGreaterThan(20);
    for (NetId a : nets) {
      Set<NetId> behind = closure(a);
      assertThat(path.downstream(a)).as("behind %s", a).isEqualTo(behind).doesNotContain(a);
      for (NetId b : nets) {
        assertThat(path.upstream(b).contains(a))
            .as("%s before %s", a, b)
            .isEqualTo(behind.contains(b));
      }
    }
  }

  @Test
  void depth_isOneMoreThanTheNearestNetBefore() {
    assertThat(path.sources()).isNotEmpty();
    for (NetId net : path.nets()) {
      if (path.sources().contains(net)) {
        assertThat(path.depth(net)).isZero();
      } else {
        assertThat(path.into(net).stream().mapToInt(edge -> path.depth(edge.from())).min())
            .as("before %s", net)
            .hasValue(path.depth(net) - 1);
      }
    }
  }

  @Test
  void aNetThatNoSignalReaches_hasNothingBeforeOrBehindIt() {
    NetId nowhere = new NetId("NOWHERE");
    assertThat(path.has(nowhere)).isFalse();
    assertThat(path.upstream(nowhere)).isEmpty();
    assertThat(path.downstream(nowhere)).isEmpty();
    assertThat(path.from(nowhere)).isEmpty();
    assertThat(path.into(nowhere)).isEmpty();
    assertThat(path.depth(nowhere)).isEqualTo(Integer.MAX_VALUE);
  }
}
