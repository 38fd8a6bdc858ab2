package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.mode.pins.PinsTool;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.mode.straighten.StraightenTool;
import org.relegend.viewer.mode.trace.TraceTool;
import org.relegend.viewer.mode.zone.ZoneTool;

/** What the status line says of the tool in hand, and what it must not go on saying. */
class PromptTest {
  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final Session session = bench.session;

  @ParameterizedTest
  @ValueSource(
      classes = {
        PlaceTool.class,
        PinsTool.class,
        TraceTool.class,
        ZoneTool.class,
        MeasureTool.class,
        StraightenTool.class
      })
  void aToolTaken_saysWhatToDoNow_untilItIsLaidAside(Class<? extends Mode> kind) {
    Mode tool = session.room(kind);
    session.take(tool);
    assertThat(session.notice()).map(Notice::kind).isEqualTo(tool.prompt()).isPresent();
    session.back();
    assertThat(session.notice()).isEmpty();
  }

  @Test
  void whatDidNotHappen_isNotSaidAnyMore_afterWhatDid() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("");
    bench.click(TOP, 20, 20);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_NAME_TYPED);
    session.hand().setEvidence(Evidence.MEASURED);
    assertThat(session.notice()).isEmpty();

    bench.click(TOP, 20, 20);
    session.choose(Subject.parse("C102"));
    assertThat(session.notice()).isEmpty();

    session.take(ZoneTool.class);
    session.room(ZoneTool.class).close();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_TOO_SMALL);
    bench.click(TOP, 20, 20);
    bench.click(TOP, 60, 20);
    bench.click(TOP, 60, 60);
    session.room(ZoneTool.class).close();
    session
        .room(ZoneTool.class)
        .answer((ZoneTool.WhichHazard) session.question().orElseThrow(), HazardZone.Kind.HOT, "");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_DRAWN);
  }

  @Test
  void whatWasDone_staysSaid() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 20, 20);
    session.hand().setEvidence(Evidence.MEASURED);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.PLACED);
  }
}
