package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Pads;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Track;

/** Makes each stretch of track as wide as its neighbours leave room for; supplies wider. */
final class Widths {
  private static final double LINK_PAD = 1.0;
  private static final double SIGNAL = 1.35;
  private static final double SUPPLY = 2.6;

  private final Design design;
  private final Rules rules;

  Widths(Design design, Rules rules) {
    this.design = design;
    this.rules = rules;
  }

  Artwork widened(Artwork artwork) {
    List<Track> wide = new ArrayList<>();
    for (Track track : artwork.tracks()) {
      double most = track.net().matches("[AB]_.*|THR|Z[PN]") ? SIGNAL : SUPPLY;
      double room = Math.min(most / 2, room(track, artwork));
      double width = Math.max(rules.track(), Math.floor(room * 2 * 20) / 20);
      wide.add(new Track(track.net(), width, track.points()));
    }
    return new Artwork(wide, artwork.links());
  }

  private double room(Track track, Artwork artwork) {
    double room = Double.MAX_VALUE;
    for (int k = 0; k + 1 < track.points().size(); k++) {
      Spot a = track.points().get(k);
      Spot b = track.points().get(k + 1);
      for (PlacedPin pin : design.pins()) {
        if (!pin.builtNet().equals(track.net())) {
          double gap = Segments.distance(pin.at(), a, b) - Pads.radius(design, pin);
          room = Math.min(room, gap - rules.clearance());
        }
      }
      for (Link link : artwork.links()) {
        if (!link.net().equals(track.net())) {
          double gap =
              Math.min(Segments.distance(link.from(), a, b), Segments.distance(link.to(), a, b))
                  - LINK_PAD;
          room = Math.min(room, gap - rules.clearance());
        }
      }
      for (Track other : artwork.tracks()) {
        if (!other.net().equals(track.net())) {
          for (int n = 0; n + 1 < other.points().size(); n++) {
            double gap = Segments.distance(a, b, other.points().get(n), other.points().get(n + 1));
            room = Math.min(room, (gap - rules.clearance()) / 2);
          }
        }
      }
    }
    return room;
  }
}
