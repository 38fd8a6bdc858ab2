package org.relegend.viewer.mode.twins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;

/** Twins said and accepted, and what follows from them: worked out here on the same thread. */
class TwinToolTest {
  private SessionBench bench = new SessionBench(untold());
  private Session session = bench.session;

  /** Two channels of which nobody said that they are twins. */
  private static BoardMap untold() {
    return SessionBench.placedChannels().with(MapTables.TWINS, Table.empty());
  }

  private void open(BoardMap map) {
    bench = new SessionBench(map);
    session = bench.session;
  }

  private void say(String part, String twin) {
    session.choose(Subject.parse(part));
    session.gate().turnBack();
    session.room(TwinTool.class).ask();
    session
        .room(TwinTool.class)
        .answer((TwinTool.WhichTwin) session.question().orElseThrow(), twin);
  }

  private void work() {
    BoardMap map = session.map();
    session
        .room(TwinTool.class)
        .take(map, DerivedTwins.of(map, session.room(TwinTool.class).lastDeclared(), false));
  }

  private Optional<TwinRow> row(String name) {
    return session.room(TwinTool.class).rows().stream()
        .filter(row -> row.place().equals(Subject.parse(name)))
        .filter(TwinRow.Pair.class::isInstance)
        .findFirst();
  }

  @Test
  void sayingATwin_isOneEdit_andTheRestFollows() {
    say("Q101", "q201");
    assertThat(session.question()).isEmpty();
    assertThat(session.map().twins()).hasSize(1);
    assertThat(bench.heard).containsKey(Change.TWINS_SAID);
    work();
    assertThat(session.room(TwinTool.class).rows())
        .filteredOn(TwinRow.Pair.class::isInstance)
        .extracting(row -> row.place().toString())
        .contains("C102", "R102");
    assertThat(session.map().twins()).hasSize(1);
  }

  @Test
  void whatFitsNot_isRefused_andTheQuestionStays() {
    say("Q101", "Q999");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOT_FOUND);
    session
        .room(TwinTool.class)
        .answer((TwinTool.WhichTwin) session.question().orElseThrow(), "B_B1");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.TWINS_UNLIKE);
    session
        .room(TwinTool.class)
        .answer((TwinTool.WhichTwin) session.question().orElseThrow(), "Q101");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.TWINS_UNLIKE);
    assertThat(session.question()).isPresent();
    assertThat(session.map().twins()).isEmpty();
  }

  @Test
  void partNamedForAPin_meansTheParts() {
    session.choose(Subject.parse("C102.-"));
    session.room(TwinTool.class).ask();
    session
        .room(TwinTool.class)
        .answer((TwinTool.WhichTwin) session.question().orElseThrow(), "C202");
    assertThat(session.map().twins())
        .extracting(pair -> pair.key().toString())
        .containsExactly("C102 = C202");
  }

  @Test
  void cardShowsTheTwinThatFollows_andTheKeyLeadsThere_forPartPinAndNet() {
    say("Q101", "Q201");
    work();
    session.choose(Subject.parse("C102"));
    NodeCard card = session.selection().card().orElseThrow();
    assertThat(card.twin()).contains(Subject.parse("C202"));
    assertThat(card.follows().orElseThrow().from().toString()).isEqualTo("Q101 = Q201");
    assertThat(card.twinPhoto().orElseThrow().subject()).isEqualTo(Subject.parse("C202"));
    session.room(TwinJump.class).jump();
    assertThat(session.selection().subject()).contains(Subject.parse("C202"));
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.TWIN_FOLLOWS);

    session.choose(Subject.parse("C102.-"));
    session.room(TwinJump.class).jump();
    assertThat(session.selection().subject()).contains(Subject.parse("C202.-"));
    session.choose(Subject.parse("net:A_ATT"));
    session.room(TwinJump.class).jump();
    assertThat(session.selection().subject()).contains(Subject.parse("net:B_ATT"));
  }

  @Test
  void cardsAreLaidAnew_onlyWhenSomethingElseIsKnown() {
    say("Q101", "Q201");
    work();
    session.choose(Subject.parse("C102"));
    bench.heard.clear();
    work();
    assertThat(bench.heard).containsKey(Change.TWINS).doesNotContainKey(Change.CHOICE);
  }

  @Test
  void acceptAll_isOneNamedStep_thatUndoAndRedoTake() {
    say("Q101", "Q201");
    work();
    int sure = session.room(TwinTool.class).sure();
    assertThat(sure).isGreaterThan(3);
    session.room(TwinTool.class).acceptAll();
    assertThat(session.map().twins()).hasSize(1 + sure);
    assertThat(session.map().twins())
        .filteredOn(pair -> !pair.a().equals(Subject.parse("Q101")))
        .allMatch(pair -> pair.evidence().get(0).evidence() == Evidence.MATCHED);
    assertThat(session.document().undoLabel()).contains("Accept %d twins".formatted(sure));
    session.undo();
    assertThat(session.map().twins()).hasSize(1);
    session.redo();
    assertThat(session.map().twins()).hasSize(1 + sure);
    work();
    session.room(TwinTool.class).acceptAll();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_PROPOSED);
  }

  @Test
  void rejected_isNotUsed_untilItIsAcceptedAfterAll() {
    say("Q101", "Q201");
    work();
    TwinRow pair = row("C102").orElseThrow();
    session.room(TwinTool.class).reject(pair);
    assertThat(((TwinRow.Pair) row("C102").orElseThrow()).rejected()).isTrue();
    session.choose(Subject.parse("C102"));
    assertThat(session.selection().card().orElseThrow().twin()).isEmpty();
    session.room(TwinTool.class).acceptAll();
    assertThat(session.map().twins())
        .noneMatch(known -> known.key().toString().equals("C102 = C202"));
    session.room(TwinTool.class).accept(row("C102").orElseThrow());
    assertThat(session.map().twins())
        .anyMatch(known -> known.key().toString().equals("C102 = C202"));
  }

  /** R101 is 100k on the base of Q101, R202 is 220k elsewhere. */
  @Test
  void saidPairsThatContradict_areListed_nothingIsAccepted_andOneCanBeTakenBack() {
    say("Q101", "Q201");
    say("R101", "R202");
    say("R102", "C202");
    work();
    List<TwinRow> clashes =
        session.room(TwinTool.class).rows().stream()
            .filter(TwinRow.Clash.class::isInstance)
            .toList();
    assertThat(clashes).isNotEmpty();
    int before = session.map().twins().size();
    session.room(TwinTool.class).acceptAll();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.TWINS_CLASH);
    assertThat(session.map().twins()).hasSize(before);
    session.room(TwinTool.class).reject(clashes.get(0));
    assertThat(session.map().twins()).hasSize(before - 1);
  }

  @Test
  void differenceIsMarked_andTheMarkTakenBack() {
    BoardMap map = untold();
    map =
        org.relegend.map.BoardMapSamples.with(
            map, org.relegend.map.BoardMapSamples.net("B_E1", "Q201.E", "R225.1"));
    map =
        org.relegend.map.BoardMapSamples.with(
            map, org.relegend.map.BoardMapSamples.net("A_E1", "Q101.E"));
    open(map);
    say("Q101", "Q201");
    work();
    TwinRow differs =
        session.room(TwinTool.class).rows().stream()
            .filter(TwinRow.Differs.class::isInstance)
            .findFirst()
            .orElseThrow();
    session.room(TwinTool.class).mark(differs, ChannelDeviation.Cause.DESIGN);
    assertThat(session.map().deviations()).hasSize(1);
    TwinRow.Differs marked =
        session.room(TwinTool.class).rows().stream()
            .filter(TwinRow.Differs.class::isInstance)
            .map(TwinRow.Differs.class::cast)
            .filter(row -> row.mark().isPresent())
            .findFirst()
            .orElseThrow();
    assertThat(marked.mark()).contains(ChannelDeviation.Cause.DESIGN);
    session.room(TwinTool.class).reject(marked);
    assertThat(session.map().deviations()).isEmpty();
  }

  /** What is worked out late must not show a place that nobody was cautioned of. */
  @Test
  void twinThatFollowsLater_inAZone_isHeldBackFromTheCard_andTheKeyAsks() {
    open(SessionBench.with(untold(), SessionBench.mains(TOP, 900, 2200, 1100, 2400)));
    session.choose(Subject.parse("C102"));
    assertThat(session.gate().caution()).isEmpty();
    session
        .document()
        .apply(
            MapTables.TWINS.put(
                new TwinPair(
                    Subject.parse("Q101"), Subject.parse("Q201"), List.of(says(Evidence.SEEN)))));
    work();
    NodeCard card = session.selection().card().orElseThrow();
    assertThat(card.twin()).contains(Subject.parse("C202"));
    assertThat(card.twinPhoto()).isEmpty();
    assertThat(card.held()).isTrue();
    assertThat(session.gate().caution()).isEmpty();
    session.room(TwinJump.class).jump();
    assertThat(session.gate().caution()).isPresent();
    session.gate().acknowledge();
    assertThat(session.selection().subject()).contains(Subject.parse("C202"));
  }

  @Test
  void whatIsWorkedOutOfAnOlderMap_isDropped() {
    say("Q101", "Q201");
    BoardMap before = session.map();
    DerivedTwins old = DerivedTwins.of(before, Optional.empty(), false);
    session.undo();
    session.room(TwinTool.class).take(before, old);
    assertThat(session.room(TwinTool.class).rows()).isEmpty();
  }

  @Test
  void withNothingSaid_channelsAreFoundOnlyWhenAsked_andNoCardUsesThem() {
    BoardMap map = session.map();
    assertThat(DerivedTwins.of(map, Optional.empty(), false)).isSameAs(DerivedTwins.NONE);
    session.room(TwinTool.class).take(map, DerivedTwins.of(map, Optional.empty(), true));
    session.choose(Subject.parse("C102"));
    assertThat(session.selection().card().orElseThrow().twin()).isEmpty();
  }

  @Test
  void compare_laysBothChannelsSideBySide_eachKeepingItsSide() {
    open(SessionBench.placedChannels());
    session.choose(Subject.parse("C202"));
    session.room(ChannelComparison.class).toggle();
    assertThat(session.room(ChannelComparison.class).isOn()).isTrue();
    assertThat(session.desk().left().orElseThrow().id()).isEqualTo(TOP);
    assertThat(session.desk().photo().orElseThrow().id()).isEqualTo(TOP);
    assertThat(session.room(ChannelComparison.class).sides().left().orElseThrow().subject())
        .isEqualTo(Subject.parse("C102"));
    bench.looks.clear();
    session.room(TwinJump.class).jump();
    assertThat(session.room(ChannelComparison.class).sides().left().orElseThrow().subject())
        .isEqualTo(Subject.parse("C102"));
    assertThat(bench.looks).isEmpty();
    session.room(ChannelComparison.class).toggle();
    assertThat(session.desk().facing()).isEmpty();

    session.room(ChannelComparison.class).toggle();
    session.back();
    assertThat(session.room(ChannelComparison.class).isOn()).isFalse();
    assertThat(session.selection().subject()).isPresent();
  }

  @Test
  void compare_ofWhatHasNoTwin_orIsNotPlaced_saysSo() {
    open(SessionBench.placedChannels());
    session.choose(Subject.parse("R225"));
    session.room(ChannelComparison.class).toggle();
    assertThat(session.notice()).contains(Notice.of(Notice.Kind.NO_TWIN_CHANNEL, "R225", "B"));
    session.choose(Subject.parse("R101"));
    session.room(ChannelComparison.class).toggle();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOT_PLACED_YET);
    assertThat(session.room(ChannelComparison.class).isOn()).isFalse();
  }

  @Test
  void takingATool_endsTheComparison() {
    open(SessionBench.placedChannels());
    session.choose(Subject.parse("C102"));
    session.room(ChannelComparison.class).toggle();
    session.take(PlaceTool.class);
    assertThat(session.room(ChannelComparison.class).isOn()).isFalse();
    assertThat(session.map().placements().has(new Placement.Key(TOP, Subject.parse("C102"), 1)))
        .isTrue();
  }
}
