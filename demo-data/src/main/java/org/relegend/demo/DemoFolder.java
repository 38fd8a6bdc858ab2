package org.relegend.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Tables;
import org.relegend.demo.page.Dot;
import org.relegend.demo.page.Schematic;
import org.relegend.demo.photo.Jpeg;
import org.relegend.demo.photo.Photographer;
import org.relegend.demo.photo.Shot;
import org.relegend.demo.photo.Shots;
import org.relegend.demo.truth.Place;
import org.relegend.demo.truth.Truth;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.HazardZone;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.store.Digests;
import org.relegend.store.MapFormat;

/** All files of the demo folder, made in memory: always the same bytes. */
public final class DemoFolder {
  private static final float QUALITY = 0.92f;
  private static final String SCHEMATIC = "pages/schematic.pdf";

  private final Design design = Tables.leveller();
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final List<Picture> pictures = new ArrayList<>();
  private final List<HazardZone> zones = new ArrayList<>();
  private final List<Place> truth = new ArrayList<>();

  private final PhotoFiles photos;

  private DemoFolder(PhotoFiles photos) {
    this.photos = photos;
  }

  /** Where the bytes of a photo's file come from. */
  interface PhotoFiles {
    byte[] jpeg(String file, Shot shot) throws IOException;
  }

  /** Every file's bytes by its path within the folder, with forward slashes. */
  public static Map<String, byte[]> files() throws IOException {
    return files((file, shot) -> Jpeg.bytes(Photographer.take(shot).image(), QUALITY));
  }

  /** The same around photos that were taken before. */
  static Map<String, byte[]> files(PhotoFiles photos) throws IOException {
    DemoFolder folder = new DemoFolder(photos);
    folder.pages();
    folder.photo("component", "map/photos/component.jpg", "Component side");
    folder.photo("solder", "map/photos/solder.jpg", "Solder side");
    folder.photo("other-component", "other-unit/component.jpg", "");
    folder.photo("other-solder", "other-unit/solder.jpg", "");
    folder.tables();
    return folder.files;
  }

  private void pages() throws IOException {
    Schematic schematic = new Schematic(design);
    byte[] pdf = schematic.pdf();
    files.put("map/" + SCHEMATIC, pdf);
    for (int number = 1; number <= 2; number++) {
      String picture = "page-" + number;
      Dot size = Schematic.size(number);
      pictures.add(
          new Page(
              new PictureId(picture),
              number == 1 ? "Signal path" : "Power supply (scan)",
              SCHEMATIC,
              number,
              Digests.sha256(pdf),
              size.x(),
              size.y()));
      truth.addAll(Truth.of(picture, schematic.marks(number)));
    }
    zones.addAll(DemoZones.onPage("page-2", truth));
  }

  private void photo(String picture, String file, String title) throws IOException {
    Shot shot = Shots.of(picture);
    byte[] jpeg = photos.jpeg(file, shot);
    files.put(file, jpeg);
    truth.addAll(Truth.of(picture, shot));
    if (file.startsWith("map/")) {
      boolean solder = shot.side() == org.relegend.demo.photo.Side.SOLDER;
      pictures.add(
          new Photo(
              new PictureId(picture),
              title,
              file.substring("map/".length()),
              DemoMap.board(),
              solder ? Side.SOLDER : Side.COMPONENT,
              solder ? BoardTurn.SIDE_EDGE : BoardTurn.UNKNOWN,
              Digests.sha256(jpeg),
              shot.camera().width(),
              shot.camera().height()));
      zones.addAll(DemoZones.on(picture, shot, truth));
    }
  }

  private void tables() {
    BoardMap map = new DemoMap(design).map(pictures, truth, zones);
    files.put("map/map.json", MapFormat.write(map));
    files.putAll(new DemoJob(map).files());
    files.put("truth/places.csv", Truth.table(truth).getBytes(StandardCharsets.UTF_8));
    files.put("truth/outlines.csv", Truth.outlines(truth).getBytes(StandardCharsets.UTF_8));
  }
}
