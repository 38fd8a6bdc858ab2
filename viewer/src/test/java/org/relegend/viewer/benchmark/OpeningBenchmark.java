package org.relegend.viewer.benchmark;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.relegend.map.BoardId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.map.Turn;
import org.relegend.scan.PictureSamples;
import org.relegend.store.Digests;
import org.relegend.viewer.tile.PictureLibrary;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.PictureStatus;
import org.relegend.viewer.tile.TileAnswer;
import org.relegend.viewer.tile.TileKey;

/**
 * A photo of 48 megapixels: time to its first picture and peak heap, at the first opening and at
 * later ones, against a full decode by ImageIO. Each measurement has a virtual machine of its own;
 * the ways take turns. Aims: 40 % of time and memory at first, 10 % of the time later. Run it from
 * the root, with a class path as {@code mvn dependency:build-classpath} gives:
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
  private static final long MEMORY = 256L << 20;

  /** The ways to the picture, the baseline first. */
  private enum Way {
    IMAGE_IO,
    FIRST_OPENING,
    LATER_OPENING
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
      ImageIO.write(
          PictureSamples.discs(WIDTH, HEIGHT, 1), "jpg", folder.resolve("photo.jpg").toFile());
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
    Map<Way, List<Double>> peaks = new EnumMap<>(Way.class);
    for (int round = 0; round < ROUNDS; round++) {
      for (Way way : Way.values()) {
        Path cache = folder.resolve("cache-" + (way == Way.FIRST_OPENING ? round : "kept"));
        if (way == Way.LATER_OPENING && round == 0) {
          run(Way.FIRST_OPENING, folder, cache);
        }
        double[] result = run(way, folder, cache);
        millis.computeIfAbsent(way, w -> new ArrayList<>()).add(result[0]);
        peaks.computeIfAbsent(way, w -> new ArrayList<>()).add(result[1]);
      }
    }
    double baseTime = median(millis, Way.IMAGE_IO);
    double basePeak = median(peaks, Way.IMAGE_IO);
    for (Way way : Way.values()) {
      double time = median(millis, way);
      double peak = median(peaks, way);
      System.out.printf(
          Locale.ROOT,
          "%-14s first picture %7.0f ms (%3.0f %%)  peak heap %5.0f MB (%3.0f %%)%n",
          way,
          time,
          100 * time / baseTime,
          peak,
          100 * peak / basePeak);
    }
  }

  private static double[] run(Way way, Path folder, Path cache)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-XX:+UseSerialGC",
                "-Xmn16m",
                "-cp",
                System.getProperty("java.class.path"),
                OpeningBenchmark.class.getName(),
                way.name(),
                folder.toString(),
                cache.toString()));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    try (InputStream told = process.getInputStream()) {
      String[] words =
          new String(told.readAllBytes(), StandardCharsets.UTF_8).strip().split(" ", -1);
      if (process.waitFor() != 0 || words.length != 2) {
        throw new IllegalStateException(way + " failed: " + Arrays.toString(words));
      }
      return new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1])};
    }
  }

  private static void measure(Way way, Path folder, Path cache) throws Exception {
    Path file = folder.resolve("photo.jpg");
    BufferedImage warm = new BufferedImage(64, 64, BufferedImage.TYPE_3BYTE_BGR);
    Path small = Files.createTempFile("warm", ".jpg");
    ImageIO.write(warm, "jpg", small.toFile());
    ImageIO.read(small.toFile());
    Files.delete(small);
    Photo photo =
        new Photo(
            new PictureId("photo"),
            "",
            "photo.jpg",
            new BoardId("main"),
            Side.COMPONENT,
            Turn.UNKNOWN,
            Digests.sha256(file),
            WIDTH,
            HEIGHT);
    System.gc();
    List<MemoryPoolMXBean> heap =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();
    heap.forEach(MemoryPoolMXBean::resetPeakUsage);
    long start = System.nanoTime();
    double millis;
    if (way == Way.IMAGE_IO) {
      BufferedImage whole = ImageIO.read(file.toFile());
      millis = (System.nanoTime() - start) / 1e6;
      if (whole.getWidth() != WIDTH) {
        throw new IllegalStateException("another picture");
      }
    } else {
      millis = open(photo, folder, cache, start);
    }
    long peak = heap.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    System.out.printf(Locale.ROOT, "%.1f %.1f%n", millis, peak / 1e6);
    System.exit(0);
  }

  /** Milliseconds to the first picture; returns when all levels are kept on the disk. */
  private static double open(Photo photo, Path folder, Path cache, long start)
      throws InterruptedException {
    PictureLibrary library = new PictureLibrary(cache, MEMORY, Runnable::run);
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
          }
        };
    source.addListener(look);
    source.want("benchmark", List.of(whole));
    look.run();
    shown.await();
    ready.await();
    return millis[0];
  }

  private static double median(Map<Way, List<Double>> values, Way way) {
    List<Double> sorted = values.getOrDefault(way, List.of()).stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
