package org.relegend.demo.design;

import java.util.List;

/** The copper of one board, without its pads: tracks, and the wire links that bridge them. */
public record Artwork(List<Track> tracks, List<Link> links) {
  public Artwork {
    tracks = List.copyOf(tracks);
    links = List.copyOf(links);
  }
}
