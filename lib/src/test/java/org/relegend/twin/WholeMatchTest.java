package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import org.jgrapht.Graph;
import org.jgrapht.alg.isomorphism.VF2GraphIsomorphismInspector;
import org.jgrapht.graph.DefaultEdge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two circuits without a seed, against the graph library's exact isomorphism. */
class WholeMatchTest {
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aCopy_isPairedWhole_andTheExactMatcherSaysTheSame(long seed) {
    RandomCircuit circuit = RandomCircuit.of(120, 5, 0, seed);
    TwinAssignment pairing = WholeMatch.of(circuit.sideBySide(false));
    for (int e = 0; e < circuit.parts(); e++) {
      assertThat(pairing.twin[e]).as("part %d", e).isNotEqualTo(TwinAssignment.NONE);
      assertThat(pairing.agreement(e, pairing.twin[e]).against()).isZero();
    }
    assertThat(isomorphic(circuit, false)).isTrue();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void oneExchangedPin_isTheOnlyThingThatDiffers(long seed) {
    RandomCircuit circuit = RandomCircuit.of(120, 5, 0, seed);
    TwinAssignment pairing = WholeMatch.of(circuit.sideBySide(true));
    int against = 0;
    int unpaired = 0;
    for (int e = 0; e < circuit.parts(); e++) {
      if (pairing.twin[e] == TwinAssignment.NONE) {
        unpaired++;
      } else {
        against += pairing.agreement(e, pairing.twin[e]).against();
      }
    }
    assertThat(against + unpaired).as("differs somewhere").isPositive();
    assertThat(unpaired).isLessThan(6);
    assertThat(isomorphic(circuit, true)).isFalse();
  }

  @Test
  void equalRings_arentGuessedAt() {
    PinGraph.Builder builder = new PinGraph.Builder();
    for (byte side : new byte[] {PinGraph.FIRST, PinGraph.SECOND}) {
      int[] nets = new int[6];
      for (int i = 0; i < 6; i++) {
        nets[i] = builder.net(side);
      }
      for (int i = 0; i < 6; i++) {
        builder.element(1, 1, side);
        builder.pin(nets[i], 1);
        builder.pin(nets[(i + 1) % 6], 1);
      }
    }
    TwinAssignment pairing = WholeMatch.of(builder.build());
    assertThat(pairing.order.isEmpty()).isTrue();
  }

  private static boolean isomorphic(RandomCircuit circuit, boolean changed) {
    Graph<RandomCircuit.Node, DefaultEdge> first = circuit.graph(false, false);
    Graph<RandomCircuit.Node, DefaultEdge> second = circuit.graph(true, changed);
    Comparator<RandomCircuit.Node> kinds = Comparator.comparingInt(RandomCircuit.Node::kind);
    return new VF2GraphIsomorphismInspector<>(
            first, second, kinds, Comparator.comparing(edge -> edge.getClass().getName()))
        .isomorphismExists();
  }
}
