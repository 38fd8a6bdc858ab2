package org.relegend.demo.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Track;

class RouterTest {
  private static final Rules RULES = new Rules(0.64, 1, 0.45, 0, 30);

  private static PlacedPart part(String name, double x, double y) {
    return new PlacedPart(name, "npn", "", "common", new Spot(x, y));
  }

  private static PlacedPin pin(String part, String net, double x, double y) {
    return new PlacedPin(part, "1", "", net, net, new Spot(x, y));
  }

  /**
   * Four pads at the corners of a square, joined crosswise: one plane can hold it with a detour.
   */
  @Test
  void crossedNets_goRoundEachOther() {
    Design design =
        new Design(
            "",
            60,
            60,
            List.of(part("A", 20, 20), part("B", 40, 40), part("C", 40, 20), part("D", 20, 40)),
            List.of(
                pin("A", "X", 20, 20),
                pin("B", "X", 40, 40),
                pin("C", "Y", 40, 20),
                pin("D", "Y", 20, 40)),
            List.of());
    Artwork artwork = new Router(design, RULES).route();
    for (Track one : artwork.tracks()) {
      for (Track other : artwork.tracks()) {
        if (!one.net().equals(other.net())) {
          assertThat(gap(one, other)).isGreaterThan(1.3);
        }
      }
    }
    assertThat(artwork.tracks().stream().map(Track::net).distinct()).hasSize(2);
    assertThat(new Router(design, RULES).route()).isEqualTo(artwork);
  }

  private static double gap(Track one, Track other) {
    double gap = Double.MAX_VALUE;
    for (int k = 0; k + 1 < one.points().size(); k++) {
      for (int n = 0; n + 1 < other.points().size(); n++) {
        gap =
            Math.min(
                gap,
                Segments.distance(
                    one.points().get(k),
                    one.points().get(k + 1),
                    other.points().get(n),
                    other.points().get(n + 1)));
      }
    }
    return gap;
  }
}
