package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.ray.Vec;

/**
 * Where a part's body is in space: the point one would call its middle, seen from above, and points
 * whose hull surrounds it.
 */
public record Body(String designator, Vec middle, List<Vec> hull) {
  public Body {
    hull = List.copyOf(hull);
  }
}
