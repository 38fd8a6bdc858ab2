package org.relegend.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;

import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Point;
import org.relegend.viewer.mode.look.LookTool;

class PlacementCorrectionsTest {
  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final Session session = bench.session;

  @Test
  void drag_isOneEdit_onTheEvidenceInUse() {
    session.hand().setEvidence(Evidence.MEASURED);
    assertThat(session.room(LookTool.class).grab(new Click(TOP, new Point(995, 800), 8, false)))
        .isTrue();
    session.room(PlacementCorrections.class).move(TOP, 40, -10);
    assertThat(bench.place(TOP, "C102").at()).isEqualTo(new Point(1040, 790));
    assertThat(bench.place(TOP, "C102").best()).isEqualTo(Evidence.MEASURED);
    assertThat(session.document().undoLabel()).contains("Move C102");
  }

  @Test
  void dragOfSeveral_isOneEdit() {
    BoardMap before = session.map();
    session.room(LookTool.class).markWithin(TOP, new Point(900, 700), new Point(1100, 900), false);
    session.room(PlacementCorrections.class).move(TOP, 5, 5);
    assertThat(session.document().undoLabel()).contains("Move 2 places");
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void takeAway_leavesThePart_andIsUndoneWhole() {
    BoardMap before = session.map();
    session.room(LookTool.class).markWithin(TOP, new Point(900, 700), new Point(1100, 900), false);
    session.room(PlacementCorrections.class).takeAway();
    assertThat(session.map().placements()).hasSize(before.placements().size() - 2);
    assertThat(session.map().parts()).isEqualTo(before.parts());
    assertThat(session.selection().marked()).isEmpty();
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void confirm_addsEvidenceAndKeepsTheOld() {
    session.hand().setEvidence(Evidence.MEASURED);
    bench.click(TOP, 995, 800);
    session.room(PlacementCorrections.class).confirm();
    assertThat(bench.place(TOP, "C102").evidence()).hasSize(2);
  }

  @Test
  void nothingMarked_saysSo() {
    session.room(PlacementCorrections.class).takeAway();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_CHOSEN);
    session.room(PlacementCorrections.class).confirm();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_CHOSEN);
    session.room(PlacementCorrections.class).move(TOP, 1, 1);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_CHOSEN);
  }

  @Test
  void undoAndRedo_sayWhat_andShowWhere() {
    bench.click(TOP, 995, 800);
    session.room(PlacementCorrections.class).move(TOP, 40, 0);
    bench.looks.clear();
    session.undo();
    assertThat(session.notice()).contains(Notice.of(Notice.Kind.UNDONE, "Move C102"));
    assertThat(bench.looks)
        .singleElement()
        .extracting(ViewRequest::at)
        .isEqualTo(new Point(1000, 800));
    session.redo();
    assertThat(session.notice()).contains(Notice.of(Notice.Kind.REDONE, "Move C102"));
    session.redo();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_TO_REDO);
  }
}
