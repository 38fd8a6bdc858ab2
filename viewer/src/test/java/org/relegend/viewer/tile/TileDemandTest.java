package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TileDemandTest {
  private static final TileKey A = new TileKey(0, 0, 0);
  private static final TileKey B = new TileKey(0, 1, 0);
  private static final TileKey C = new TileKey(0, 2, 0);

  private final TileDemand demand = new TileDemand();

  @Test
  void take_givesTheNewestViewFirst() {
    demand.want("left", List.of(A, B));
    demand.want("right", List.of(C));

    assertThat(demand.take(key -> true)).contains(C);
    assertThat(demand.take(key -> true)).contains(A);
    demand.want("left", List.of(A, B));
    demand.done(C);
    assertThat(demand.take(key -> true)).contains(B);
    assertThat(demand.take(key -> true)).contains(C);
  }

  @Test
  void want_replacesWhatTheSameViewerWanted() {
    demand.want("left", List.of(A, B));
    demand.want("left", List.of(C));

    assertThat(demand.takeAll(key -> true)).containsExactly(C);
    demand.want("left", List.of());
    demand.done(C);
    assertThat(demand.take(key -> true)).isEmpty();
  }

  @Test
  void take_givesNoTileTwiceWhileItIsMade() {
    demand.want("left", List.of(A));
    demand.want("right", List.of(A));

    assertThat(demand.take(key -> true)).contains(A);
    assertThat(demand.take(key -> true)).isEmpty();
    assertThat(demand.takeAll(key -> true)).isEmpty();
    demand.done(A);
    assertThat(demand.take(key -> true)).contains(A);
  }

  @Test
  void takeAll_givesEachOnce_andLeavesWhatDoesNotPass() {
    demand.want("left", List.of(A, B));
    demand.want("right", List.of(B, C));

    assertThat(demand.takeAll(key -> !key.equals(C))).containsExactly(B, A);
    assertThat(demand.take(key -> true)).contains(C);
  }

  @Test
  void clear_forgetsAllWishes() {
    demand.want("left", List.of(A, B));

    demand.clear();

    assertThat(demand.take(key -> true)).isEmpty();
  }
}
