package org.relegend.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.lineup.PointPair;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;

/** The map's placements on a photo of the job that was taken at half the size, shifted. */
class OwnPhotosTest {
  private static final BoardMap MAP = DemoUnit.circuit().map();
  private static final Photo MAPS = (Photo) MAP.picture(new PictureId("component")).orElseThrow();

  private static JobPhoto own(String onto, PointPair... pairs) {
    return new JobPhoto(
        new Photo(
            new PictureId("own"),
            "",
            "photos/own.jpg",
            MAPS.board(),
            MAPS.side(),
            MAPS.turn(),
            "cd".repeat(32),
            MAPS.width() / 2 + 100,
            MAPS.height() / 2 + 100),
        onto,
        List.of(pairs),
        List.of());
  }

  private static PointPair pair(double x, double y) {
    return PointPair.of(x / 2 + 50, y / 2 + 30, x, y);
  }

  private static final JobPhoto TIED =
      own(
          "component",
          pair(100, 100),
          pair(3900, 150),
          pair(3800, 2500),
          pair(150, 2600),
          pair(2000, 1300));

  @Test
  void placements_liesWhereTheLineUpCarriesThem() {
    List<OwnPhotos.Seen> seen = OwnPhotos.placements(MAP, TIED);
    List<Placement> placed =
        MAP.placements().stream().filter(p -> p.picture().equals(MAPS.id())).toList();
    assertThat(seen).hasSameSizeAs(placed);
    for (int i = 0; i < seen.size(); i++) {
      Point truth = placed.get(i).at();
      assertThat(seen.get(i).subject()).isEqualTo(placed.get(i).subject());
      assertThat(seen.get(i).at().x()).isCloseTo(truth.x() / 2 + 50, within(0.5));
      assertThat(seen.get(i).at().y()).isCloseTo(truth.y() / 2 + 30, within(0.5));
    }
  }

  @Test
  void withoutALineUp_thereIsNothing() {
    assertThat(OwnPhotos.placements(MAP, own(""))).isEmpty();
    assertThat(OwnPhotos.lineUp(MAP, own("gone", pair(1, 1)))).isEmpty();
    assertThat(OwnPhotos.lineUp(MAP, own("component", pair(1, 1), pair(5, 5)))).isEmpty();
  }
}
