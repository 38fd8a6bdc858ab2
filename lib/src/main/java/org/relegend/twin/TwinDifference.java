package org.relegend.twin;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Subject;

/**
 * Where two channels differ.
 *
 * @param a what the first channel has there; empty where it has nothing
 * @param b what the second has there
 * @param text in words, with both places
 */
public record TwinDifference(
    ChannelDeviation.Aspect aspect, List<Subject> a, List<Subject> b, String text) {
  public TwinDifference {
    a = List.copyOf(a);
    b = List.copyOf(b);
    if (a.isEmpty() && b.isEmpty()) {
      throw new IllegalArgumentException("a difference without a place");
    }
  }

  /** What a technician's mark on it is kept under: the first place of each side. */
  public ChannelDeviation.Key key() {
    List<Subject> at = new ArrayList<>();
    a.stream().findFirst().ifPresent(at::add);
    b.stream().findFirst().ifPresent(at::add);
    return new ChannelDeviation.Key(at, aspect);
  }
}
