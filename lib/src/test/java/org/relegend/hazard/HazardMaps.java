package org.relegend.hazard;

import static org.relegend.map.BoardMapSamples.DIGEST;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.List;
import org.relegend.circuit.DemoMap;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

/** The demo instrument with voltages, places of its mains pins and reservoirs, and zones. */
public final class HazardMaps {
  public static final PictureId SOLDER = new PictureId("solder");

  /** The demo's mains pins and where they lie, in mm on the component side, from its tables. */
  public static final List<String> MAINS =
      List.of(
          "J1.L 8 14",
          "J1.N 14 14",
          "F1.1 30 12",
          "F1.2 50 12",
          "SW1.1 10 31",
          "SW1.2 10 41",
          "SW1.3 18 31",
          "SW1.4 18 41",
          "C1.1 35 30",
          "C1.2 45 30",
          "R1.1 33.7 42",
          "R1.2 46.3 42",
          "T1.1 14 55",
          "T1.2 38 55");

  private static final double SCALE = 15;
  private static final double WIDTH = 250;

  private HazardMaps() {}

  public static BoardMap demo() {
    BoardMap map = DemoMap.map();
    for (Net net : map.nets()) {
      map = map.with(MapTables.NETS, map.nets().with(net.withPotential(potential(net.name()))));
    }
    return map.with(MapTables.PICTURES, map.pictures().with(solder()))
        .with(MapTables.PLACEMENTS, Table.of(placements()))
        .with(MapTables.ZONES, Table.of(zones()));
  }

  private static Photo solder() {
    return new Photo(
        SOLDER,
        "Solder side",
        "photos/solder.jpg",
        MAIN,
        Side.SOLDER,
        BoardTurn.UNKNOWN,
        DIGEST,
        4000,
        3000);
  }

  public static BoardMap with(BoardMap map, String net, Potential.Nature nature, double volts) {
    Net changed = map.net(new NetId(net)).orElseThrow().withPotential(new Potential(nature, volts));
    return map.with(MapTables.NETS, map.nets().with(changed));
  }

  /** With one more part of two pins, between two nets. */
  public static BoardMap joined(
      BoardMap map, String name, String kind, String value, String a, String b) {
    BoardMap more = BoardMapSamples.with(map, BoardMapSamples.twoPin(name, kind, value));
    for (String pin : List.of(a + " " + name + ".1", b + " " + name + ".2")) {
      String[] words = pin.split(" ");
      Net net = more.net(new NetId(words[0])).orElseThrow();
      Net.Member member = BoardMapSamples.net("X", words[1]).members().get(0);
      more = more.with(MapTables.NETS, more.nets().with(net.withMember(member)));
    }
    return more;
  }

  private static Potential potential(String net) {
    if (net.startsWith("MAINS")) {
      return new Potential(Potential.Nature.MAINS, 230);
    }
    return switch (net) {
      case "EARTH" -> new Potential(Potential.Nature.EARTH, 0);
      case "0V" -> new Potential(Potential.Nature.REFERENCE, 0);
      case "AC_A", "AC_B" -> new Potential(Potential.Nature.AC, 17);
      case "RAW_P" -> new Potential(Potential.Nature.DC, 23.1);
      case "RAW_N" -> new Potential(Potential.Nature.DC, -23.1);
      default -> Potential.UNKNOWN;
    };
  }

  private static List<Placement> placements() {
    List<Placement> placements = new ArrayList<>();
    for (String line : MAINS) {
      String[] words = line.split(" ");
      place(
          placements,
          Subject.of(PinRef.parse(words[0])),
          Double.parseDouble(words[1]),
          Double.parseDouble(words[2]));
    }
    place(placements, Subject.parse("C2"), 64, 32);
    place(placements, Subject.parse("C3"), 64, 48);
    return placements;
  }

  private static void place(List<Placement> placements, Subject subject, double x, double y) {
    placements.add(new Placement(TOP, subject, at(x, y), says(Evidence.SEEN)));
    placements.add(new Placement(SOLDER, subject, at(WIDTH - x, y), says(Evidence.SEEN)));
  }

  private static Point at(double x, double y) {
    return new Point(x * SCALE, y * SCALE);
  }

  private static List<HazardZone> zones() {
    return List.of(
        zone("mains-top", TOP, HazardZone.Kind.MAINS, 2, 2, 56, 62),
        zone("mains-solder", SOLDER, HazardZone.Kind.MAINS, 194, 2, 248, 62),
        zone("charge-top", TOP, HazardZone.Kind.STORED_CHARGE, 56.5, 24.5, 73.5, 55),
        zone("charge-solder", SOLDER, HazardZone.Kind.STORED_CHARGE, 176.5, 24.5, 193.5, 55));
  }

  static HazardZone zone(
      String id,
      PictureId picture,
      HazardZone.Kind kind,
      double left,
      double top,
      double right,
      double bottom) {
    return new HazardZone(
        new ZoneId(id),
        picture,
        kind,
        List.of(at(left, top), at(right, top), at(right, bottom), at(left, bottom)),
        "",
        List.of(says(Evidence.SEEN)));
  }
}
