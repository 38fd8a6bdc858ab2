package org.relegend.benchmark;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;

/**
 * Lining up the demo's two component photos, 12 megapixels each, once they are decoded; against
 * decoding the two files. Aim: no more than 6 times as long. Run it from the root, as the others.
 *
 * <pre>
 * mvn -B -ntp -q -pl lib test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *   "-Dexec.args=-cp %classpath org.relegend.benchmark.LineUpBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 8)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class LineUpBenchmark {
  private static final Path DEMO = Path.of("demo-data").toAbsolutePath();
  private static final Path ONE = demo("map/photos/component.jpg");
  private static final Path OTHER = demo("other-unit/component.jpg");

  private BufferedImage one = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
  private BufferedImage other = one;

  /** Maven starts it in the module or at the root. */
  private static Path demo(String file) {
    Path here = DEMO.resolve(file);
    return here.toFile().isFile() ? here : Path.of("..", "demo-data").resolve(file);
  }

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(LineUpBenchmark.class.getSimpleName() + "\\.").build())
        .run();
  }

  @Setup(Level.Trial)
  public void decodeBoth() throws IOException {
    one = ImageIO.read(ONE.toFile());
    other = ImageIO.read(OTHER.toFile());
  }

  @Benchmark
  public PhotoResult linedUp() {
    PhotoResult result = PhotoLineUp.of(GreyImage.of(one), GreyImage.of(other));
    if (!(result instanceof PhotoResult.Aligned)) {
      throw new IllegalStateException("not lined up: " + result);
    }
    return result;
  }

  @Benchmark
  public void decoded(Blackhole hole) throws IOException {
    hole.consume(ImageIO.read(ONE.toFile()));
    hole.consume(ImageIO.read(OTHER.toFile()));
  }
}
