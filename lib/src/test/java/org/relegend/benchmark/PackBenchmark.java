package org.relegend.benchmark;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.scan.PictureSamples;
import org.relegend.scan.Progress;
import org.relegend.share.PackOptions;
import org.relegend.share.PackReader;
import org.relegend.share.PackReport;
import org.relegend.share.PackWriter;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;

/**
 * Packing and unpacking a map with ten photos of 12 megapixels (stripped, digested, checked),
 * against {@code java.util.zip} with the same files. Aim: no more than 1.5 times as long. Run it
 * from the root:
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.PackBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class PackBenchmark {
  private static final int PHOTOS = 10;

  private Path work = Path.of("");
  private Path folder = Path.of("");
  private int count;

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(PackBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  /** Makes the map, the pack and the plain archive. */
  @Setup
  public void make() throws Exception {
    work = Files.createTempDirectory("pack-benchmark");
    folder = work.resolve("map");
    Files.createDirectories(folder.resolve("photos"));
    BoardMap map = BoardMapSamples.generated(1, 100, 2);
    for (int i = 0; i < PHOTOS; i++) {
      byte[] jpeg = PictureSamples.jpeg(PictureSamples.discs(4000, 3000, i), false);
      String file = "photos/p" + i + ".jpg";
      Files.write(folder.resolve(file), jpeg);
      map =
          map.with(
              MapTables.PICTURES,
              map.pictures()
                  .with(
                      new Photo(
                          new PictureId("p" + i),
                          "",
                          file,
                          BoardMapSamples.MAIN,
                          Side.COMPONENT,
                          BoardTurn.UNKNOWN,
                          Digests.sha256(jpeg),
                          4000,
                          3000)));
    }
    MapFolder.create(folder, map).close();
    Files.deleteIfExists(folder.resolve(MapFolder.LOCK_FILE));
    pack(work.resolve("ours"));
    zip(work.resolve("plain"));
  }

  /** Removes what was made. */
  @TearDown
  public void remove() throws IOException {
    delete(work);
  }

  private static void delete(Path tree) throws IOException {
    try (Stream<Path> all = Files.walk(tree)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private PackReport pack(Path target) throws Exception {
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      return PackWriter.write(opened, target, PackOptions.DEFAULT, Progress.UNWATCHED);
    }
  }

  private void zip(Path target) throws IOException {
    try (ZipOutputStream zip =
            new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(target)));
        Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        zip.putNextEntry(new ZipEntry(folder.relativize(file).toString()));
        Files.copy(file, zip);
        zip.closeEntry();
      }
    }
  }

  @Benchmark
  public PackReport pack() throws Exception {
    Path target = work.resolve("a" + count++);
    PackReport report = pack(target);
    Files.delete(target);
    return report;
  }

  @Benchmark
  public void packPlainZip() throws IOException {
    Path target = work.resolve("b" + count++);
    zip(target);
    Files.delete(target);
  }

  @Benchmark
  public int unpack() throws Exception {
    Path target = work.resolve("c" + count++);
    try (PackReader pack = PackReader.open(work.resolve("ours"))) {
      int missing = pack.into(target).size();
      delete(target);
      return missing;
    }
  }

  @Benchmark
  public int unpackPlainZip() throws IOException {
    Path target = Files.createDirectory(work.resolve("d" + count++));
    int files = 0;
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(work.resolve("plain")))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Path place = target.resolve(entry.getName());
        Files.createDirectories(place.getParent() == null ? target : place.getParent());
        Files.copy(zip, place);
        files++;
      }
    }
    delete(target);
    return files;
  }
}
