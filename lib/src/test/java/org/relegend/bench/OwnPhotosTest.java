package org.relegend.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.lineup.CarriedPlacement;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.lineup.PointPair;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Table;

/** The map's placements on a photo of the job that was taken at half the size, shifted. */
class OwnPhotosTest {
  private static final BoardMap MAP = DemoUnit.circuit().map();
  private static final PictureId COMPONENT = new PictureId("component");
  private static final PictureId OWN = new PictureId("own");
  private static final Photo MAPS = (Photo) MAP.picture(COMPONENT).orElseThrow();

  private static JobPhoto own(PictureId id, String onto, PointPair... pairs) {
    Photo photo =
        new Photo(
            id,
            "",
            "photos/own.jpg",
            MAPS.board(),
            MAPS.side(),
            MAPS.turn(),
            "cd".repeat(32),
            MAPS.width() / 2 + 100,
            MAPS.height() / 2 + 100);
    return new JobPhoto(photo, onto, Origin.CLICKED, List.of(pairs), List.of());
  }

  private static PointPair pair(double x, double y) {
    return PointPair.of(x / 2 + 50, y / 2 + 30, x, y);
  }

  private static JobPhoto tied(PictureId id) {
    return own(
        id,
        "component",
        pair(100, 100),
        pair(3900, 150),
        pair(3800, 2500),
        pair(150, 2600),
        pair(2000, 1300));
  }

  private static BoardMap over(JobPhoto photo) {
    return OwnPhotos.over(MAP, Table.of(List.of(photo)));
  }

  @Test
  void placements_areCarriedToTheUnitsPhoto() {
    PlacementCarrier carrier = PlacementCarrier.of(over(tied(OWN)));
    List<Placement> placed =
        MAP.placements().stream().filter(p -> p.picture().equals(COMPONENT)).toList();
    assertThat(carrier.on(OWN)).hasSameSizeAs(placed);
    for (Placement place : placed) {
      CarriedPlacement seen =
          carrier.find(new Placement.Key(OWN, place.subject(), place.ordinal())).orElseThrow();
      Point truth = place.at();
      assertThat(seen.at().x()).isCloseTo(truth.x() / 2 + 50, within(0.5));
      assertThat(seen.at().y()).isCloseTo(truth.y() / 2 + 30, within(0.5));
    }
  }

  @Test
  void hazardZones_areCarriedToo() {
    long drawn = MAP.zones().stream().filter(zone -> zone.picture().equals(COMPONENT)).count();
    assertThat(drawn).isPositive();
    assertThat(PlacementCarrier.of(over(tied(OWN))).zonesOn(OWN)).hasSize((int) drawn);
  }

  /** Two technicians may name a photo alike; the map's is never hidden by the unit's. */
  @Test
  void aPhotoNamedLikeOneOfTheMap_standsBesideIt() {
    BoardMap both = over(tied(COMPONENT));
    assertThat(both.picture(COMPONENT)).contains(MAPS);
    PictureId other = OwnPhotos.idOver(MAP, COMPONENT);
    assertThat(other).isNotEqualTo(COMPONENT);
    assertThat(both.pictures().has(other)).isTrue();
    assertThat(PlacementCarrier.of(both).on(other)).isNotEmpty();
    assertThat(OwnPhotos.find(MAP, Table.of(List.of(tied(COMPONENT))), other))
        .contains(tied(COMPONENT));
  }

  @Test
  void withoutALineUp_thePhotoIsThere_andNothingOnIt() {
    for (JobPhoto photo :
        List.of(
            own(OWN, ""),
            own(OWN, "gone", pair(1, 1)),
            own(OWN, "component", pair(1, 1), pair(5, 5)))) {
      BoardMap both = over(photo);
      assertThat(both.pictures().has(OWN)).isTrue();
      assertThat(PlacementCarrier.of(both).on(OWN)).isEmpty();
    }
  }
}
