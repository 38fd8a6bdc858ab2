package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.PictureId;

/** A4 is 841.89 points high, in single precision 841.8900146484375 (IEEE 754). */
class PageSizesTest {
  private static BoardMap withPage(double height) {
    BoardMap map = BoardMapSamples.divider();
    PictureId id = new PictureId("page-1");
    return map.with(
        MapTables.PICTURES,
        map.pictures().with(new Page(id, "One", "pages/a.pdf", 1, "a".repeat(64), 595, height)));
  }

  @Test
  void sizesThatDifferByRounding_areNoClash() {
    BoardMap mine = withPage(841.89);
    BoardMap theirs = withPage((double) 841.89f);
    assertThat(theirs).isNotEqualTo(mine);
    assertThat(Merge.of(mine, theirs)).isEqualTo(new MergeResult(mine, java.util.List.of()));
    assertThat(Merge.of(BoardMapSamples.divider(), mine, theirs).clashes()).isEmpty();
    assertThat(Merge.of(theirs, mine, mine).map()).isEqualTo(mine);
  }

  @Test
  void otherSizes_stillClash() {
    assertThat(Merge.of(withPage(841.89), withPage(842.89)).clashes()).isNotEmpty();
  }
}
