package org.relegend.map;

import java.util.stream.LongStream;

/**
 * The seeds that a law is tried on: all of them in a whole build, a tenth (four at least) while
 * working. Which it is tells the system property {@code relegend.seeds}: {@code whole}, or anything
 * else.
 */
public final class Seeds {
  private static final boolean WHOLE = "whole".equals(System.getProperty("relegend.seeds"));
  private static final int FEWEST = 4;

  private Seeds() {}

  /** The seeds 1 to {@code count}, or the first tenth of them. */
  public static LongStream upTo(int count) {
    return LongStream.rangeClosed(1, some(count));
  }

  /** So many of {@code count} runs as are wanted now. */
  public static int some(int count) {
    return WHOLE ? count : Math.min(count, Math.max(FEWEST, count / 10));
  }
}
