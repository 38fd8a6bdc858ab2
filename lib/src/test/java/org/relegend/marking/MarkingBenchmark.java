package org.relegend.marking;

import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Reading the value texts of a parts list, against one match of a regular expression that tells
 * number, prefix letter and rest apart and computes nothing.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 5, time = 1)
public class MarkingBenchmark {
  private static final String[] TEXTS = {
    "4k7", "4k7 0.5W", "100k", "2M2", "10R 1W", "1k5", "330k", "10k preset", "47k", "0R47"
  };

  private static final Pattern BASELINE =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)([RkKMGm]?)(\\d*)([BCDFGJKM]?)(?:\\s+(.*))?");

  @Benchmark
  @OperationsPerInvocation(10)
  public void read(Blackhole hole) {
    for (String text : TEXTS) {
      hole.consume(ComponentValues.read(text, Quantity.RESISTANCE));
    }
  }

  @Benchmark
  @OperationsPerInvocation(10)
  public void regexBaseline(Blackhole hole) {
    for (String text : TEXTS) {
      Matcher matcher = BASELINE.matcher(text);
      hole.consume(matcher.matches() ? matcher.group(1) : text);
    }
  }
}
