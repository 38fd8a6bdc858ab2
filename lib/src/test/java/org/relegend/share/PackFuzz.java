package org.relegend.share;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.EditHistory;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.RandomEdits;
import org.relegend.map.Side;
import org.relegend.scan.PictureSamples;
import org.relegend.store.Digests;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Packs and maps damaged at random from a seed: bytes of the archive, bytes of the map and of the
 * manifest inside an archive that is whole again, sizes, names and pictures. Whatever comes, only
 * the declared errors may come of it, nothing may be written outside the target, and neither time
 * nor memory may run away. {@code main} takes the number of files and prints what came of them.
 */
final class PackFuzz {
  /** Of this thread's own work, since the machine may do other things meanwhile. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  /** No damaged file may take longer; an honest one of this size takes some milliseconds. */
  private static final long MAX_MILLIS = 5_000;

  private static final byte[] TELLING =
      "{}[]\",:0-9eE.\\/PK\1\2\3\4\5\6\0\177\u00ff".getBytes(StandardCharsets.ISO_8859_1);

  /** What came of some files. */
  record Outcome(long taken, long refused, long slowestMillis) {}

  private final Path folder;
  private final byte[] photo;

  PackFuzz(Path folder) throws IOException {
    this.folder = folder;
    photo = PictureSamples.jpeg(PictureSamples.discs(32, 24, 1), false);
  }

  Outcome run(long firstSeed, long count) throws IOException {
    long taken = 0;
    long slowest = 0;
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      long start = CLOCK.getCurrentThreadCpuTime();
      if (one(seed)) {
        taken++;
      }
      long millis = (CLOCK.getCurrentThreadCpuTime() - start) / 1_000_000;
      slowest = Math.max(slowest, millis);
      if (millis > MAX_MILLIS) {
        throw new AssertionError("seed " + seed + " took " + millis + " ms");
      }
    }
    return new Outcome(taken, count - taken, slowest);
  }

  private boolean one(long seed) throws IOException {
    Path file = folder.resolve("fuzz.relegend-pack");
    Path out = folder.resolve("out");
    boolean taken = isTaken(seed, file, out);
    Set<String> left = new HashSet<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(path -> left.add(path.getFileName().toString()));
    }
    left.remove("out");
    left.remove("fuzz.relegend-pack");
    if (!left.isEmpty() || !taken && Files.exists(out)) {
      throw new AssertionError("seed " + seed + " left " + left);
    }
    if (taken && Files.exists(out)) {
      StagedFolder.delete(out);
    }
    return taken;
  }

  private boolean isTaken(long seed, Path file, Path out) throws IOException {
    Random random = new Random(seed);
    try {
      if (random.nextInt(3) == 0) {
        MapFormat.read(damaged(MapFormat.write(map(random)), random), file);
        return true;
      }
      Files.write(file, pack(random));
      try (PackReader unpack = PackReader.open(file)) {
        unpack.into(out);
      }
      return true;
    } catch (ShareException | StoreException declared) {
      String message = String.valueOf(declared.getMessage());
      if (message.isBlank() || message.contains("\n")) {
        throw new AssertionError("seed " + seed + ": " + message, declared);
      }
      return false;
    } catch (RuntimeException | Error other) {
      throw new AssertionError("seed " + seed, other);
    }
  }

  private BoardMap map(Random random) {
    EditHistory history = new EditHistory(BoardMapSamples.generated(random.nextInt(50), 4, 2));
    RandomEdits.applySome(history, random.nextInt(50));
    BoardMap map = history.current();
    return map.with(
        MapTables.PICTURES,
        map.pictures()
            .with(
                new Photo(
                    new PictureId("p"),
                    "",
                    "photos/p.jpg",
                    BoardMapSamples.MAIN,
                    Side.COMPONENT,
                    BoardTurn.UNKNOWN,
                    Digests.sha256(photo),
                    32,
                    24)));
  }

  private byte[] pack(Random random) throws IOException {
    int where = random.nextInt(6);
    byte[] picture = where == 0 ? damaged(photo, random) : photo;
    BoardMap map = map(random);
    if (where == 0) {
      Photo result = (Photo) map.picture(new PictureId("p")).orElseThrow();
      map =
          map.with(
              MapTables.PICTURES,
              map.pictures()
                  .with(
                      new Photo(
                          result.id(),
                          "",
                          result.file(),
                          result.board(),
                          result.side(),
                          result.turn(),
                          Digests.sha256(picture),
                          32,
                          24)));
    }
    List<Zips.File> files = Zips.pack(map, Map.of("photos/p.jpg", picture));
    if (where == 1) { // a damaged map that its manifest knows
      byte[] text = damaged(files.get(1).content, random);
      List<Manifest.Entry> entries =
          List.of(
              new Manifest.Entry("map.json", text.length, Digests.sha256(text)),
              new Manifest.Entry("photos/p.jpg", picture.length, Digests.sha256(picture)));
      files.set(0, new Zips.File("manifest.json", new Manifest(map.id(), entries).bytes()));
      files.set(1, new Zips.File("map.json", text));
    } else if (where == 2) {
      files.set(0, new Zips.File("manifest.json", damaged(files.get(0).content, random)));
    } else if (where == 3) {
      Zips.File bent = files.get(random.nextInt(files.size()));
      bent.text = random.nextInt();
      bent.attributes = random.nextInt();
    }
    if (random.nextBoolean()) {
      files.get(1).deflated();
    }
    byte[] bytes = Zips.of(files);
    return where > 3 ? damaged(bytes, random) : bytes;
  }

  static byte[] damaged(byte[] bytes, Random random) {
    byte[] result = bytes.clone();
    for (int i = random.nextInt(4); i >= 0 && result.length > 2; i--) {
      int at = random.nextInt(result.length);
      int length = 1 + random.nextInt(Math.min(40, result.length - at));
      switch (random.nextInt(6)) {
        case 0 -> result[at] ^= (byte) (1 << random.nextInt(8));
        case 1 -> result[at] = TELLING[random.nextInt(TELLING.length)];
        case 2 -> result = Arrays.copyOf(result, at);
        case 3 -> Arrays.fill(result, at, at + length, (byte) (random.nextBoolean() ? 0 : 0xFF));
        case 4 -> result = spliced(result, at, at + length, new byte[0]);
        default -> {
          int from = random.nextInt(result.length);
          int end = Math.min(result.length, from + length);
          result = spliced(result, at, at, Arrays.copyOfRange(result, from, end));
        }
      }
    }
    return result;
  }

  private static byte[] spliced(byte[] bytes, int from, int to, byte[] added) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    out.writeBytes(added);
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }

  public static void main(String[] arguments) throws IOException {
    long count = arguments.length == 0 ? 100_000 : Long.parseLong(arguments[0]);
    Path folder = Files.createTempDirectory("relegend-fuzz");
    long start = System.nanoTime();
    Outcome outcome = new PackFuzz(folder).run(1, count);
    System.out.printf(
        "%,d files: %,d taken, %,d refused with a declared error, slowest %d ms, %d s in all,"
            + " heap up to %d MB%n",
        count,
        outcome.taken(),
        outcome.refused(),
        outcome.slowestMillis(),
        (System.nanoTime() - start) / 1_000_000_000,
        Runtime.getRuntime().totalMemory() >> 20);
    StagedFolder.delete(folder);
  }
}
