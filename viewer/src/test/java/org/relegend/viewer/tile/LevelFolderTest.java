package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LevelFolderTest {
  private static final String ONE = "1".repeat(64);
  private static final String TWO = "2".repeat(64);
  private static final String THREE = "3".repeat(64);

  @TempDir Path place;

  @Test
  void keptTiles_areReadBackEqual_alsoWhileOthersAreAdded() throws Exception {
    LevelFolder folder = folder(1 << 20, 0);
    Path part = folder.part(ONE);
    try (LevelFile growing = LevelFile.create(part)) {
      for (int i = 0; i < 40; i++) {
        growing.add(new TileKey(i % 3, i, -i), content(i));
        assertThat(growing.read(new TileKey(i % 3, i, -i))).isEqualTo(content(i));
      }
      assertThat(folder.open(ONE)).isEmpty();
      growing.complete(part, folder.place(ONE));
    }
    try (LevelFile kept = folder.open(ONE).orElseThrow()) {
      assertThat(kept.count()).isEqualTo(40);
      for (int i = 0; i < 40; i++) {
        assertThat(kept.read(new TileKey(i % 3, i, -i))).isEqualTo(content(i));
      }
      assertThat(kept.has(new TileKey(9, 9, 9))).isFalse();
      assertThatThrownBy(() -> kept.read(new TileKey(9, 9, 9))).isInstanceOf(IOException.class);
    }
  }

  @Test
  void damagedFile_countsAsNotKept() throws Exception {
    LevelFolder folder = folder(1 << 20, 0);
    keep(folder, ONE, 8, 100);
    byte[] good = Files.readAllBytes(folder.place(ONE));
    Random random = new Random(4);
    for (int i = 0; i < 200; i++) {
      byte[] bad =
          random.nextBoolean()
              ? Arrays.copyOf(good, random.nextInt(good.length))
              : flipped(good, good.length - 1 - random.nextInt(8 * 24 + 24));
      Files.write(folder.place(ONE), bad);
      Optional<LevelFile> opened = folder.open(ONE);
      assertThat(opened).as("change %d", i).isEmpty();
    }
    Files.write(folder.place(ONE), new byte[0]);
    assertThat(folder.open(ONE)).isEmpty();
    Files.delete(folder.place(ONE));
    assertThat(folder.open(ONE)).isEmpty();
  }

  @Test
  void tidy_deletesTheOnesNotOpenedForTheLongest() throws Exception {
    keep(folder(0, 0), ONE, 4, 1000);
    keep(folder(0, 0), TWO, 4, 1000);
    keep(folder(0, 0), THREE, 4, 1000);
    folder(0, 2000).open(TWO).orElseThrow().close();
    folder(0, 3000).open(ONE).orElseThrow().close();
    folder(0, 1000).open(THREE).orElseThrow().close();

    folder(2 * Files.size(folder(0, 0).place(ONE)), 4000).tidy();

    try (Stream<Path> files = Files.list(place.resolve("levels"))) {
      assertThat(files).containsExactlyInAnyOrder(folder(0, 0).place(ONE), folder(0, 0).place(TWO));
    }
  }

  @Test
  void tidy_withoutAFolder_doesNothing() throws Exception {
    folder(1, 0).tidy();

    assertThat(place).isEmptyDirectory();
  }

  private LevelFolder folder(long maxBytes, long second) {
    Clock clock = Clock.fixed(Instant.ofEpochSecond(1_000_000 + second), ZoneOffset.UTC);
    return new LevelFolder(place.resolve("levels"), maxBytes, clock);
  }

  private static void keep(LevelFolder folder, String sha256, int count, int size)
      throws IOException {
    Path part = folder.part(sha256);
    try (LevelFile growing = LevelFile.create(part)) {
      for (int i = 0; i < count; i++) {
        growing.add(new TileKey(0, i, 0), new byte[size]);
      }
      growing.complete(part, folder.place(sha256));
    }
  }

  private static byte[] flipped(byte[] content, int place) {
    byte[] changed = content.clone();
    changed[place] ^= 0x41;
    return changed;
  }

  private static byte[] content(int i) {
    byte[] bytes = new byte[i * 7];
    new Random(i).nextBytes(bytes);
    return bytes;
  }
}
