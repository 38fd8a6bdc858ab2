package org.relegend.viewer.session;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.says;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.EditHistory;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;
import org.relegend.viewer.mode.Modes;
import org.relegend.viewer.work.OwnerThread;

/** A session at a small two-channel map, with a hand that counts its clicks and keys. */
public final class SessionBench {
  public static final PictureId SOLDER = new PictureId("solder");

  public final Session session;
  public final List<ViewRequest> looks = new ArrayList<>();
  public final Map<Change, Integer> heard = new EnumMap<>(Change.class);
  public int clicks;
  public int keys;

  public SessionBench(BoardMap map) {
    session =
        new Session(
            new EditHistory(map),
            OwnerThread.current(),
            Clock.fixed(NOON, ZoneOffset.UTC),
            Modes.rooms());
    session.onLook(looks::add);
    session.listen(change -> heard.merge(change, 1, Integer::sum));
  }

  /** Two channels of R, C and a transistor, one shared array; a photo of each side, and a page. */
  public static BoardMap twoChannels() {
    BoardMap map =
        with(
            BoardMapSamples.blank(),
            twoPin("R101", "resistor", "100k").withChannel("A"),
            twoPin("R102", "resistor", "220k").withChannel("A"),
            part("C102", "cap-pol", "10u 25V", "+", "-").withChannel("A"),
            part("Q101", "npn", "", "E", "B", "C").withChannel("A"),
            twoPin("R201", "resistor", "100k").withChannel("B"),
            twoPin("R202", "resistor", "220k").withChannel("B"),
            part("C202", "cap-pol", "10u 50V", "+", "-").withChannel("B"),
            part("Q201", "npn", "", "E", "B", "C").withChannel("B"),
            twoPin("R225", "resistor", "47k").withChannel("B"),
            array("U101"));
    map =
        with(
            map,
            net("A_B1", "R101.2", "R102.1", "Q101.B"),
            net("A_C1", "Q101.C", "C102.+"),
            net("A_ATT", "C102.-", "U101.2"),
            net("B_B1", "R201.2", "R202.1", "Q201.B"),
            net("B_C1", "Q201.C", "C202.+"),
            net("B_ATT", "C202.-", "U101.4"));
    Photo below =
        new Photo(
            SOLDER,
            "Solder side",
            "photos/solder.jpg",
            MAIN,
            Side.SOLDER,
            BoardTurn.SIDE_EDGE,
            BoardMapSamples.DIGEST,
            4000,
            3000);
    map = map.with(MapTables.PICTURES, map.pictures().with(below));
    for (String kind : List.of("R%d01", "R%d02", "C%d02", "Q%d01")) {
      map =
          map.with(MapTables.TWINS, map.twins().with(twins(kind.formatted(1), kind.formatted(2))));
    }
    return map;
  }

  private static TwinPair twins(String a, String b) {
    return new TwinPair(
        Subject.of(new PartId(a)), Subject.of(new PartId(b)), List.of(says(Evidence.INFERRED)));
  }

  public static Part array(String designator) {
    String[] pins = new String[14];
    for (int i = 0; i < 14; i++) {
      pins[i] = Integer.toString(i + 1);
    }
    return part(designator, "npn-array", "", pins).withCasing("DIP-14");
  }

  public static BoardMap placed(BoardMap map, PictureId on, String subject, double x, double y) {
    Placement placement =
        new Placement(on, Subject.parse(subject), new Point(x, y), says(Evidence.SEEN));
    return map.with(MapTables.PLACEMENTS, map.placements().with(placement));
  }

  /** C102 and C202 with their nets, on page and photo. */
  public static BoardMap placedChannels() {
    BoardMap map = twoChannels();
    map = placed(map, PAGE, "C102", 200, 100);
    map = placed(map, PAGE, "C102.-", 210, 100);
    map = placed(map, PAGE, "C202", 200, 400);
    map = placed(map, TOP, "C102", 1000, 800);
    map = placed(map, TOP, "C102.-", 1010, 800);
    map = placed(map, TOP, "C202", 1000, 2300);
    map = placed(map, TOP, "C202.-", 1010, 2300);
    return placed(map, TOP, "U101.2", 1500, 900);
  }

  public static HazardZone mains(
      PictureId on, double left, double top, double right, double bottom) {
    List<Point> outline =
        List.of(
            new Point(left, top),
            new Point(right, top),
            new Point(right, bottom),
            new Point(left, bottom));
    return new HazardZone(
        new ZoneId("mains-1"),
        on,
        HazardZone.Kind.MAINS,
        outline,
        "",
        List.of(says(Evidence.SEEN)));
  }

  public static BoardMap with(BoardMap map, HazardZone zone) {
    return map.with(MapTables.ZONES, map.zones().with(zone));
  }

  public void click(PictureId picture, double x, double y) {
    clicks++;
    session.click(new Click(picture, new Point(x, y), 8, false));
  }

  public void key(Runnable key) {
    keys++;
    key.run();
  }

  public Notice.Kind lastNotice() {
    return session.notice().orElseThrow().kind();
  }

  public Placement place(PictureId on, String subject) {
    return session
        .map()
        .placements()
        .find(new Placement.Key(on, Subject.parse(subject), 1))
        .orElseThrow();
  }

  public List<String> cards() {
    return session.selection().strip().cards().stream()
        .map(card -> session.map().nameOf(card.subject()))
        .toList();
  }

  public static PinRef pin(String text) {
    return PinRef.parse(text);
  }

  private static BoardMap with(BoardMap map, Part... parts) {
    return BoardMapSamples.with(map, parts);
  }

  private static BoardMap with(BoardMap map, Net... nets) {
    return BoardMapSamples.with(map, nets);
  }
}
