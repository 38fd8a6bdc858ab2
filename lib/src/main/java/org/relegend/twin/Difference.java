package org.relegend.twin;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Deviation;
import org.relegend.map.Subject;

/**
 * Where two channels differ.
 *
 * @param a what the first channel has there; empty where it has nothing
 * @param b what the second has there
 * @param told in words, with both places
 */
public record Difference(Deviation.Aspect aspect, List<Subject> a, List<Subject> b, String told) {
  public Difference {
    a = List.copyOf(a);
    b = List.copyOf(b);
    if (a.isEmpty() && b.isEmpty()) {
      throw new IllegalArgumentException("a difference without a place");
    }
  }

  /** What a technician's mark on it is kept under: the first place of each side. */
  public Deviation.Key key() {
    List<Subject> at = new ArrayList<>();
    a.stream().findFirst().ifPresent(at::add);
    b.stream().findFirst().ifPresent(at::add);
    return new Deviation.Key(at, aspect);
  }
}
