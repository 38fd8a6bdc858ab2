package org.relegend.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Tables;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.Picture;
import org.relegend.map.Placement;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

class DemoMapTest {
  private static BoardMap map() throws StoreException {
    try (MapFolder folder = MapFolder.openReadOnly(Committed.FOLDER.resolve("map"))) {
      return folder.map();
    }
  }

  /** The counts are those of the instrument's own check report: 102 parts, 259 pins, 67 nets. */
  @Test
  void map_hasAllPartsPinsAndNets() throws StoreException {
    BoardMap map = map();
    assertThat(map.parts().size()).isEqualTo(102);
    assertThat(map.nets().size()).isEqualTo(67);
    assertThat(map.nets().stream().mapToInt(net -> net.members().size()).sum()).isEqualTo(259);
  }

  @Test
  void nets_areThoseOfTheTable_asBuilt() throws StoreException {
    Map<String, Set<String>> table = new TreeMap<>();
    for (PlacedPin pin : Tables.leveller().pins()) {
      table.computeIfAbsent(pin.builtNet(), net -> new TreeSet<>()).add(pin.name());
    }
    Map<String, Set<String>> nets = new TreeMap<>();
    for (Net net : map().nets()) {
      nets.put(
          net.name(),
          net.pins().stream().map(Object::toString).collect(Collectors.toCollection(TreeSet::new)));
    }
    assertThat(nets).isEqualTo(table);
  }

  @Test
  void everyPicturesFile_hasItsDigest() throws StoreException {
    try (MapFolder folder = MapFolder.openReadOnly(Committed.FOLDER.resolve("map"))) {
      assertThat(folder.map().pictures().size()).isEqualTo(4);
      for (Picture picture : folder.map().pictures()) {
        assertThat(Digests.sha256(folder.fileOf(picture))).isEqualTo(picture.sha256());
      }
    }
  }

  @Test
  void everyPlacement_liesOnItsPicture() throws StoreException {
    BoardMap map = map();
    assertThat(map.placements().size()).isGreaterThan(800);
    for (Placement placement : map.placements()) {
      Picture picture = map.picture(placement.picture()).orElseThrow();
      assertThat(picture.contains(placement.at())).as(placement.key().toString()).isTrue();
    }
  }

  /** What the drawing has exchanged: six pins of the op-amp in each channel. */
  @Test
  void discrepancies_areTheTwelvePinsOfTheOpAmps() throws StoreException {
    assertThat(map().discrepancies().stream().map(d -> d.subject().toString()))
        .containsExactlyInAnyOrder(
            "U102.1", "U102.2", "U102.3", "U102.5", "U102.6", "U102.7", "U202.1", "U202.2",
            "U202.3", "U202.5", "U202.6", "U202.7");
  }

  @Test
  void mainsAndStoredCharge_areMarkedOnBothSides() throws StoreException {
    assertThat(map().zones().stream().map(zone -> zone.picture() + " " + zone.kind()))
        .contains(
            "component " + HazardZone.Kind.MAINS,
            "solder " + HazardZone.Kind.MAINS,
            "component " + HazardZone.Kind.STORED_CHARGE,
            "solder " + HazardZone.Kind.STORED_CHARGE,
            "page-2 " + HazardZone.Kind.MAINS);
  }
}
