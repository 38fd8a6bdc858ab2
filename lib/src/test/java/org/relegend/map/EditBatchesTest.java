package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EditBatchesTest {
  static LongStream seeds() {
    return Seeds.upTo(20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void apply_runsOfLikeEdits_isOneAfterTheOther(long seed) throws EditRefusedException {
    Random random = new Random(seed);
    List<Edit> steps = new ArrayList<>();
    BoardMap expected = divider();
    for (int i = 0; i < 60; i++) {
      Edit edit = one(random, i / 12 % 3);
      steps.add(edit);
      expected = edit.applyTo(expected);
    }
    assertThat(new EditGroup("all", steps).applyTo(divider())).isEqualTo(expected);
  }

  /** Edits of one sort stand in runs; a run names some things twice, and new boards. */
  private static Edit one(Random random, int sort) {
    String name = "R" + (1 + random.nextInt(9));
    return switch (sort) {
      case 0 ->
          MapTables.PARTS.put(
              twoPin(name, "resistor", random.nextInt(99) + "k")
                  .withBoard(new BoardId("b" + random.nextInt(3))));
      case 1 -> MapTables.NETS.put(net("N" + random.nextInt(5)).withNote("n" + random.nextInt()));
      default ->
          MapTables.PLACEMENTS.put(
              new Placement(
                  TOP,
                  Subject.of(new PartId("R" + (1 + random.nextInt(2)))),
                  new Point(random.nextInt(99), 1),
                  says(Evidence.SEEN)));
    };
  }

  @Test
  void apply_placementOfNothingInARun_isRefused() {
    Placement good =
        new Placement(TOP, Subject.of(new PartId("R1")), new Point(1, 1), says(Evidence.SEEN));
    Placement bad =
        new Placement(TOP, Subject.of(new PartId("R9")), new Point(1, 1), says(Evidence.SEEN));
    EditGroup group =
        new EditGroup(
            "two", List.of(MapTables.PLACEMENTS.put(good), MapTables.PLACEMENTS.put(bad)));
    assertThatThrownBy(() -> group.applyTo(divider()))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining("no part R9");
  }
}
