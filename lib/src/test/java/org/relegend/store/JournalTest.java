package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.store.MapFolderTest.names;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.ChangeInfo;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.map.RandomEdits;
import org.relegend.map.Seeds;

/** Sessions that end in the middle: what was noted is there at the next start. */
class JournalTest {
  private static final BoardMap FIRST = BoardMapSamples.random(1);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-05-06T07:08:09Z"), ZoneOffset.UTC);

  @TempDir Path temp;
  private Path folder;
  private Path journal;

  @BeforeEach
  void makeMap() throws StoreException {
    folder = temp.resolve("map");
    journal = folder.resolve(MapFolder.JOURNAL_FILE);
    MapFolder.create(folder, FIRST).close();
  }

  static LongStream seeds() {
    return Seeds.upTo(30);
  }

  /** A random session of edits, undos, redos, saves and crashes beside the history it should be. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void session_interruptedAnywhere_isRecovered(long seed) throws Exception {
    Random random = new Random(seed);
    MapFolder opened = open();
    EditHistory history = opened.history();
    try {
      for (int i = 0; i < 120; i++) {
        switch (random.nextInt(12)) {
          case 0, 1 -> {
            if (history.undo().isPresent()) {
              opened.noteUndo(history.current());
            }
          }
          case 2 -> {
            if (history.redo().isPresent()) {
              opened.noteRedo(history.current());
            }
          }
          case 3 -> opened.save(history.current());
          case 4 -> {
            opened.close(); // what the system does when the program is killed
            opened = open();
            assertThat(opened.map()).isEqualTo(history.current());
            history = opened.history();
          }
          default -> edit(opened, history, random);
        }
      }
    } finally {
      opened.close();
    }
    assertThat(recovered()).isEqualTo(history.current());
  }

  private static void edit(MapFolder opened, EditHistory history, Random random)
      throws StoreException {
    Edit edit = RandomEdits.one(history.current(), random);
    try {
      if (history.apply(edit)) {
        opened.noteEdit(edit, history.current());
      }
    } catch (EditRefusedException refused) {
      // nothing was made, so nothing is noted
    }
  }

  @Test
  void recoveredEdits_canBeUndone_andAreTold() throws Exception {
    BoardMap last = titled("one", "two");
    try (MapFolder opened = open()) {
      assertThat(opened.notices())
          .singleElement()
          .asString()
          .contains("2 unsaved steps", "2026-05-06T07:08:09Z", "Save to keep them");
      EditHistory history = opened.history();
      assertThat(history.current()).isEqualTo(last);
      assertThat(history.undo()).contains(new ChangeInfo(MapInfo.titled("two")));
      assertThat(history.undo()).isPresent();
      assertThat(history.current()).isEqualTo(FIRST);
    }
  }

  @Test
  void undoBeyondTheLastSave_isRecovered() throws Exception {
    try (MapFolder opened = open()) {
      EditHistory history = opened.history();
      apply(opened, "one");
      opened.save(history.current());
      assertThat(journal).doesNotExist();
      history.undo();
      opened.noteUndo(history.current());
    }
    assertThat(recovered()).isEqualTo(FIRST);
  }

  @Test
  void editsMadeWhileSaving_areRecovered() throws Exception {
    try (MapFolder opened = open()) {
      apply(opened, "one");
      BoardMap written = opened.history().current();
      apply(opened, "two");
      opened.save(written);
      assertThat(opened.map().info().title()).isEqualTo("one");
    }
    assertThat(recovered().info().title()).isEqualTo("two");
  }

  /** Symptom this guards against: edits made again on a map that has them already. */
  @Test
  void killBetweenTheMoveOfTheMapAndTheNewJournal_losesAndDoublesNothing() throws Exception {
    BoardMap written = titled("one");
    titled("two");
    KeepingDisk disk = new KeepingDisk(journal);
    try (MapFolder opened = MapFolder.open(folder, disk, CLOCK)) {
      opened.save(written);
    }
    Files.copy(disk.kept(), journal, StandardCopyOption.REPLACE_EXISTING);
    assertThat(recovered().info().title()).isEqualTo("two");
  }

  /** Keeps a copy of the journal as it was when the map file had just been replaced. */
  private record KeepingDisk(Path journal) implements DiskOperations {
    Path kept() {
      return journal.resolveSibling("journal-at-move");
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      REAL.write(file, content);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      REAL.move(from, to);
      if (to.endsWith(MapFolder.MAP_FILE)) {
        Files.copy(journal, kept());
      }
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
      REAL.forceFolder(folder);
    }
  }

  @Test
  void journalCutOffAnywhere_givesTheEditsThatWereWhole() throws Exception {
    titled("one", "two", "three");
    byte[] whole = Files.readAllBytes(journal);
    for (int length = 0; length <= whole.length; length++) {
      Files.write(journal, Arrays.copyOf(whole, length));
      String head = new String(whole, 0, length, StandardCharsets.UTF_8);
      long lines = head.chars().filter(c -> c == '\n').count();
      String expected =
          lines < 2 ? "Sample" : new String[] {"one", "two", "three"}[(int) lines - 2];
      try (MapFolder opened = open()) {
        assertThat(opened.map().info().title()).isEqualTo(expected);
        assertThat(opened.notices()).allSatisfy(n -> assertThat(n).doesNotContain("other name"));
      }
    }
  }

  @Test
  void edits_afterACutOffLine_areReadBack() throws Exception {
    titled("one", "two");
    byte[] whole = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(whole, whole.length - 5));
    try (MapFolder opened = open()) {
      assertThat(opened.notices()).anySatisfy(n -> assertThat(n).contains("cut off"));
      apply(opened, "three");
    }
    assertThat(recovered().info().title()).isEqualTo("three");
  }

  @Test
  void journalWithABrokenLineInTheMiddle_givesWhatStandsBefore_andIsKept() throws Exception {
    titled("one", "two", "three");
    String text = Files.readString(journal);
    Files.writeString(journal, text.replace("\"two\"", "two"));
    try (MapFolder opened = open()) {
      assertThat(opened.map().info().title()).isEqualTo("one");
      assertThat(opened.notices()).anySatisfy(n -> assertThat(n).contains("under another name"));
    }
    assertThat(folder.resolve("map.journal.aside-1")).exists();
    assertThat(recovered().info().title()).isEqualTo("one");
  }

  @Test
  void journalOfAnotherVersionOfTheMap_isNotUsed_andKept() throws Exception {
    titled("one");
    BoardMap other = FIRST.withInfo(MapInfo.titled("Other"));
    Files.write(folder.resolve(MapFolder.MAP_FILE), MapFormat.write(other));
    try (MapFolder opened = open()) {
      assertThat(opened.map()).isEqualTo(other);
      assertThat(opened.notices())
          .singleElement()
          .asString()
          .contains("belongs to another version", "under another name");
    }
    assertThat(names(folder)).contains("map.journal.aside-1").doesNotContain("map.journal");
  }

  @Test
  void journalOfANewerFormat_orNoJournalAtAll_isKeptAside() throws Exception {
    for (String text :
        new String[] {"{\"journal\":2,\"follows\":\"\"}\n{}\n", "\0\0\0\n", "hello\n"}) {
      Files.writeString(journal, text);
      try (MapFolder opened = open()) {
        assertThat(opened.map()).isEqualTo(FIRST);
        assertThat(opened.notices()).singleElement().asString().contains("can't be read");
      }
    }
    assertThat(names(folder)).contains("map.journal.aside-3");
  }

  @Test
  void discardUnsaved_leavesNothingToRecover() throws Exception {
    try (MapFolder opened = open()) {
      apply(opened, "one");
      opened.discardUnsaved();
    }
    assertThat(recovered()).isEqualTo(FIRST);
    assertThat(names(folder)).containsExactly("map.json", "map.lock");
  }

  @Test
  void openReadOnly_doesNotReplay_butTellsOfTheJournal() throws Exception {
    titled("one");
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      assertThat(opened.map()).isEqualTo(FIRST);
      assertThat(opened.notices()).singleElement().asString().contains("open the map for editing");
    }
    assertThat(recovered().info().title()).isEqualTo("one");
  }

  @Test
  void journalThatCantBeWritten_doesNotKeepTheMapFromBeingSaved() throws Exception {
    try (MapFolder opened = open()) {
      apply(opened, "one");
      Files.delete(journal);
      Files.createDirectory(journal); // a folder can't be written to, whoever runs the tests
      Files.writeString(journal.resolve("x"), "x");
      opened.save(opened.history().current());
      assertThat(opened.notices()).anySatisfy(n -> assertThat(n).contains("Edits can't be kept"));
    }
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      assertThat(opened.map().info().title()).isEqualTo("one");
    }
  }

  @Test
  void noteThatFailed_isMadeUpForByTheNext() throws Exception {
    try (MapFolder opened = open()) {
      Files.createDirectory(journal);
      EditHistory history = opened.history();
      Edit edit = new ChangeInfo(MapInfo.titled("one"));
      history.apply(edit);
      MapFolderTest.assertFails(
          StoreException.Kind.FAILED,
          "map.journal",
          () -> opened.noteEdit(edit, history.current()));
      Files.delete(journal);
      history.undo();
      opened.noteUndo(history.current());
      apply(opened, "two");
    }
    assertThat(recovered().info().title()).isEqualTo("two");
  }

  private MapFolder open() throws StoreException {
    return MapFolder.open(folder, DiskOperations.REAL, CLOCK);
  }

  private BoardMap recovered() throws StoreException {
    try (MapFolder opened = open()) {
      return opened.map();
    }
  }

  /** A session that gives the map these titles and is interrupted. */
  private BoardMap titled(String... titles) throws Exception {
    try (MapFolder opened = open()) {
      for (String title : titles) {
        apply(opened, title);
      }
      return opened.history().current();
    }
  }

  private static void apply(MapFolder opened, String title) throws Exception {
    Edit edit = new ChangeInfo(MapInfo.titled(title));
    opened.history().apply(edit);
    opened.noteEdit(edit, opened.history().current());
  }
}
