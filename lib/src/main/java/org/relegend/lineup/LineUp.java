package org.relegend.lineup;

import java.util.Optional;
import org.relegend.map.Point;

/** What carries points from one picture of a board to another, and how well. */
public interface LineUp {

  /** From the first picture to the second. */
  Transform transform();

  /**
   * The error of {@link #carry} at a point of the first picture, in units of the second.
   * Meaningless where {@link #carry} has no answer.
   */
  Uncertainty uncertainty(Point from);

  /** Where a point lies on the other picture; none beyond the horizon of a perspective. */
  default Optional<Point> carry(Point from) {
    return transform().denominator(from) > 0
        ? Optional.of(transform().apply(from))
        : Optional.empty();
  }

  /** The circle that holds the true place 95 times in 100, in units of the second picture. */
  default double radius95(Point from) {
    return uncertainty(from).radius95();
  }

  /** From the second picture back to the first. */
  default LineUp reversed() {
    return new Reversed(this);
  }

  /** On to a third picture; the two line-ups are taken to be made from different pairs. */
  default LineUp then(LineUp next) {
    return new Chain(this, next);
  }

  /** A line-up that is known, not fitted. */
  static LineUp exact(Transform transform) {
    return new Exact(transform);
  }

  /** Known, without error. */
  record Exact(Transform transform) implements LineUp {
    @Override
    public Uncertainty uncertainty(Point from) {
      return Uncertainty.NONE;
    }

    @Override
    public LineUp reversed() {
      return new Exact(transform.inverse());
    }
  }

  /** The other way round. */
  record Reversed(LineUp forward) implements LineUp {
    @Override
    public Transform transform() {
      return forward.transform().inverse();
    }

    @Override
    public Uncertainty uncertainty(Point from) {
      Point origin = transform().apply(from);
      return forward.uncertainty(origin).through(transform().jacobian(from));
    }

    @Override
    public LineUp reversed() {
      return forward;
    }
  }

  /** Two line-ups one after the other; errors add, the first one's as the second stretches it. */
  record Chain(LineUp first, LineUp second) implements LineUp {
    @Override
    public Transform transform() {
      return second.transform().after(first.transform());
    }

    @Override
    public Optional<Point> carry(Point from) {
      return first.carry(from).flatMap(second::carry);
    }

    @Override
    public Uncertainty uncertainty(Point from) {
      Point between = first.transform().apply(from);
      return first
          .uncertainty(from)
          .through(second.transform().jacobian(between))
          .plus(second.uncertainty(between));
    }

    @Override
    public LineUp reversed() {
      return new Chain(second.reversed(), first.reversed());
    }
  }
}
