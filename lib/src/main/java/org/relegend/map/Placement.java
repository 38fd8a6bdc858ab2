package org.relegend.map;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where something is seen on one picture: the body of a part or of one of its sections, the pad of
 * a pin, the label of a net.
 *
 * @param ordinal 1, or counting on where a picture shows the subject more than once, as pages do
 *     with net labels
 * @param outline the body's outline as a polygon; empty while unknown, and for pins
 * @param evidence all who stand for it, in order of time
 */
public record Placement(
    PictureId picture,
    Subject subject,
    int ordinal,
    Point at,
    List<Point> outline,
    List<Attestation> evidence)
    implements Keyed<Placement.Key> {
  /** What a placement is found by. */
  public record Key(PictureId picture, Subject subject, int ordinal) implements Comparable<Key> {
    private static final Comparator<Key> ORDER =
        Comparator.comparing(Key::picture).thenComparing(Key::subject).thenComparing(Key::ordinal);

    @Override
    public int compareTo(Key other) {
      return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
      return ordinal == 1
          ? subject + " on " + picture
          : subject + " on " + picture + " #" + ordinal;
    }
  }

  public Placement {
    if (ordinal < 1) {
      throw new IllegalArgumentException("placements of one subject count from 1, not " + ordinal);
    }
    outline = List.copyOf(outline);
    evidence = List.copyOf(evidence);
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("a placement of %s without evidence".formatted(subject));
    }
  }

  public Placement(PictureId picture, Subject subject, Point at, Attestation evidence) {
    this(picture, subject, 1, at, List.of(), List.of(evidence));
  }

  @Override
  public Key key() {
    return new Key(picture, subject, ordinal);
  }

  public Evidence best() {
    Optional<Evidence> best = Attestation.best(evidence);
    return best.orElseThrow();
  }

  /** The same place of something else, or on another picture. */
  public Placement of(PictureId on, Subject what, int number) {
    return new Placement(on, what, number, at, outline, evidence);
  }

  /** Moved with its outline, on new evidence. */
  public Placement movedTo(Point target, Attestation attestation) {
    double dx = target.x() - at.x();
    double dy = target.y() - at.y();
    List<Point> moved = outline.stream().map(point -> point.plus(dx, dy)).toList();
    return new Placement(picture, subject, ordinal, target, moved, List.of(attestation));
  }

  /** The same place, with one more who stands for it. */
  public Placement confirmedBy(Attestation attestation) {
    List<Attestation> more = AttestationMerge.union(evidence, List.of(attestation));
    return new Placement(picture, subject, ordinal, at, outline, more);
  }
}
