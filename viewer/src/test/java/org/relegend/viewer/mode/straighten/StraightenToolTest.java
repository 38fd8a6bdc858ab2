package org.relegend.viewer.mode.straighten;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.lineup.Rectification;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.Point;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.SessionBench;

class StraightenToolTest {
  private final SessionBench bench = new SessionBench(SessionBench.twoChannels());
  private final StraightenTool squaring = bench.session.room(StraightenTool.class);

  private StraightenTool.HowLarge afterFourClicks() {
    bench.session.take(StraightenTool.class);
    bench.click(TOP, 1600, 1100);
    bench.click(TOP, 100, 100);
    bench.click(TOP, 1600, 100);
    bench.click(TOP, 100, 1100);
    return (StraightenTool.HowLarge) bench.session.question().orElseThrow();
  }

  @Test
  void fourClicksAndASize_areAViewOfThePhoto_toldOnce() {
    StraightenTool.HowLarge asked = afterFourClicks();
    assertThat(bench.clicks).isEqualTo(4);
    bench.session.room(StraightenTool.class).answer(asked, "150 x 100");
    StraightenTool.Wanted wanted = squaring.wanted().orElseThrow();
    assertThat(wanted.photo().id()).isEqualTo(TOP);
    assertThat(wanted.says().evidence()).isEqualTo(Evidence.SEEN);
    double margin = 0.04 * 150 * wanted.view().pixelsPerMillimetre();
    assertThat(
            wanted.view().toPhoto().apply(new Point(margin, margin)).distance(new Point(100, 100)))
        .isLessThan(1e-6);
    assertThat(squaring.wanted()).isEmpty();
    assertThat(squaring.corners(TOP)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"150x100", "150 100", "150,0 \u00d7 100,0", "150 mm x 100 mm", " 150*100 "})
  void sizes_areUnderstoodAsPeopleWriteThem(String size) {
    bench.session.room(StraightenTool.class).answer(afterFourClicks(), size);
    assertThat(squaring.wanted().orElseThrow().view().pixelsPerMillimetre()).isEqualTo(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "150", "wide", "0 x 100", "1.2.3 x 5", "-150 x 100"})
  void whatIsNoSize_isAskedAgain(String size) {
    StraightenTool.HowLarge asked = afterFourClicks();
    bench.session.room(StraightenTool.class).answer(asked, size);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_SIZE);
    assertThat(bench.session.question()).contains(asked);
    assertThat(squaring.wanted()).isEmpty();
    bench.session.room(StraightenTool.class).answer(asked, "150 x 100");
    assertThat(squaring.wanted()).isPresent();
  }

  @Test
  void back_takesCornersBack_oneByOne_thenTheTool() {
    bench.session.take(StraightenTool.class);
    bench.click(TOP, 100, 100);
    bench.click(TOP, 200, 100);
    bench.click(TOP, 200, 100);
    assertThat(squaring.corners(TOP)).hasSize(2);
    bench.session.back();
    assertThat(squaring.corners(TOP)).containsExactly(new Point(100, 100));
    bench.session.back();
    assertThat(bench.session.isIn(StraightenTool.class)).isTrue();
    bench.session.back();
    assertThat(bench.session.isIn(LookTool.class)).isTrue();
  }

  /** The size that was given for the board tells lengths on the straightened photo too. */
  @Test
  void theNewPhoto_isMeasuredByTheSizeGiven() {
    bench.session.room(StraightenTool.class).answer(afterFourClicks(), "150 x 100");
    Rectification view = squaring.wanted().orElseThrow().view();
    EditGroup nothing = new EditGroup("Straighten", List.of());
    squaring.drawn(nothing, TOP, view);
    bench.session.take(MeasureTool.class);
    bench.click(TOP, 100, 100);
    bench.click(TOP, 100, 350);
    assertThat(bench.session.room(MeasureTool.class).on(TOP).orElseThrow().text()).startsWith("25");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.MEASURED_BY_DISTANCE);
  }

  @Test
  void aPage_isRefused() {
    bench.session.take(StraightenTool.class);
    bench.click(PAGE, 10, 10);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.STRAIGHTENED_PHOTOS);
    assertThat(squaring.corners(PAGE)).isEmpty();
  }
}
