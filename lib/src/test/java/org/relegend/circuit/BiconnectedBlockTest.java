package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.Seeds;

class BiconnectedBlockTest {
  static LongStream seeds() {
    return Seeds.upTo(300);
  }

  /** Against walking every way that passes no vertex twice. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void of_isAllThatLiesOnSomeWay(long seed) {
    Random random = new Random(seed);
    int count = 2 + random.nextInt(8);
    Map<Integer, Set<Integer>> neighbours = new HashMap<>();
    for (int i = 0; i < random.nextInt(2 * count + 1); i++) {
      join(neighbours, random.nextInt(count), random.nextInt(count));
    }
    Set<Integer> expected = new HashSet<>(Set.of(0, 1));
    walk(neighbours, new LinkedHashSet<>(Set.of(0)), 0, expected);
    assertThat(BiconnectedBlock.of(0, 1, neighbours)).isEqualTo(expected);
  }

  private static void walk(
      Map<Integer, Set<Integer>> neighbours, Set<Integer> way, int at, Set<Integer> found) {
    if (at == 1) {
      found.addAll(way);
      return;
    }
    for (int next : neighbours.getOrDefault(at, Set.of())) {
      if (way.add(next)) {
        walk(neighbours, way, next, found);
        way.remove(next);
      }
    }
  }

  @Test
  void of_aLongChain_needsNoDeepStack() {
    Map<Integer, Set<Integer>> neighbours = new HashMap<>();
    for (int i = 1; i < 100_000; i++) {
      join(neighbours, i, i + 1);
    }
    assertThat(BiconnectedBlock.of(1, 100_000, neighbours)).hasSize(100_000);
  }

  private static void join(Map<Integer, Set<Integer>> neighbours, int a, int b) {
    neighbours.computeIfAbsent(a, key -> new LinkedHashSet<>()).add(b);
    neighbours.computeIfAbsent(b, key -> new LinkedHashSet<>()).add(a);
  }
}
