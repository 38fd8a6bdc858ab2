package org.relegend.demo.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Pads;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Tables;
import org.relegend.demo.design.Track;

/** Looks at the committed copper as a tester with two probes would. */
class ArtworkTest {
  private static final double LINK_PAD = 1.0;

  private final Design design = Tables.leveller();
  private final Artwork artwork = Tables.levellerArtwork();

  /** A straight piece of copper with round ends; a pad is one of no length. */
  private record Piece(String net, Spot a, Spot b, double radius) {
    double gap(Piece other) {
      return Segments.distance(a, b, other.a, other.b) - radius - other.radius;
    }
  }

  @Test
  void everyNetsPads_areJoinedByItsCopperAndLinks() {
    List<Piece> pieces = pieces();
    int[] group = new int[pieces.size()];
    for (int k = 0; k < group.length; k++) {
      group[k] = k;
    }
    for (int k = 0; k < group.length; k++) {
      for (int n = 0; n < k; n++) {
        if (pieces.get(k).gap(pieces.get(n)) < 0) {
          unite(group, k, n);
        }
      }
    }
    for (Link link : artwork.links()) {
      unite(group, at(pieces, link.from()), at(pieces, link.to()));
    }
    Map<String, Integer> groupOf = new HashMap<>();
    for (PlacedPin pin : design.pins()) {
      int found = root(group, at(pieces, pin.at()));
      assertThat(groupOf.merge(pin.builtNet(), found, (known, same) -> known))
          .as(pin.name() + " on " + pin.builtNet())
          .isEqualTo(found);
    }
    assertThat(groupOf.values()).doesNotHaveDuplicates().hasSize(67);
  }

  @Test
  void copperOfDifferentNets_keepsApart() {
    List<Piece> pieces = pieces();
    for (int k = 0; k < pieces.size(); k++) {
      for (int n = 0; n < k; n++) {
        if (!pieces.get(k).net.equals(pieces.get(n).net)) {
          assertThat(pieces.get(k).gap(pieces.get(n)))
              .as(pieces.get(k) + " and " + pieces.get(n))
              .isGreaterThan(0.25);
        }
      }
    }
  }

  @Test
  void links_areStraight_andPassOverNoPartsBody() {
    assertThat(artwork.links()).isNotEmpty();
    for (Link link : artwork.links()) {
      boolean level = Math.abs(link.from().y() - link.to().y()) < 0.02;
      boolean upright = Math.abs(link.from().x() - link.to().x()) < 0.02;
      assertThat(level || upright).as(link.toString()).isTrue();
      for (var part : design.parts()) {
        List<Double> size = Bodies.size(part);
        double reach = Math.min(size.get(0), size.get(1)) / 2;
        assertThat(Segments.distance(part.at(), link.from(), link.to()))
            .as(link + " over " + part.designator())
            .isGreaterThan(reach);
      }
    }
  }

  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    for (PlacedPin pin : design.pins()) {
      pieces.add(new Piece(pin.builtNet(), pin.at(), pin.at(), Pads.radius(design, pin)));
    }
    for (Link link : artwork.links()) {
      pieces.add(new Piece(link.net(), link.from(), link.from(), LINK_PAD));
      pieces.add(new Piece(link.net(), link.to(), link.to(), LINK_PAD));
    }
    for (Track track : artwork.tracks()) {
      for (int k = 0; k + 1 < track.points().size(); k++) {
        Spot a = track.points().get(k);
        pieces.add(new Piece(track.net(), a, track.points().get(k + 1), track.width() / 2));
      }
    }
    return pieces;
  }

  private static int at(List<Piece> pieces, Spot spot) {
    for (int k = 0; k < pieces.size(); k++) {
      if (pieces.get(k).a.equals(spot) && pieces.get(k).b.equals(spot)) {
        return k;
      }
    }
    throw new AssertionError("no pad at " + spot);
  }

  private static void unite(int[] group, int one, int other) {
    group[root(group, one)] = root(group, other);
  }

  private static int root(int[] group, int at) {
    int up = at;
    while (group[up] != up) {
      up = group[up];
    }
    return up;
  }
}
