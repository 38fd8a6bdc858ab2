package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.ChangeInfo;
import org.relegend.map.MapInfo;
import org.relegend.store.StoreException.Kind;

class MapFolderTest {
  private static final BoardMap FIRST = BoardMapSamples.random(1);
  private static final BoardMap SECOND = BoardMapSamples.random(2);

  @TempDir Path temp;

  @Test
  void create_thenOpen_givesTheMap() throws Exception {
    Path folder = temp.resolve("a/b");
    try (MapFolder made = MapFolder.create(folder, FIRST)) {
      assertThat(made.map()).isEqualTo(FIRST);
      assertThat(made.readOnly()).isFalse();
      assertThat(made.notices()).isEmpty();
    }
    try (MapFolder opened = MapFolder.open(folder)) {
      assertThat(opened.map()).isEqualTo(FIRST);
    }
    assertThat(names(folder)).containsExactly("map.json", "map.lock");
  }

  @Test
  void save_afterClosing_isRefused_sinceOthersMayHaveTheMapNow() throws Exception {
    MapFolder made = MapFolder.create(temp, FIRST);
    made.close();
    assertFails(Kind.READ_ONLY, "closed", () -> made.save(SECOND));
    assertThat(read(temp)).isEqualTo(FIRST);
  }

  @Test
  void create_whereAMapIs_isRefusedAndLeavesIt() throws Exception {
    MapFolder.create(temp, FIRST).close();
    assertFails(Kind.EXISTS, "another folder", () -> MapFolder.create(temp, SECOND));
    assertThat(read(temp)).isEqualTo(FIRST);
  }

  @Test
  void create_underAFile_isRefusedAndMakesNothing() throws Exception {
    Files.writeString(temp.resolve("file"), "x");
    assertFails(
        Kind.EXISTS, "not a folder", () -> MapFolder.create(temp.resolve("file/deep/er"), FIRST));
    assertThat(names(temp)).containsExactly("file");
  }

  @Test
  void create_whenWritingFails_takesTheNewFoldersBack() throws Exception {
    Path folder = temp.resolve("a/b");
    for (int step = 1; step <= 2; step++) {
      FailingDisk disk = new FailingDisk(step, FailingDisk.FULL);
      assertFails(Kind.DISK_FULL, "Make room", () -> MapFolder.create(folder, FIRST, disk));
      assertThat(names(temp)).isEmpty();
    }
    FailingDisk unsure = new FailingDisk(3, FailingDisk.FULL);
    assertFails(Kind.FAILED, "confirm", () -> MapFolder.create(folder, FIRST, unsure));
    assertThat(names(temp)).isEmpty();
  }

  @Test
  void save_keepsTheOneBeforeAsBackup() throws Exception {
    try (MapFolder folder = MapFolder.create(temp, FIRST)) {
      folder.save(SECOND);
      assertThat(folder.map()).isEqualTo(SECOND);
    }
    assertThat(read(temp)).isEqualTo(SECOND);
    assertThat(Files.readAllBytes(temp.resolve("map.json.bak"))).isEqualTo(MapFormat.write(FIRST));
    assertThat(names(temp)).containsExactly("map.json", "map.json.bak", "map.lock");
  }

  @Test
  void save_overAFileThatOthersChanged_isRefused() throws Exception {
    try (MapFolder folder = MapFolder.create(temp, FIRST)) {
      byte[] theirs = MapFormat.write(FIRST.withInfo(MapInfo.titled("Theirs")));
      Files.write(temp.resolve("map.json"), theirs);
      assertFails(Kind.CHANGED_ON_DISK, "merge the two", () -> folder.save(SECOND));
      assertThat(Files.readAllBytes(temp.resolve("map.json"))).isEqualTo(theirs);
      assertThat(folder.map()).isEqualTo(FIRST);
    }
  }

  @Test
  void open_twice_givesTheSecondForReadingOnly() throws Exception {
    try (MapFolder first = MapFolder.create(temp, FIRST);
        MapFolder second = MapFolder.open(temp)) {
      assertThat(second.readOnly()).isTrue();
      assertThat(second.notices()).singleElement().asString().contains("reading only");
      assertThat(second.map()).isEqualTo(FIRST);
      assertFails(Kind.READ_ONLY, "open it again", () -> second.save(SECOND));
      first.save(SECOND);
    }
    try (MapFolder third = MapFolder.open(temp)) {
      assertThat(third.readOnly()).isFalse();
    }
  }

  @Test
  void openReadOnly_writesNothingIntoTheFolder() throws Exception {
    Files.write(temp.resolve("map.json"), MapFormat.write(FIRST));
    try (MapFolder opened = MapFolder.openReadOnly(temp)) {
      assertThat(opened.map()).isEqualTo(FIRST);
      assertThat(opened.readOnly()).isTrue();
    }
    assertThat(names(temp)).containsExactly("map.json");
  }

  @Test
  void open_ofWhatIsNoMapFolder_tellsSo() throws Exception {
    assertFails(Kind.MISSING, "Check the path", () -> MapFolder.open(temp.resolve("none")));
    assertFails(Kind.MISSING, "no map.json", () -> MapFolder.open(temp));
    Path file = Files.writeString(temp.resolve("file"), "x");
    assertFails(Kind.MISSING, "no folder", () -> MapFolder.open(file));
  }

  @Test
  void open_afterFailure_isNotLockedOut() throws Exception {
    assertFails(Kind.MISSING, "no map.json", () -> MapFolder.open(temp));
    Files.write(temp.resolve("map.json"), MapFormat.write(FIRST));
    try (MapFolder opened = MapFolder.open(temp)) {
      assertThat(opened.readOnly()).isFalse();
    }
  }

  @Test
  void open_withoutMapFile_takesTheBackupAndTellsSo() throws Exception {
    Files.write(temp.resolve("map.json.bak"), MapFormat.write(FIRST));
    try (MapFolder opened = MapFolder.open(temp)) {
      assertThat(opened.map()).isEqualTo(FIRST);
      assertThat(opened.notices()).singleElement().asString().contains("map.json.bak");
      opened.save(SECOND);
    }
    assertThat(read(temp)).isEqualTo(SECOND);
    assertThat(Files.readAllBytes(temp.resolve("map.json.bak"))).isEqualTo(MapFormat.write(FIRST));
  }

  @Test
  void open_ofADamagedMap_takesTheBackup_andSavingKeepsTheDamagedOneAside() throws Exception {
    byte[] broken = "{\"format\": 1, \"id".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    Files.write(temp.resolve("map.json"), broken);
    Files.write(temp.resolve("map.json.bak"), MapFormat.write(FIRST));
    try (MapFolder opened = MapFolder.open(temp)) {
      assertThat(opened.map()).isEqualTo(FIRST);
      assertThat(opened.notices()).singleElement().asString().contains("ends in the middle");
      assertThat(Files.readAllBytes(temp.resolve("map.json"))).isEqualTo(broken);
      opened.save(SECOND);
      opened.save(FIRST);
    }
    assertThat(read(temp)).isEqualTo(FIRST);
    assertThat(Files.readAllBytes(temp.resolve("map.json.damaged-1"))).isEqualTo(broken);
    assertThat(Files.readAllBytes(temp.resolve("map.json.bak"))).isEqualTo(MapFormat.write(SECOND));
  }

  @Test
  void open_ofANewerFormat_isRefusedThoughThereIsABackup_andLeftUntouched() throws Exception {
    String newer = "{\"format\": 3, \"id\": [[{}]], \"format\": 1}";
    Files.writeString(temp.resolve("map.json"), newer);
    Files.write(temp.resolve("map.json.bak"), MapFormat.write(FIRST));
    assertFails(Kind.NEWER_FORMAT, "newer version", () -> MapFolder.open(temp));
    assertThat(Files.readString(temp.resolve("map.json"))).isEqualTo(newer);
  }

  static AbstractThrowableAssert<?, ? extends Throwable> assertFails(
      Kind kind, String words, ThrowingCallable action) {
    return assertThatThrownBy(action)
        .hasMessageContaining(words)
        .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(1))
        .asInstanceOf(InstanceOfAssertFactories.throwable(StoreException.class))
        .satisfies(e -> assertThat(e.kind()).isEqualTo(kind));
  }

  private static BoardMap read(Path folder) throws StoreException {
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      return opened.map();
    }
  }

  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void closedMap_notesNothingInTheJournalOfAnother() throws Exception {
    MapFolder closed = MapFolder.create(temp.resolve("shared"), FIRST);
    closed.close();
    Path journal = temp.resolve("shared").resolve(MapFolder.JOURNAL_FILE);
    ChangeInfo edit = new ChangeInfo(SECOND.info());
    try (MapFolder other = MapFolder.open(temp.resolve("shared"))) {
      other.noteEdit(edit, edit.applyTo(FIRST));
      byte[] noted = Files.readAllBytes(journal);
      assertFails(Kind.READ_ONLY, "the map was closed", () -> closed.noteUndo(FIRST));
      assertFails(Kind.READ_ONLY, "the map was closed", closed::discardUnsaved);
      closed.close();
      assertThat(Files.readAllBytes(journal)).isEqualTo(noted);
    }
  }
}
