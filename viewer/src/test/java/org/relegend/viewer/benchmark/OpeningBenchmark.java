package org.relegend.viewer.benchmark;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.relegend.map.BoardId;
import org.relegend.map.BoardTurn;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.scan.PictureSamples;
import org.relegend.store.Digests;
import org.relegend.store.StoreException;
import org.relegend.viewer.tile.PictureLibrary;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.PictureStatus;
import org.relegend.viewer.tile.TileAnswer;
import org.relegend.viewer.tile.TileKey;

/**
 * A photo of 48 megapixels: time to its first picture and the heap it takes, at the first opening
 * (with a preview in the file, as cameras put one there, and without) and at later ones, against a
 * full decode by ImageIO. Each measurement has a virtual machine of its own, which has opened a
 * small photo in the same way before; the ways take turns. The heap is the smallest one, in steps
 * of 8 MB, in which the way comes to its end, all levels written. Aims: 40 % of time and memory at
 * first, 10 % of the time later. Run it from the root, with a class path as {@code mvn
 * dependency:build-classpath} gives:
 *
 * <pre>
 * mvn -B -ntp -q -pl viewer -am test-compile exec:exec -Dexec.executable=java \
 *   -Dexec.classpathScope=test "-Dexec.args=-cp %classpath org.relegend.viewer.benchmark.OpeningBenchmark"
 * </pre>
 */
public final class OpeningBenchmark {
  private static final int WIDTH = 8000;
  private static final int HEIGHT = 6000;
  private static final int ROUNDS = 7;
  private static final int HEAP_STEP = 8;
  private static final int MOST_HEAP = 512;
  private static final int PATIENCE_SECONDS = 30;

  /** The ways to the picture, the baseline first. */
  private enum Way {
    IMAGE_IO,
    FIRST_OPENING,
    FIRST_WITH_PREVIEW,
    LATER_OPENING;

    String photo() {
      return this == FIRST_WITH_PREVIEW ? "preview.jpg" : "photo.jpg";
    }
  }

  private OpeningBenchmark() {}

  /** Without arguments all of it; with a way, a folder and a cache just that, in this machine. */
  public static void main(String[] args) throws Exception {
    if (args.length == 3) {
      measure(Way.valueOf(args[0]), Path.of(args[1]), Path.of(args[2]));
      return;
    }
    Path folder = Files.createTempDirectory("opening");
    try {
      BufferedImage photo = PictureSamples.discs(WIDTH, HEIGHT, 1);
      byte[] plain = PictureSamples.jpeg(photo, false);
      Files.write(folder.resolve("photo.jpg"), plain);
      byte[] small = PictureSamples.jpeg(PictureSamples.discs(160, 120, 1), false);
      Files.write(folder.resolve("preview.jpg"), PictureSamples.withThumbnail(plain, small));
      report(folder);
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private static void report(Path folder) throws Exception {
    Map<Way, List<Double>> millis = new EnumMap<>(Way.class);
    for (int round = 0; round < ROUNDS; round++) {
      for (Way way : Way.values()) {
        Path cache =
            folder.resolve("cache-" + (way == Way.LATER_OPENING ? "kept" : round + "" + way));
        if (way == Way.LATER_OPENING && round == 0) {
          run(Way.FIRST_OPENING, folder, cache, MOST_HEAP).orElseThrow();
        }
        double time = run(way, folder, cache, MOST_HEAP).orElseThrow();
        millis.computeIfAbsent(way, w -> new ArrayList<>()).add(time);
      }
    }
    double baseTime = median(millis, Way.IMAGE_IO);
    int baseHeap = smallestHeap(Way.IMAGE_IO, folder);
    for (Way way : Way.values()) {
      double time = median(millis, way);
      int heap = smallestHeap(way, folder);
      System.out.printf(
          Locale.ROOT,
          "%-18s first picture %7.0f ms (%3.0f %%)  smallest heap %4d MB (%3.0f %%)%n",
          way,
          time,
          100 * time / baseTime,
          heap,
          100.0 * heap / baseHeap);
    }
  }

  /** In megabytes, found by halving. */
  private static int smallestHeap(Way way, Path folder) throws Exception {
    int enough = MOST_HEAP / HEAP_STEP;
    int small = 0;
    while (enough - small > 1) {
      int middle = (enough + small) / 2;
      Path cache = folder.resolve(way == Way.LATER_OPENING ? "cache-kept" : "heap-" + way + middle);
      if (run(way, folder, cache, middle * HEAP_STEP).isPresent()) {
        enough = middle;
      } else {
        small = middle;
      }
    }
    return enough * HEAP_STEP;
  }

  /** Milliseconds; nothing where the heap was too small. */
  private static OptionalDouble run(Way way, Path folder, Path cache, int heap)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-XX:+UseSerialGC",
                "-Xmx" + heap + "m",
                "-cp",
                System.getProperty("java.class.path"),
                OpeningBenchmark.class.getName(),
                way.name(),
                folder.toString(),
                cache.toString()));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (!ended) {
      process.destroyForcibly().waitFor(); // thrashing in too small a heap
    }
    try (InputStream result = process.getInputStream()) {
      String word = new String(result.readAllBytes(), StandardCharsets.UTF_8).strip();
      return ended && process.exitValue() == 0
          ? OptionalDouble.of(Double.parseDouble(word))
          : OptionalDouble.empty();
    }
  }

  private static void measure(Way way, Path folder, Path cache) throws Exception {
    Path warm = Files.createTempDirectory("warm");
    Files.write(
        warm.resolve("small.jpg"), PictureSamples.jpeg(PictureSamples.discs(640, 480, 1), false));
    show(way, photo(warm.resolve("small.jpg"), 640, 480), warm, warm.resolve("cache"));
    if (way == Way.LATER_OPENING) {
      show(way, photo(warm.resolve("small.jpg"), 640, 480), warm, warm.resolve("cache"));
    }
    double millis = show(way, photo(folder.resolve(way.photo()), WIDTH, HEIGHT), folder, cache);
    System.out.printf(Locale.ROOT, "%.1f%n", millis);
    System.exit(0);
  }

  private static Photo photo(Path file, int width, int height) throws StoreException {
    return new Photo(
        new PictureId("photo"),
        "",
        String.valueOf(file.getFileName()),
        new BoardId("main"),
        Side.COMPONENT,
        BoardTurn.UNKNOWN,
        Digests.sha256(file),
        width,
        height);
  }

  /** Milliseconds to the first picture; returns when all is done that opening does. */
  private static double show(Way way, Photo photo, Path folder, Path cache) throws Exception {
    long start = System.nanoTime();
    if (way != Way.IMAGE_IO) {
      return open(photo, folder, cache, start);
    }
    BufferedImage whole = ImageIO.read(folder.resolve(photo.file()).toFile());
    double millis = (System.nanoTime() - start) / 1e6;
    if (whole.getWidth() != (int) photo.width()) {
      throw new IllegalStateException("another picture");
    }
    return millis;
  }

  private static double open(Photo photo, Path folder, Path cache, long start)
      throws InterruptedException {
    long memory = (long) (0.4 * Runtime.getRuntime().maxMemory()); // as the viewer has it
    PictureLibrary library = new PictureLibrary(cache, memory, Runnable::run);
    PictureSource source = library.open(photo, folder);
    TileKey whole = new TileKey(source.coarsestLevel(), 0, 0);
    CountDownLatch shown = new CountDownLatch(1);
    CountDownLatch ready = new CountDownLatch(1);
    double[] millis = new double[1];
    Runnable look =
        () -> {
          if (shown.getCount() > 0 && source.tile(whole) instanceof TileAnswer.Ready) {
            millis[0] = (System.nanoTime() - start) / 1e6;
            shown.countDown();
          }
          if (source.status() instanceof PictureStatus.Ready) {
            ready.countDown();
          } else if (source.status() instanceof PictureStatus.Failed failed) {
            System.err.println(failed.reason());
            System.exit(1);
          }
        };
    source.addListener(look);
    source.want("benchmark", List.of(whole));
    look.run();
    shown.await();
    ready.await();
    library.close();
    return millis[0];
  }

  private static double median(Map<Way, List<Double>> values, Way way) {
    List<Double> sorted = values.getOrDefault(way, List.of()).stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
