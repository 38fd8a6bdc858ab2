package org.relegend.twin;

import java.util.List;
import org.relegend.map.Subject;

/** Elements that the circuit can't tell apart: any of a may be the twin of any of b. */
public record TwinGroup(List<Subject> a, List<Subject> b) {
  public TwinGroup {
    a = List.copyOf(a);
    b = List.copyOf(b);
  }
}
