package org.relegend.demo.design;

import java.util.List;

/** A run of copper on the solder side, {@code width} millimetres wide. */
public record Track(String net, double width, List<Spot> points) {
  public Track {
    points = List.copyOf(points);
  }
}
