package org.relegend.share;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/**
 * Something that is said in two ways, side by side.
 *
 * @param about in a few words: "node of R107.1", "place of C102.- on component"
 * @param subject where it is, if that is one thing
 * @param picture where one of the places is, if it is about places
 */
public record Disagreement(
    Kind kind,
    String about,
    Optional<Subject> subject,
    Optional<PictureId> picture,
    List<Position> positions) {
  /** What it is about. */
  public enum Kind {
    /** Two people's versions that were brought together and not decided yet. */
    CLASH,
    /** A pin that is said to be at more than one node. */
    NODE,
    /** One thing that is placed twice on a photo, or at one place by a line-up and at another. */
    PLACE,
    /** One thing that has two twins. */
    TWIN,
    /** The drawing and the board as built, which is no fault of either. */
    DRAWING;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One of the ways.
   *
   * @param by who stands for it; may be nobody, as values have no evidence
   */
  public record Position(String says, List<Attestation> by) {
    public Position {
      by = List.copyOf(by);
    }
  }

  public Disagreement {
    positions = List.copyOf(positions);
  }

  /** Whether somebody who fits stands for one of the ways. */
  public boolean fits(TrustReport.Filter filter) {
    return positions.stream().anyMatch(position -> position.by().stream().anyMatch(filter::takes));
  }
}
