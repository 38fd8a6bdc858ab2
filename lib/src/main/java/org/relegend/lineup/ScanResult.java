package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.List;

/** What lining up a scan with a page that isn't at hand comes to. */
public sealed interface ScanResult {
  /**
   * Figures of a search; those that weren't reached are zero.
   *
   * @param pins known on the page
   * @param inside of them within the scan
   * @param met of those on a line of the scan
   * @param sure how surprising that is, were it chance: the negative logarithm of its likelihood
   * @param rival the same of the next best way for the drawing to lie
   */
  record Evidence(int pins, int inside, int met, double sure, double rival) {}

  /** How far it got. */
  Evidence evidence();

  /**
   * Lined up.
   *
   * @param matches pins of the page, and where the scan's nearest line is: they tell the error
   */
  record Aligned(List<PointPair> matches, LineUp lineUp, Evidence evidence) implements ScanResult {
    public Aligned {
      matches = List.copyOf(matches);
      requireNonNull(lineUp);
      requireNonNull(evidence);
    }

    /** A fair sample of the matches, to be kept. */
    public List<PointPair> kept() {
      return PhotoResult.Aligned.sampled(matches);
    }
  }

  /** Not lined up, since that would be a guess. */
  record Unaligned(Reason reason, Evidence evidence) implements ScanResult {
    public Unaligned {
      requireNonNull(reason);
      requireNonNull(evidence);
    }

    /** For the user: why, and what to do. */
    public String message() {
      return reason.cause + " Line the two up by pairs: the same spot on both, four times or more.";
    }
  }

  /** Why a scan wasn't lined up. */
  enum Reason {
    /** Too few pins are known on the page. */
    TOO_FEW_PINS("Too few pins are placed on that page to find it in a scan by them."),
    /** The scan shows no lines. */
    BLANK("No lines of a drawing can be made out on the scan."),
    /** The pins meet hardly more ink than they would on any drawing. */
    NO_AGREEMENT("The pins placed on that page don't fit the lines of the scan."),
    /** Two ways fit about as well, as where a drawing repeats a circuit. */
    AMBIGUOUS("The pins fit the scan in two different ways, as where a drawing repeats a circuit.");

    private final String cause;

    Reason(String cause) {
      this.cause = cause;
    }
  }
}
