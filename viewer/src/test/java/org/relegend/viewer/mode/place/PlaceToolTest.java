package org.relegend.viewer.mode.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Point;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;

class PlaceToolTest {
  private final SessionBench bench = new SessionBench(SessionBench.twoChannels());
  private final Session session = bench.session;

  @Test
  void onePart_takesOneClickAfterItsName() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");

    bench.click(TOP, 500, 400);

    assertThat(bench.place(TOP, "R101").at()).isEqualTo(new Point(500, 400));
    assertThat(bench.clicks).isEqualTo(1);
    assertThat(bench.keys).isZero();
  }

  @Test
  void tenParts_takeTenClicks_asEachNextOneIsOffered() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("C102");
    int parts = session.map().parts().size();

    for (int i = 0; i < parts; i++) {
      bench.click(TOP, 100 + 50 * i, 400);
    }

    assertThat(session.map().placements()).hasSize(parts);
    assertThat(bench.clicks).isEqualTo(parts);
    assertThat(session.room(PlaceTool.class).text()).isEmpty();
  }

  @Test
  void nextUnplaced_followsTheOnePlacedLast_thenBeginsAgain() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R202");
    bench.click(TOP, 10, 10);
    assertThat(session.room(PlaceTool.class).text()).isEqualTo("R225");

    session.room(PlaceTool.class).type("U101");
    bench.click(TOP, 10, 50);
    assertThat(session.room(PlaceTool.class).text()).isEqualTo("C102");
  }

  @Test
  void unknownDesignator_isAddedAndPlaced_asOneEdit() {
    BoardMap before = session.map();
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R301");

    bench.click(TOP, 700, 700);

    assertThat(session.map().part(new PartId("R301"))).isPresent();
    assertThat(session.document().undoLabel()).contains("Place R301");
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void unknownPin_isAddedToItsPart() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R301.2");
    bench.click(TOP, 700, 700);
    assertThat(bench.place(TOP, "R301.2").at()).isEqualTo(new Point(700, 700));
  }

  @Test
  void smallLetters_meanThePartOfThatName() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("r101");
    bench.click(TOP, 500, 400);
    assertThat(bench.place(TOP, "R101")).isNotNull();
    assertThat(session.map().parts()).hasSameSizeAs(SessionBench.twoChannels().parts());
  }

  @Test
  void netName_placesALabel_andASecondOneBesideTheFirst() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("A_ATT");
    bench.click(PAGE, 100, 100);
    session.room(PlaceTool.class).type("A_ATT");
    bench.click(PAGE, 300, 100);
    assertThat(session.map().placements()).hasSize(2);
  }

  @Test
  void placedAgain_moves() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 500, 400);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 600, 400);
    assertThat(bench.place(TOP, "R101").at()).isEqualTo(new Point(600, 400));
    assertThat(session.document().undoLabel()).contains("Move R101");
  }

  @Test
  void evidence_isRememberedFromPartToPart() {
    session.hand().setEvidence(Evidence.MATCHED);
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 1, 1);
    bench.click(TOP, 100, 1);
    assertThat(session.map().placements())
        .hasSize(2)
        .allMatch(placement -> placement.best() == Evidence.MATCHED);
  }

  @Test
  void nothingTyped_saysSoAndPlacesNothing() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("  ");
    bench.click(TOP, 1, 1);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_NAME_TYPED);
    assertThat(session.map().placements()).isEmpty();
  }

  @Test
  void textThatIsNoName_saysSoAndPlacesNothing() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R1/x:y\"");
    bench.click(TOP, 1, 1);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOT_FOUND);
    assertThat(session.map()).isEqualTo(SessionBench.twoChannels());
  }

  @Test
  void completions_offerWhatIsNotPlacedYetFirst() {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 1, 1);
    assertThat(session.room(PlaceTool.class).completions("r1", Optional.of(TOP)))
        .containsExactly("R102", "R101");
  }

  @Test
  void readOnly_saysSoAndPlacesNothing() {
    session.document().setReadOnly(true);
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type("R101");
    bench.click(TOP, 1, 1);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.READ_ONLY);
    assertThat(session.map().placements()).isEmpty();
  }

  private Part placedAs(String typed) {
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type(typed);
    bench.click(TOP, 700, 700);
    String name = typed.split(" ")[0];
    return session.map().part(new PartId(name)).orElseThrow();
  }

  @Test
  void nameAndValue_ofANewPart_areOneEdit() {
    BoardMap before = session.map();
    assertThat(placedAs("R3 4k7").value()).isEqualTo("4k7");
    assertThat(bench.place(TOP, "R3").at()).isEqualTo(new Point(700, 700));
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void valueWithARating_isTakenWhole() {
    assertThat(placedAs("C3 4.7u 25V").value()).isEqualTo("4.7u 25V");
  }

  @Test
  void otherValueThanNoted_isTaken_andSaid() {
    assertThat(placedAs("R101 47k").value()).isEqualTo("47k");
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.PLACED_VALUE_CHANGED);
  }

  @ParameterizedTest
  @CsvSource({"R3 47,PIN_OR_VALUE", "R3 10u,NO_VALUE", "R3 4k7k,NO_VALUE", "hello world,NOT_FOUND"})
  void whatIsNoNameWithAValue_isRefused(String typed, Notice.Kind notice) {
    BoardMap before = session.map();
    session.take(PlaceTool.class);
    session.room(PlaceTool.class).type(typed);
    bench.click(TOP, 700, 700);
    assertThat(bench.lastNotice()).isEqualTo(notice);
    assertThat(session.map()).isEqualTo(before);
  }
}
