package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;

class JournalTextTest {
  private static final Instant NOON = BoardMapSamples.NOON;

  @Test
  void everyKindOfEdit_hasAFormAndASample() {
    assertThat(EditShapes.known()).hasSizeGreaterThan(30);
    assertThat(EditSamples.all().stream().map(JournalTextTest::word).collect(Collectors.toSet()))
        .isEqualTo(EditShapes.known());
    assertThat(EditSamples.all().stream().map(Edit::getClass).collect(Collectors.toSet()))
        .isEqualTo(Set.of(Edit.class.getPermittedSubclasses()));
  }

  /** The words stand in journals that were left behind, so they never change. */
  @Test
  void wordsOfEdits_areThoseOfTheFirstForm() {
    assertThat(EditShapes.known())
        .contains(
            "put-board",
            "remove-board",
            "put-picture",
            "remove-picture",
            "put-zone",
            "remove-zone",
            "put-pairs",
            "remove-pairs",
            "put-part",
            "remove-part",
            "put-channel",
            "remove-channel",
            "put-mating",
            "remove-mating",
            "declare-twin",
            "remove-twin",
            "put-deviation",
            "remove-deviation",
            "put-net",
            "remove-net",
            "join-pins",
            "move-pin",
            "detach-pin",
            "merge-nets",
            "put-discrepancy",
            "remove-discrepancy",
            "place",
            "unplace",
            "confirm",
            "put-clash",
            "remove-clash",
            "change-info",
            "group");
  }

  private static String word(Edit edit) {
    byte[] line = JournalText.write(new JournalLine(NOON, new JournalLine.Made(edit)));
    String text = new String(line, StandardCharsets.UTF_8);
    String from = text.substring(text.indexOf("{\"edit\":\"") + 9);
    return from.substring(0, from.indexOf('"'));
  }

  static List<Edit> edits() {
    return EditSamples.all();
  }

  @ParameterizedTest
  @MethodSource("edits")
  void edit_writtenThenRead_isEqual_inOneLineWithoutClassNames(Edit edit) throws IOException {
    byte[] bytes = JournalText.write(new JournalLine(NOON, new JournalLine.Made(edit)));
    assertThat(read(bytes).step()).isEqualTo(new JournalLine.Made(edit));
    String text = new String(bytes, StandardCharsets.UTF_8);
    assertThat(text.lines()).hasSize(1);
    assertThat(text)
        .startsWith("{\"at\":\"2026-03-04T12:00:00Z\",\"edit\":{\"edit\":\"")
        .doesNotContain("relegend", edit.getClass().getSimpleName());
  }

  @Test
  void groupsOfGroups_canBeReadBack() throws IOException {
    Edit edit = EditSamples.all().get(0);
    for (int i = 0; i < 40; i++) {
      edit = new EditGroup("level " + i, List.of(edit));
    }
    byte[] bytes = JournalText.write(new JournalLine(NOON, new JournalLine.Made(edit)));
    assertThat(read(bytes).step()).isEqualTo(new JournalLine.Made(edit));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void change_betweenAnyTwoMaps_writtenThenRead_leadsFromOneToTheOther(long seed)
      throws IOException {
    BoardMap a = FullMap.make();
    BoardMap b = BoardMapSamples.random(seed);
    assertThat(replayed(a, b)).isEqualTo(b);
    assertThat(replayed(b, a).withInfo(a.info())).isEqualTo(a);
    assertThat(replayed(b, b)).isEqualTo(b);
  }

  private static BoardMap replayed(BoardMap from, BoardMap to) throws IOException {
    JournalLine line = new JournalLine(NOON, JournalLine.Changed.between(from, to));
    JournalLine.Changed read = (JournalLine.Changed) read(JournalText.write(line)).step();
    return read.change().applyTo(from);
  }

  @Test
  void change_betweenEqualMaps_isNone() {
    assertThat(MapChange.between(FullMap.make(), FullMap.make()).none()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"at\": \"2026-03-04T12:00:00Z\"}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"turn\": \"undo\", \"saving\": \"x\"}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"turn\": \"back\"}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"edit\": {\"edit\": \"explode\"}}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"edit\": {\"part\": \"R1\", \"edit\": \"remove-part\"}}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"change\": {\"colours\": {}}}",
        "{\"at\": \"2026-03-04T12:00:00Z\", \"turn\": \"undo\"} x",
        "[]",
        ""
      })
  void line_thatTellsNothingKnown_isRefused(String text) {
    assertThatThrownBy(() -> read(text.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(IOException.class);
  }

  private static JournalLine read(byte[] bytes) throws IOException {
    int end = bytes.length > 0 && bytes[bytes.length - 1] == '\n' ? bytes.length - 1 : bytes.length;
    return JournalText.line(bytes, 0, end);
  }
}
