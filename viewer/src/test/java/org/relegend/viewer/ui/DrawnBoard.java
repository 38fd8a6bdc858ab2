package org.relegend.viewer.ui;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.relegend.map.Board;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/** A small two-channel map on disk, with a page and a photo that are drawn here. */
final class DrawnBoard {
  static final PictureId PAGE = new PictureId("page-1");
  static final PictureId TOP = new PictureId("component");
  static final int WIDE = 2400;
  static final int HIGH = 1600;

  /** Names and places of the two-pin parts of channel A; channel B lies 760 pixels below. */
  private static final List<String> KINDS = List.of("R%d01", "R%d02", "C%d02", "R%d04", "R%d05");

  private DrawnBoard() {}

  /** Makes the folder; nothing is placed yet but what {@code placed} asks for. */
  static Path write(Path folder, boolean placed) throws IOException, StoreException {
    BoardMap map = BoardMap.empty("drawn", MapInfo.titled("Drawn board"));
    map = map.with(MapTables.BOARDS, map.boards().with(Board.named(MAIN)));
    Files.createDirectories(folder.resolve("pages"));
    Files.createDirectories(folder.resolve("photos"));
    Path page = folder.resolve("pages/page-1.png");
    Path top = folder.resolve("photos/component.png");
    ImageIO.write(drawPage(), "png", page.toFile());
    ImageIO.write(drawPhoto(), "png", top.toFile());
    map =
        map.with(
            MapTables.PICTURES,
            map.pictures()
                .with(
                    new Page(
                        PAGE, "Page 1", "pages/page-1.png", 1, Digests.sha256(page), WIDE, HIGH))
                .with(
                    new Photo(
                        TOP,
                        "Component side",
                        "photos/component.png",
                        MAIN,
                        Side.COMPONENT,
                        BoardTurn.UNKNOWN,
                        Digests.sha256(top),
                        WIDE,
                        HIGH)));
    map = parts(map);
    if (placed) {
      map = placed(map);
    }
    MapFolder.create(folder, map).close();
    return folder;
  }

  private static BoardMap parts(BoardMap map) {
    BoardMap result = map;
    for (int channel = 1; channel <= 2; channel++) {
      String letter = channel == 1 ? "A" : "B";
      List<Part> parts =
          List.of(
              twoPin("R%d01".formatted(channel), "resistor", "100k"),
              twoPin("R%d02".formatted(channel), "resistor", "220k"),
              part("C%d02".formatted(channel), "cap-pol", "10u 25V", "+", "-"),
              twoPin("R%d04".formatted(channel), "resistor", "4k7"),
              twoPin("R%d05".formatted(channel), "resistor", "1k5"));
      for (Part part : parts) {
        result = result.with(MapTables.PARTS, result.parts().with(part.withChannel(letter)));
      }
      String[] numbers = new String[14];
      for (int i = 0; i < 14; i++) {
        numbers[i] = Integer.toString(i + 1);
      }
      Part array = part("U%d01".formatted(channel), "npn-array", "", numbers);
      result =
          result.with(
              MapTables.PARTS, result.parts().with(array.withCasing("DIP-14").withChannel(letter)));
      result =
          BoardMapSamples.with(
              result,
              net(letter + "_B1", "R%d01.2".formatted(channel), "R%d02.1".formatted(channel))
                  .withChannel(letter),
              net(
                      letter + "_ATT",
                      "C%d02.-".formatted(channel),
                      "R%d04.1".formatted(channel),
                      "U%d01.2".formatted(channel))
                  .withChannel(letter));
    }
    for (String kind : KINDS) {
      result = result.with(MapTables.TWINS, result.twins().with(twins(kind)));
    }
    return result.with(MapTables.TWINS, result.twins().with(twins("U%d01")));
  }

  private static TwinPair twins(String kind) {
    return new TwinPair(
        Subject.of(new PartId(kind.formatted(1))),
        Subject.of(new PartId(kind.formatted(2))),
        List.of(says(Evidence.INFERRED)));
  }

  /** Where a two-pin part lies, on page and photo alike. */
  static Point at(String part) {
    int channel = part.charAt(1) - '0';
    String kind = part.charAt(0) + "%d" + part.substring(2);
    int column = KINDS.indexOf(kind);
    return column < 0
        ? new Point(1900, 400 + 760 * (channel - 1))
        : new Point(500 + 260 * column, 400 + 760 * (channel - 1));
  }

  private static BoardMap placed(BoardMap map) {
    BoardMap result = map;
    for (Part part : map.parts()) {
      Point at = at(part.designator().text());
      boolean array = part.pins().size() > 2;
      List<Point> outline = array ? box(at, 240, 150) : box(at, 110, 46);
      for (PictureId picture : List.of(PAGE, TOP)) {
        result =
            result.with(
                MapTables.PLACEMENTS,
                result
                    .placements()
                    .with(
                        new Placement(
                            picture,
                            Subject.of(part.id()),
                            1,
                            at,
                            outline,
                            List.of(says(Evidence.SEEN)))));
        for (int i = 0; i < part.pins().size(); i++) {
          Point pin = array ? pinOfArray(at, i) : at.plus(i == 0 ? -90 : 90, 0);
          Subject subject = Subject.of(part.ref(part.pins().get(i)));
          result =
              result.with(
                  MapTables.PLACEMENTS,
                  result
                      .placements()
                      .with(new Placement(picture, subject, pin, says(Evidence.MATCHED))));
        }
      }
    }
    HazardZone zone =
        new HazardZone(
            new ZoneId("mains-1"),
            TOP,
            HazardZone.Kind.MAINS,
            box(new Point(500, 1160), 320, 240),
            "inlet and fuse",
            List.of(says(Evidence.SEEN)));
    return result.with(MapTables.ZONES, result.zones().with(zone));
  }

  static Point pinOfArray(Point at, int index) {
    int along = index < 7 ? index : 13 - index;
    return at.plus(-108 + 36 * along, index < 7 ? 54 : -54);
  }

  private static List<Point> box(Point at, double wide, double high) {
    return List.of(
        at.plus(-wide / 2, -high / 2),
        at.plus(wide / 2, -high / 2),
        at.plus(wide / 2, high / 2),
        at.plus(-wide / 2, high / 2));
  }

  private static BufferedImage drawPage() {
    BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = graphics(image);
    g.setColor(new Color(0xF4F1E6));
    g.fillRect(0, 0, WIDE, HIGH);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(4));
    g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 34));
    for (int channel = 1; channel <= 2; channel++) {
      for (String kind : KINDS) {
        String name = kind.formatted(channel);
        Point at = at(name);
        int x = (int) at.x();
        int y = (int) at.y();
        g.drawRect(x - 55, y - 20, 110, 40);
        g.drawLine(x - 130, y, x - 55, y);
        g.drawLine(x + 55, y, x + 130, y);
        g.drawString(name, x - 50, y - 34);
      }
      Point u = at("U%d01".formatted(channel));
      g.drawRect((int) u.x() - 120, (int) u.y() - 75, 240, 150);
      g.drawString("U%d01".formatted(channel), (int) u.x() - 50, (int) u.y() + 10);
    }
    g.dispose();
    return image;
  }

  private static BufferedImage drawPhoto() {
    BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = graphics(image);
    g.setColor(new Color(0xB88A4A));
    g.fillRect(0, 0, WIDE, HIGH);
    for (int channel = 1; channel <= 2; channel++) {
      for (String kind : KINDS) {
        Point at = at(kind.formatted(channel));
        int x = (int) at.x();
        int y = (int) at.y();
        g.setColor(new Color(0xC8C8C8));
        g.setStroke(new BasicStroke(7));
        g.drawLine(x - 90, y, x + 90, y);
        g.setColor(new Color(0xE3C79A));
        g.fillRoundRect(x - 55, y - 23, 110, 46, 24, 24);
        g.setColor(new Color(0x7A3B12));
        g.fillRect(x - 30, y - 23, 12, 46);
        g.setColor(new Color(0x222222));
        g.fillRect(x - 6, y - 23, 12, 46);
      }
      Point u = at("U%d01".formatted(channel));
      g.setColor(new Color(0x202020));
      g.fillRect((int) u.x() - 125, (int) u.y() - 40, 250, 80);
      g.setColor(new Color(0xC8C8C8));
      for (int i = 0; i < 14; i++) {
        Point pin = pinOfArray(u, i);
        g.fillRect((int) pin.x() - 8, (int) pin.y() - 12, 16, 24);
      }
    }
    g.dispose();
    return image;
  }

  private static Graphics2D graphics(BufferedImage image) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    return g;
  }
}
