package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.Seeds;

/** What must hold for any two people's work on one map, tried on histories drawn from seeds. */
class MergeLawsTest {
  private static final int HISTORIES = Seeds.some(1_500);

  /**
   * Seeds that once showed a fault: nets joined crosswise, removed while grown, renamed while kept.
   */
  private static final long[] ONCE_AT_FAULT = {
    20, 28, 35, 73, 102, 118, 188, 196, 259, 592, 2067, 2951, 3626, 5385, 7850, 8196, 11497
  };

  @Test
  void laws_holdForTwoPeoplesHistories() {
    for (long seed = 1; seed <= HISTORIES; seed++) {
      MergeLaws.hold(seed, Histories.of(seed));
    }
  }

  static LongStream onceAtFault() {
    return LongStream.of(ONCE_AT_FAULT);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("onceAtFault")
  void laws_holdWhereTheyOnceDidNot(long seed) {
    MergeLaws.hold(seed, Histories.of(seed));
  }

  @Test
  void mergingAMapWithItself_isTheMap() {
    BoardMap map = Histories.of(1).mine();
    assertThat(Merge.of(map, map, map).map()).isEqualTo(map);
    assertThat(Merge.of(map, map).map()).isEqualTo(map);
  }

  /** The ten thousand histories of the README; half a minute, so not part of the build. */
  public static void main(String[] arguments) {
    long to = arguments.length == 0 ? 10_000 : Long.parseLong(arguments[0]);
    for (long seed = 1; seed <= to; seed++) {
      MergeLaws.hold(seed, Histories.of(seed));
    }
  }
}
