package org.relegend.viewer.mode.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.table.NetClash;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;

class TraceToolTest {
  private SessionBench bench;
  private Session session;

  @BeforeEach
  void openPage() {
    BoardMap map =
        BoardMapSamples.with(
            SessionBench.twoChannels(),
            twoPin("R301", "resistor", ""),
            twoPin("R302", "resistor", ""));
    map = SessionBench.placed(map, PAGE, "R301.1", 100, 100);
    map = SessionBench.placed(map, PAGE, "R301", 150, 100);
    map = SessionBench.placed(map, PAGE, "R302.1", 200, 100);
    map = SessionBench.placed(map, PAGE, "R302", 250, 100);
    map = SessionBench.placed(map, PAGE, "C102.-", 300, 100);
    map = SessionBench.placed(map, PAGE, "net:A_C1", 400, 100);
    bench = new SessionBench(map);
    session = bench.session;
    session.take(TraceTool.class);
  }

  private List<String> pinsOf(String net) {
    return session.map().net(new NetId(net)).map(Net::pins).orElse(List.of()).stream()
        .map(Object::toString)
        .toList();
  }

  @Test
  void pinAfterPin_theNetGrowsBeforeOnesEyes() {
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 100, 100);
    assertThat(bench.cards()).containsExactly("R301.1");
    bench.click(PAGE, 200, 100);
    assertThat(bench.cards()).containsExactly("R301.1", "R302.1");
    assertThat(pinsOf("X1")).containsExactly("R301.1", "R302.1");
    assertThat(bench.clicks).isEqualTo(2);
  }

  @Test
  void withoutAName_theNetGetsTheNextFreeOne() {
    bench.click(PAGE, 100, 100);
    assertThat(pinsOf("N1")).containsExactly("R301.1");
  }

  @Test
  void firstPinOfAKnownNet_growsThatNet() {
    bench.click(PAGE, 300, 100);
    bench.click(PAGE, 100, 100);
    assertThat(pinsOf("A_ATT")).contains("R301.1", "C102.-");
    assertThat(session.question()).isEmpty();
  }

  @Test
  void pinOfAnotherNet_asks_andJoinMakesOneNet() {
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 100, 100);
    bench.click(PAGE, 300, 100);
    TraceTool.PinsTaken asked = (TraceTool.PinsTaken) session.question().orElseThrow();
    assertThat(asked.clash().other()).isEqualTo(new NetId("A_ATT"));

    session.room(TraceTool.class).answer(asked, NetClash.Choice.JOIN);

    assertThat(pinsOf("X1")).containsExactlyInAnyOrder("R301.1", "C102.-", "U101.2");
    assertThat(pinsOf("A_ATT")).isEmpty();
    assertThat(session.question()).isEmpty();
  }

  @Test
  void pinOfAnotherNet_moveTakesThePinAlone() {
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 300, 100);
    session
        .room(TraceTool.class)
        .answer((TraceTool.PinsTaken) session.question().orElseThrow(), NetClash.Choice.MOVE);
    assertThat(pinsOf("X1")).containsExactly("C102.-");
    assertThat(pinsOf("A_ATT")).containsExactly("U101.2");
  }

  @Test
  void pinOfAnotherNet_leaveChangesNothing() {
    BoardMap before = session.map();
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 300, 100);
    session
        .room(TraceTool.class)
        .answer((TraceTool.PinsTaken) session.question().orElseThrow(), NetClash.Choice.LEAVE);
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void joinBeforeTheNewNetHasAPin_isOneEdit() {
    BoardMap before = session.map();
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 300, 100);
    session
        .room(TraceTool.class)
        .answer((TraceTool.PinsTaken) session.question().orElseThrow(), NetClash.Choice.JOIN);
    assertThat(pinsOf("X1")).containsExactlyInAnyOrder("C102.-", "U101.2");
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void partWithTwoFreePins_asksWhichOne() {
    bench.click(PAGE, 150, 100);
    TraceTool.WhichPin asked = (TraceTool.WhichPin) session.question().orElseThrow();
    assertThat(asked.pins())
        .containsExactly(SessionBench.pin("R301.1"), SessionBench.pin("R301.2"));
    session.room(TraceTool.class).answer(SessionBench.pin("R301.2"));
    assertThat(pinsOf("N1")).containsExactly("R301.2");
  }

  @Test
  void partWithOneFreePin_joinsThatOne() {
    bench.click(PAGE, 100, 100);
    session.take(TraceTool.class);
    session.room(TraceTool.class).begin("X2");
    bench.click(PAGE, 150, 100);
    assertThat(pinsOf("X2")).containsExactly("R301.2");
  }

  @Test
  void netLabel_asks_andJoinMakesOneNet() {
    session.room(TraceTool.class).begin("X1");
    bench.click(PAGE, 100, 100);
    bench.click(PAGE, 400, 100);
    session
        .room(TraceTool.class)
        .answer((TraceTool.PinsTaken) session.question().orElseThrow(), NetClash.Choice.JOIN);
    assertThat(pinsOf("X1")).containsExactlyInAnyOrder("R301.1", "Q101.C", "C102.+");
  }

  @Test
  void emptyPlace_saysSo() {
    bench.click(PAGE, 700, 500);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_HERE);
  }

  @Test
  void pinOfThisNet_saysSoAndChangesNothing() {
    bench.click(PAGE, 100, 100);
    BoardMap before = session.map();
    bench.click(PAGE, 100, 100);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.ALREADY_JOINED);
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void typedLine_joinsItsPins_andAsksForThoseOnAnotherNet() {
    session.room(TraceTool.class).enter("X1 R301.1 R302.2 C102.- measured");
    assertThat(pinsOf("X1")).containsExactly("R301.1", "R302.2");
    session
        .room(TraceTool.class)
        .answer((TraceTool.PinsTaken) session.question().orElseThrow(), NetClash.Choice.MOVE);
    assertThat(pinsOf("X1")).containsExactly("C102.-", "R301.1", "R302.2");
    assertThat(session.document().undoLabel()).contains("Move C102.- to X1");
  }

  @Test
  void typedLineThatCantBeRead_saysWhere_andChangesNothing() {
    BoardMap before = session.map();
    session.room(TraceTool.class).enter("X1 R301..");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.REFUSED);
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void typedName_growsTheNetOfThatName() {
    session.room(TraceTool.class).enter("a_att");
    bench.click(PAGE, 100, 100);
    assertThat(pinsOf("A_ATT")).contains("R301.1");
  }
}
