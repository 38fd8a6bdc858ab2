package org.relegend.viewer.mode.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.SessionBench;

/** The array U101 is a DIP-14: pins 1 and 7 are 15.24 mm apart (JEDEC MS-001). */
@ResourceLock(Resources.LOCALE)
class MeasureToolTest {
  private final Locale before = Locale.getDefault();

  @BeforeEach
  void pointsInNumbers() {
    Locale.setDefault(Locale.ROOT);
  }

  @AfterEach
  void asItWas() {
    Locale.setDefault(before);
  }

  private static String length(SessionBench bench) {
    return bench.session.room(MeasureTool.class).on(TOP).orElseThrow().text();
  }

  @Test
  void twoClicks_areMeasuredByThePinsOfAPlacedPackage() {
    SessionBench bench =
        new SessionBench(
            SessionBench.placed(
                SessionBench.placed(SessionBench.twoChannels(), TOP, "U101.1", 1000, 1000),
                TOP,
                "U101.7",
                1152.4,
                1000));
    bench.key(() -> bench.session.take(MeasureTool.class));
    bench.click(TOP, 500, 500);
    bench.click(TOP, 500, 754);
    assertThat(bench.clicks).isEqualTo(2);
    assertThat(length(bench)).isEqualTo("25.4 mm");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.MEASURED_BY_PART);
  }

  @Test
  void withoutAScale_theDistanceIsAskedFor_andServesFromThenOn() {
    SessionBench bench = new SessionBench(SessionBench.twoChannels());
    bench.session.take(MeasureTool.class);
    bench.click(TOP, 100, 100);
    bench.click(TOP, 300, 100);
    MeasureTool.HowFar asked = (MeasureTool.HowFar) bench.session.question().orElseThrow();
    bench.session.room(MeasureTool.class).answer(asked, "no idea");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_DISTANCE);
    bench.session.room(MeasureTool.class).answer(asked, "-3");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_DISTANCE);
    bench.session.room(MeasureTool.class).answer(asked, "20,0");
    assertThat(length(bench)).isEqualTo("20.0 mm");
    bench.click(TOP, 0, 0);
    bench.click(TOP, 0, 55);
    assertThat(length(bench)).isEqualTo("5.5 mm");
  }

  @Test
  void onAPage_orTwiceTheSamePoint_nothingIsMeasured() {
    SessionBench bench = new SessionBench(SessionBench.twoChannels());
    bench.session.take(MeasureTool.class);
    bench.click(PAGE, 10, 10);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.MEASURED_ON_PHOTOS);
    bench.click(TOP, 10, 10);
    bench.click(TOP, 10, 10);
    assertThat(length(bench)).isEmpty();
    assertThat(bench.session.question()).isEmpty();
    bench.session.back();
    assertThat(bench.session.room(MeasureTool.class).on(TOP)).isEmpty();
  }
}
