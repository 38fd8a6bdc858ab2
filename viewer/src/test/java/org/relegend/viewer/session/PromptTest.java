package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Subject;

/** What the status line says of the tool in hand, and what it must not go on saying. */
class PromptTest {
  private final Bench bench = new Bench(Bench.placedChannels());
  private final Session session = bench.session;

  @ParameterizedTest
  @EnumSource(names = {"PLACE", "PINS", "TRACE", "ZONE", "MEASURE", "STRAIGHTEN"})
  void aToolTaken_saysWhatToDoNow_untilItIsLaidAside(Tool tool) {
    session.take(tool);
    assertThat(session.notice()).map(Notice::kind).isEqualTo(tool.prompt()).isPresent();
    session.back();
    assertThat(session.notice()).isEmpty();
  }

  @Test
  void whatDidNotHappen_isNotSaidAnyMore_afterWhatDid() {
    session.take(Tool.PLACE);
    session.placing().type("");
    bench.click(TOP, 20, 20);
    assertThat(bench.said()).isEqualTo(Notice.Kind.NO_NAME_TYPED);
    session.hand().setEvidence(Evidence.MEASURED);
    assertThat(session.notice()).isEmpty();

    bench.click(TOP, 20, 20);
    session.choose(Subject.parse("C102"));
    assertThat(session.notice()).isEmpty();

    session.take(Tool.ZONE);
    session.outlining().close();
    assertThat(bench.said()).isEqualTo(Notice.Kind.ZONE_TOO_SMALL);
    bench.click(TOP, 20, 20);
    bench.click(TOP, 60, 20);
    bench.click(TOP, 60, 60);
    session.outlining().close();
    session.answer(
        (Question.WhichHazard) session.question().orElseThrow(), HazardZone.Kind.HOT, "");
    assertThat(bench.said()).isEqualTo(Notice.Kind.ZONE_DRAWN);
  }

  @Test
  void whatWasDone_staysSaid() {
    session.take(Tool.PLACE);
    session.placing().type("R101");
    bench.click(TOP, 20, 20);
    session.hand().setEvidence(Evidence.MEASURED);
    assertThat(bench.said()).isEqualTo(Notice.Kind.PLACED);
  }
}
