package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.PinRef;

class RandomSuppliesTest {
  private static final int BATCH = 100;

  static IntStream batches() {
    return IntStream.range(0, 10);
  }

  /** 1,000 supplies: no pin that mains reaches is missed, none beyond isolation is taken in. */
  @ParameterizedTest(name = "seeds {0}00 to {0}99")
  @MethodSource("batches")
  void reach_isWhatAPlainTableOfJoinedNetsSays(int batch) {
    int larger = 0;
    for (long seed = (long) batch * BATCH; seed < (batch + 1L) * BATCH; seed++) {
      Supplies.Supply supply = Supplies.of(seed);
      Hazards hazards = Hazards.of(Circuit.of(supply.map()), LimitSet.INSTRUMENTS);
      Set<String> reached = new TreeSet<>();
      hazards.reached().forEach(node -> node.pins().forEach(pin -> reached.add(pin.toString())));
      assertThat(reached).as("seed " + seed).isEqualTo(supply.live());
      assertThat(bridges(hazards)).as("seed " + seed).isEqualTo(supply.bridges());
      assertThat(hazards.unplaced()).as("seed " + seed).hasSameSizeAs(reached);
      larger += supply.live().size() > 6 ? 1 : 0;
    }
    assertThat(larger).as("supplies in which there is something to walk").isGreaterThan(BATCH / 2);
  }

  private static Set<String> bridges(Hazards hazards) {
    return hazards.mains().bridges().stream()
        .filter(bridge -> !bridge.walked())
        .map(MainsReach.Bridge::near)
        .map(PinRef::part)
        .map(Object::toString)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
