package org.relegend.viewer.mode.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;

class ZoneToolTest {
  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final Session session = bench.session;

  @BeforeEach
  void takeThePen() {
    session.take(ZoneTool.class);
  }

  private void corners() {
    bench.click(TOP, 100, 100);
    bench.click(TOP, 400, 100);
    bench.click(TOP, 400, 400);
  }

  @Test
  void closedAtTheFirstCorner_asksWhatThreatens_thenIsDrawn() {
    corners();
    bench.click(TOP, 102, 101);
    ZoneTool.WhichHazard asked = (ZoneTool.WhichHazard) session.question().orElseThrow();
    session.room(ZoneTool.class).answer(asked, HazardZone.Kind.STORED_CHARGE, "up to 23 V");
    HazardZone zone = session.map().zones().find(new ZoneId("stored-charge-1")).orElseThrow();
    assertThat(zone.outline()).hasSize(3);
    assertThat(zone.note()).isEqualTo("up to 23 V");
    assertThat(session.room(ZoneTool.class).corners(TOP)).isEmpty();
  }

  @Test
  void closedByKey_needsThreeCorners() {
    bench.click(TOP, 100, 100);
    bench.click(TOP, 400, 100);
    session.room(ZoneTool.class).close();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_TOO_SMALL);
    assertThat(session.question()).isEmpty();
    bench.click(TOP, 400, 400);
    session.room(ZoneTool.class).close();
    assertThat(session.question()).isPresent();
  }

  @Test
  void stepBack_takesTheLastCornerBack_thenThePenAway() {
    corners();
    session.back();
    assertThat(session.room(ZoneTool.class).corners(TOP)).hasSize(2);
    session.back();
    session.back();
    assertThat(session.isIn(ZoneTool.class)).isTrue();
    session.back();
    assertThat(session.isIn(LookTool.class)).isTrue();
  }

  @Test
  void cornerDragged_isOneEdit() {
    corners();
    session.room(ZoneTool.class).close();
    session
        .room(ZoneTool.class)
        .answer((ZoneTool.WhichHazard) session.question().orElseThrow(), HazardZone.Kind.MAINS, "");
    session.room(ZoneTool.class).moveCorner(new ZoneId("mains-1"), 2, new Point(500, 500));
    assertThat(session.map().zones().find(new ZoneId("mains-1")).orElseThrow().outline())
        .contains(new Point(500, 500))
        .doesNotContain(new Point(400, 400));
    assertThat(session.document().undoLabel()).contains("Change mains zone 1 on Component side");
  }

  @Test
  void kindAndNote_canBeChanged_asOneEdit_andTheCautionComesAnew() {
    corners();
    session.room(ZoneTool.class).close();
    session
        .room(ZoneTool.class)
        .answer((ZoneTool.WhichHazard) session.question().orElseThrow(), HazardZone.Kind.HOT, "");
    ZoneId zone = new ZoneId("hot-1");
    session.room(ZoneTool.class).askChange(zone);
    ZoneTool.ChangeZone asked = (ZoneTool.ChangeZone) session.question().orElseThrow();
    assertThat(asked.kind()).isEqualTo(HazardZone.Kind.HOT);
    session.room(ZoneTool.class).answer(asked, HazardZone.Kind.MAINS, "fuse and switch");
    HazardZone changed = session.map().zones().find(zone).orElseThrow();
    assertThat(changed.kind()).isEqualTo(HazardZone.Kind.MAINS);
    assertThat(changed.note()).isEqualTo("fuse and switch");
    assertThat(changed.outline()).hasSize(3);
    assertThat(session.gate().isOpen(Set.of(changed))).isFalse();
    session.undo();
    assertThat(session.map().zones().find(zone).orElseThrow().kind())
        .isEqualTo(HazardZone.Kind.HOT);
  }

  @Test
  void whatIsReadOfAZone_namesItsPresentKind_numberAndPicture() {
    corners();
    session.room(ZoneTool.class).close();
    session
        .room(ZoneTool.class)
        .answer(
            (ZoneTool.WhichHazard) session.question().orElseThrow(),
            HazardZone.Kind.STORED_CHARGE,
            "");
    assertThat(session.notice().orElseThrow().arguments())
        .containsExactly("stored charge zone 1 on Component side");
    ZoneId zone = new ZoneId("stored-charge-1");
    session.room(ZoneTool.class).askChange(zone);
    session
        .room(ZoneTool.class)
        .answer((ZoneTool.ChangeZone) session.question().orElseThrow(), HazardZone.Kind.MAINS, "");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_CHANGED);
    assertThat(session.notice().orElseThrow().arguments())
        .containsExactly("mains zone 1 on Component side");
    session.room(ZoneTool.class).askRemove(zone);
    session.room(ZoneTool.class).answer((ZoneTool.RemoveZone) session.question().orElseThrow());
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ZONE_REMOVED);
    assertThat(session.notice().orElseThrow().arguments())
        .containsExactly("mains zone 1 on Component side");
    assertThat(session.document().undoLabel()).contains("Remove mains zone 1 on Component side");
  }

  @Test
  void ofTwoZonesOfAKind_eachHasItsNumber() {
    BoardMap map =
        SessionBench.with(SessionBench.placedChannels(), SessionBench.mains(TOP, 0, 0, 50, 50));
    HazardZone other =
        new HazardZone(
            new ZoneId("hot-1"),
            TOP,
            HazardZone.Kind.MAINS,
            SessionBench.mains(TOP, 200, 0, 250, 50).outline(),
            "",
            List.of(says(Evidence.SEEN)));
    map = map.with(MapTables.ZONES, map.zones().with(other));
    List<String> names = map.zones().stream().map(map::nameOf).toList();
    assertThat(names)
        .containsExactlyInAnyOrder(
            "mains zone 1 on Component side", "mains zone 2 on Component side");
  }

  @Test
  void removal_asksFirst() {
    corners();
    session.room(ZoneTool.class).close();
    session
        .room(ZoneTool.class)
        .answer((ZoneTool.WhichHazard) session.question().orElseThrow(), HazardZone.Kind.MAINS, "");
    session.room(ZoneTool.class).askRemove(new ZoneId("mains-1"));
    assertThat(session.map().zones()).hasSize(1);
    session.room(ZoneTool.class).answer((ZoneTool.RemoveZone) session.question().orElseThrow());
    assertThat(session.map().zones()).isEmpty();
    session.undo();
    assertThat(session.map().zones()).hasSize(1);
  }
}
