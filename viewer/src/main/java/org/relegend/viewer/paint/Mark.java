package org.relegend.viewer.paint;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Box;
import org.relegend.map.Evidence;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * One thing seen at a place of a picture, as it is painted.
 *
 * @param at picture units
 * @param outline of a body, in picture units; may be empty
 * @param label what is written beside it; may be empty
 * @param carried whether nobody placed it on this picture: it was carried over from another
 * @param radius of the circle in which a carried one lies 95 times in 100, in picture units
 */
public record Mark(
    Subject subject,
    Point at,
    List<Point> outline,
    String label,
    Evidence evidence,
    Emphasis emphasis,
    boolean carried,
    double radius) {
  /** Why it stands out; told by shape and line as well as by colour. */
  public enum Emphasis {
    /** A placement like others. */
    PLAIN,
    /** Joined at the node that was chosen. */
    JOINED,
    /** What was chosen itself. */
    SELECTED,
    /** The same in the twin channel. */
    TWIN,
    /** Suspected of the fault. */
    SUSPECT
  }

  public Mark {
    outline = List.copyOf(outline);
  }

  /** One that somebody placed there. */
  public Mark(
      Subject subject,
      Point at,
      List<Point> outline,
      String label,
      Evidence evidence,
      Emphasis emphasis) {
    this(subject, at, outline, label, evidence, emphasis, false, 0);
  }

  /** The same as something that was carried over. */
  public Mark carriedWithin(double circle) {
    return new Mark(subject, at, outline, label, evidence, emphasis, true, circle);
  }

  /** As it is stored, with its name beside it. */
  public static Mark of(Placement placement, Emphasis emphasis) {
    return new Mark(
        placement.subject(),
        placement.at(),
        placement.outline(),
        labelOf(placement.subject()),
        placement.best(),
        emphasis);
  }

  /** Whether it was only concluded or guessed; then its sign is broken. */
  boolean isWeak() {
    return evidence.compareTo(Evidence.INFERRED) >= 0;
  }

  /** The smallest box around its point and outline, in picture units. */
  Box bounds() {
    List<Point> points = new ArrayList<>(outline);
    points.add(at.plus(-radius, -radius));
    points.add(at.plus(radius, radius));
    return Box.around(points);
  }

  public Mark with(Emphasis changed) {
    return new Mark(subject, at, outline, label, evidence, changed, carried, radius);
  }

  /** The same without its name, where that stands beside the picture already. */
  public Mark unlabelled() {
    return new Mark(subject, at, outline, "", evidence, emphasis, carried, radius);
  }

  private static String labelOf(Subject subject) {
    if (subject instanceof Subject.OfPin pin) {
      return pin.pin().pin();
    }
    if (subject instanceof Subject.OfNet net) {
      return net.net().text();
    }
    return subject.toString();
  }
}
