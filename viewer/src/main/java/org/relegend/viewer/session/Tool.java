package org.relegend.viewer.session;

import java.util.Optional;

/** What pointing on a picture does. */
public enum Tool {
  /** Choose what is there. */
  LOOK,
  /** Place what is typed. */
  PLACE,
  /** Place all pins of the part that is typed. */
  PINS,
  /** Join what is there to the net being traced. */
  TRACE,
  /** Set a corner of a hazard zone. */
  ZONE,
  /** Set one half of a pair: the same spot on both photos. */
  LINE_UP,
  /** Measure between two points of a photo. */
  MEASURE,
  /** Set a corner of the board, to draw the photo with the board square on. */
  STRAIGHTEN;

  /** What to do next when it was just taken in hand. */
  public Optional<Notice.Kind> prompt() {
    return switch (this) {
      case PLACE -> Optional.of(Notice.Kind.PROMPT_PLACE);
      case PINS -> Optional.of(Notice.Kind.PROMPT_PINS);
      case TRACE -> Optional.of(Notice.Kind.PROMPT_TRACE);
      case ZONE -> Optional.of(Notice.Kind.PROMPT_ZONE);
      case MEASURE -> Optional.of(Notice.Kind.PROMPT_MEASURE);
      case STRAIGHTEN -> Optional.of(Notice.Kind.CORNERS_FIRST);
      case LOOK, LINE_UP -> Optional.empty();
    };
  }

  /** Whether it puts something into the map where it points. */
  boolean marksPlaces() {
    return takesName() || this == ZONE;
  }

  /** Whether the find field holds a name for the next click. */
  public boolean takesName() {
    return this == PLACE || this == PINS;
  }
}
