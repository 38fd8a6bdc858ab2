package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

/** Something about a fit that the user should know before trusting it. */
public record FitWarning(Kind kind, String message) {

  /** What is the matter. */
  public enum Kind {
    /** Pairs were left out because they disagree with the rest. */
    WRONG_PAIRS,
    /** The pairs just fix the fit, so its error is assumed, not measured. */
    EXACT,
    /** The points lie nearly on a line, or all but one do. */
    NEARLY_ON_A_LINE,
    /** The points take up a small part of the picture. */
    CROWDED,
    /** Part of the picture lies beyond the fit's horizon: nothing can be carried from there. */
    FOLDS,
    /** The fit means that one picture was taken at more than 60 degrees from square on. */
    SLANTED,
    /** The pairs are further from the fit than careful clicks are. */
    LARGE_ERROR
  }

  public FitWarning {
    requireNonNull(kind);
    requireNonNull(message);
  }
}
