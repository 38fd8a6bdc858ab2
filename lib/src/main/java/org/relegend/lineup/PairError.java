package org.relegend.lineup;

/**
 * How one pair lies to a fit; lengths in units of the second picture.
 *
 * @param pair its index in the list given to the fitter, from 0
 * @param used whether the fit uses it; otherwise it was left out as wrong
 * @param residual distance of its second point from where the fit carries the first
 * @param leaveOneOut the same distance when the fit is made without this pair: the error the pair
 *     speaks of, undisguised by its own pull; infinite where the other pairs fix no fit
 * @param odds how probable so large a disagreement is for a right pair, the number of pairs allowed
 *     for; 1 where nothing can be said
 */
public record PairError(int pair, boolean used, double residual, double leaveOneOut, double odds) {

  /** Odds below which a pair is worth another look. */
  private static final double DOUBTFUL = 0.05;

  public boolean doubtful() {
    return !used || odds < DOUBTFUL;
  }
}
