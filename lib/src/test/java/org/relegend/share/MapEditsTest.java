package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMap;

/** A merge is brought into an open map as one edit, which must lead exactly there. */
class MapEditsTest {
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 20, 35, 73, 118, 259})
  void fromMineToTheMerged_andBack(long seed) throws Exception {
    MapVersions v = Histories.of(seed);
    BoardMap merged = Merge.of(v.base(), v.mine(), v.theirs()).map();
    assertThat(MapEdits.between("Bring in", v.mine(), merged).applyTo(v.mine())).isEqualTo(merged);
    assertThat(MapEdits.between("Back", merged, v.mine()).applyTo(merged)).isEqualTo(v.mine());
  }
}
