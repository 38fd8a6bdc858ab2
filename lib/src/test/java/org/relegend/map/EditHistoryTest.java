package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EditHistoryTest {
  static LongStream seeds() {
    return Seeds.upTo(50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void undo_afterAnyEdits_bringsBackTheFirstMap(long seed) {
    BoardMap first = BoardMapSamples.random(seed);
    EditHistory history = new EditHistory(first);
    int count = RandomEdits.applySome(history, seed);
    assertThat(count).isPositive();
    BoardMap last = history.current();
    for (int i = 0; i < count; i++) {
      assertThat(history.undo()).isPresent();
    }
    assertThat(history.undo()).isEmpty();
    assertThat(history.current()).isEqualTo(first);
    for (int i = 0; i < count; i++) {
      assertThat(history.redo()).isPresent();
    }
    assertThat(history.redo()).isEmpty();
    assertThat(history.current()).isEqualTo(last);
  }

  @Test
  void apply_refusedEdit_leavesMapAndHistory() {
    EditHistory history = new EditHistory(BoardMapSamples.divider());
    Net.Member taken = new Net.Member(PinRef.parse("R1.1"), List.of());
    assertThatThrownBy(() -> history.apply(new NetEdits.JoinPins(new NetId("MID"), List.of(taken))))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining("R1.1")
        .hasMessageContaining("VP");
    assertThat(history.current()).isEqualTo(BoardMapSamples.divider());
    assertThat(history.undoLabel()).isEmpty();
  }

  @Test
  void group_withOneRefusedStep_changesNothing() {
    EditHistory history = new EditHistory(BoardMapSamples.divider());
    Edit good = MapTables.PARTS.put(BoardMapSamples.twoPin("R3", "resistor", "1k"));
    Edit bad = new NetEdits.MergeNets(new NetId("MID"), new NetId("NONE"));
    assertThatThrownBy(() -> history.apply(new EditGroup("Both", List.of(good, bad))))
        .isInstanceOf(EditRefusedException.class);
    assertThat(history.current()).isEqualTo(BoardMapSamples.divider());
  }

  @Test
  void apply_afterUndo_forgetsTheRedo() throws EditRefusedException {
    EditHistory history = new EditHistory(BoardMapSamples.divider());
    history.apply(MapTables.PARTS.remove(new PartId("R1")));
    history.undo();
    assertThat(history.redoLabel()).contains("Remove R1");
    history.apply(MapTables.PARTS.remove(new PartId("R2")));
    assertThat(history.redoLabel()).isEmpty();
    assertThat(history.undoLabel()).contains("Remove R2");
  }
}
