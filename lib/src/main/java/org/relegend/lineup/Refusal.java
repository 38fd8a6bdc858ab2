package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

/** Why no line-up is given, in one sentence for the user that says what to do. */
public record Refusal(Reason reason, String message) implements FitResult {

  /** What stood in the way. */
  public enum Reason {
    /** Fewer pairs than the model needs. */
    TOO_FEW_PAIRS,
    /** A point of one picture is used by two pairs. */
    REPEATED_POINT,
    /** The points of a picture lie on a line, or all but one do. */
    ON_A_LINE,
    /** No set of pairs agrees better than chance would have it. */
    NO_AGREEMENT,
    /** The pairs fit only mirrored, and both pictures are said to show the same side. */
    MIRRORED,
    /** The pairs fit only unmirrored, and the pictures are said to show opposite sides. */
    NOT_MIRRORED,
    /** The fit would turn part of the picture inside out between the points themselves. */
    FOLDED
  }

  public Refusal {
    requireNonNull(reason);
    requireNonNull(message);
  }
}
