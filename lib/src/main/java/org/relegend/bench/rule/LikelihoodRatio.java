package org.relegend.bench.rule;

import org.relegend.map.PartId;

/**
 * How a finding bears on one part.
 *
 * @param factor by how much the finding is likelier if this part is at fault than if it is not:
 *     above 1 it accuses, below it excuses
 * @param reason in plain words
 */
public record LikelihoodRatio(PartId part, double factor, String reason) {
  /** The readings can hardly be otherwise explained. */
  public static final double STRONG = 100;

  /** Fits well, other explanations do too. */
  public static final double MEDIUM = 10;

  /** One of several possibilities. */
  public static final double WEAK = 3;

  /** Behaves as it should. */
  public static final double EXCUSED = 0.2;

  public LikelihoodRatio {
    if (!(factor > 0) || !Double.isFinite(factor)) {
      throw new IllegalArgumentException("a factor lies above 0: " + factor);
    }
  }
}
