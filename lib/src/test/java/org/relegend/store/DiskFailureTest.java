package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.relegend.store.MapFolderTest.assertFails;
import static org.relegend.store.MapFolderTest.names;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.store.StoreException.Kind;

/** Each step of saving fails once, in each way a disk can fail. */
class DiskFailureTest {
  private static final BoardMap FIRST = BoardMapSamples.random(1);
  private static final BoardMap SECOND = BoardMapSamples.random(2);

  /** Write the new file, write the backup, move it, move the new file, force the folder. */
  private static final int STEPS = 5;

  @TempDir Path temp;

  static Stream<Arguments> failures() {
    return Stream.of(1, 2, 3, 4, 5)
        .flatMap(
            step ->
                Stream.of(
                    Arguments.of(step, "full disk", FailingDisk.FULL, Kind.DISK_FULL),
                    Arguments.of(step, "no rights", FailingDisk.NO_RIGHTS, Kind.NO_RIGHTS),
                    Arguments.of(step, "other", OTHER, Kind.FAILED)));
  }

  private static final Function<Path, IOException> OTHER =
      path -> new IOException("Input/output error");

  @Test
  void saving_takesAsManyStepsAsAreTried() throws Exception {
    FailingDisk disk = new FailingDisk(0, FailingDisk.FULL);
    MapFolder.create(temp, FIRST).close();
    try (MapFolder folder = MapFolder.open(temp, disk, Clock.systemUTC())) {
      folder.save(SECOND);
    }
    assertThat(disk.steps()).isEqualTo(STEPS);
  }

  @ParameterizedTest(name = "step {0}, {1}")
  @MethodSource("failures")
  void save_whenAStepFails_isOneClearError_andLeavesTheOldMapOrTheNew(
      int step, String name, Function<Path, IOException> trouble, Kind kind) throws Exception {
    MapFolder.create(temp, FIRST).close();
    try (MapFolder folder =
        MapFolder.open(temp, new FailingDisk(step, trouble), Clock.systemUTC())) {
      assertFails(
          step == STEPS ? Kind.FAILED : kind,
          step == STEPS ? "did not confirm" : "nothing was changed",
          () -> folder.save(SECOND));
      assertThat(folder.map()).isEqualTo(FIRST);
    }
    assertThat(names(temp)).noneMatch(file -> file.endsWith(".tmp"));
    try (MapFolder folder = MapFolder.open(temp)) {
      assertThat(folder.map()).isEqualTo(step == STEPS ? SECOND : FIRST);
      assertThat(folder.notices()).isEmpty();
    }
  }

  @Test
  void save_afterAFailure_worksOnceThereIsRoom() throws Exception {
    MapFolder.create(temp, FIRST).close();
    for (int step = 1; step <= STEPS; step++) {
      FailingDisk disk = new FailingDisk(step, FailingDisk.FULL);
      try (MapFolder folder = MapFolder.open(temp, disk, Clock.systemUTC())) {
        BoardMap next = step % 2 == 0 ? FIRST : SECOND;
        assertFails(
            step == STEPS ? Kind.FAILED : Kind.DISK_FULL,
            temp.resolve("map.json").toString(),
            () -> folder.save(next));
        folder.save(next);
        assertThat(folder.map()).isEqualTo(next);
      }
    }
  }

  @Test
  void folderWithoutRights_opensForReadingOnly_andCreatingThereFails() throws Exception {
    assumeTrue(!isRoot(), "the rights of files don't bind the user root, who runs this test");
    MapFolder.create(temp, FIRST).close();
    Files.delete(temp.resolve("map.lock"));
    Files.setPosixFilePermissions(temp, PosixFilePermissions.fromString("r-xr-xr-x"));
    try (MapFolder folder = MapFolder.open(temp)) {
      assertThat(folder.readOnly()).isTrue();
      assertThat(folder.notices()).singleElement().asString().contains("can't be written to");
    }
    assertFails(Kind.NO_RIGHTS, "rights", () -> MapFolder.create(temp.resolve("new"), FIRST));
    Files.setPosixFilePermissions(temp, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private boolean isRoot() throws IOException {
    return Files.getOwner(temp).getName().equals("root");
  }

  /** The system's own word for a full disk, not one made up here. */
  @Test
  void aDiskThatIsReallyFull_isTold() {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "only Linux has a device that is always full");
    IOException trouble =
        catchThrowableOfType(
            IOException.class, () -> DiskOperations.REAL.write(full, new byte[100]));
    assertThat(DiskErrors.writing(trouble, full).kind()).isEqualTo(Kind.DISK_FULL);
  }

  @Test
  void aPathWithALineBreak_staysOneLine() {
    Path odd = temp.resolve("a\nb\u202E");
    assertFails(Kind.MISSING, "a<U+000A>b<U+202E>: there is no", () -> MapFolder.open(odd));
  }
}
