package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;

class PicturePairsTest {
  private static final PictureId BACK = new PictureId("back");
  private static final Spot SPOT = new Spot(new Point(1, 2), new Point(3, 4));

  private static PicturePairs pairs(PictureId one, PictureId other) {
    return new PicturePairs(
        one, other, Origin.CLICKED, List.of(SPOT), List.of(says(Evidence.SEEN)));
  }

  /** The sample with a photo of the solder side and one of another board. */
  private static BoardMap map() {
    BoardMap map = BoardMapSamples.divider();
    BoardId other = new BoardId("other");
    return map.with(MapTables.BOARDS, map.boards().with(Board.named(other)))
        .with(
            MapTables.PICTURES,
            map.pictures().withAll(List.of(photo(BACK, MAIN), photo(new PictureId("far"), other))));
  }

  private static Photo photo(PictureId id, BoardId board) {
    return new Photo(
        id,
        "",
        "photos/" + id + ".jpg",
        board,
        Side.SOLDER,
        BoardTurn.UNKNOWN,
        "ab".repeat(32),
        400,
        300);
  }

  @Test
  void eitherOrder_isTheSamePairs() {
    PicturePairs turned =
        new PicturePairs(
            TOP,
            BACK,
            Origin.CLICKED,
            List.of(new Spot(SPOT.onB(), SPOT.onA())),
            List.of(says(Evidence.SEEN)));
    assertThat(turned).isEqualTo(pairs(BACK, TOP));
    assertThat(turned.key()).isEqualTo(PicturePairs.Key.of(TOP, BACK)).isEqualTo(turned.key());
    assertThat(turned.from(BACK)).containsExactly(SPOT);
    assertThat(turned.from(TOP)).containsExactly(new Spot(SPOT.onB(), SPOT.onA()));
  }

  @Test
  void nothingToLineUp_isRefusedAtTheDoor() {
    assertThatIllegalArgumentException().isThrownBy(() -> pairs(TOP, TOP));
    List<Attestation> evidence = List.of(says(Evidence.SEEN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PicturePairs(TOP, BACK, Origin.CLICKED, List.of(), evidence));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PicturePairs(TOP, BACK, Origin.CLICKED, List.of(SPOT), List.of()));
  }

  @Test
  void pairs_goIntoTheMapAndOutAgain() throws EditRefusedException {
    PicturePairs pairs = pairs(BACK, TOP);
    Edit put = MapTables.LINE_UPS.put(pairs);
    BoardMap lined = put.applyTo(map());
    assertThat(put.label(map())).isEqualTo("Line up back and Component side");
    assertThat(put.label(lined)).isEqualTo("Change line-up of back and Component side");
    assertThat(lined.lineUps().stream()).containsExactly(pairs);
    assertThat(MapTables.LINE_UPS.remove(pairs.key()).applyTo(lined)).isEqualTo(map());
    assertThat(MapTables.PICTURES.remove(BACK).applyTo(lined).lineUps()).isEmpty();
  }

  @Test
  void pairsOfWhatIsNotOneBoard_areRefused() {
    refused(pairs(TOP, new PictureId("gone")), "The map has no picture gone: add it first.");
    refused(pairs(TOP, new PictureId("far")), "don't show the same board");
    refused(pairs(TOP, PAGE), "don't show the same board");
  }

  private static void refused(PicturePairs pairs, String why) {
    assertThatThrownBy(() -> MapTables.LINE_UPS.put(pairs).applyTo(map()))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining(why);
  }
}
