package org.relegend.store;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.says;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Attestation;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Channel;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Clash;
import org.relegend.map.Designator;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Section;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;

/** A small map in which every field of the format is used, with texts that are hard to write. */
final class FullMap {
  static final PartId DUAL = new PartId("U1");
  static final Attestation KIM =
      new Attestation(
          Evidence.MEASURED, "Kim \"K\" Ö", NOON, "2.2 Ω,\n\tboth \\ ends \u202E rtl \uD83D\uDD27");

  private FullMap() {}

  static BoardMap make() {
    BoardMap map = BoardMapSamples.divider();
    List<Point> corners = List.of(new Point(1, 2), new Point(30.25, 2), new Point(1e-3, 44));
    return map.withInfo(new MapInfo("T / '1'", "Maker", "Model", "B", "line one\nline two"))
        .with(
            MapTables.BOARDS,
            Table.of(
                List.of(
                    new Board(MAIN, "Main board", "2", 200.5, 120, "a note"),
                    Board.named(new BoardId("supply")))))
        .with(
            MapTables.PICTURES,
            map.pictures()
                .with(
                    new Photo(
                        new PictureId("solder"),
                        "",
                        "photos/solder side.jpg",
                        MAIN,
                        Side.SOLDER,
                        BoardTurn.SIDE_EDGE,
                        "ab".repeat(32),
                        4000,
                        3000)))
        .with(
            MapTables.CHANNELS,
            Table.of(List.of(new Channel("A", "Left", ""), new Channel("B", "", "second"))))
        .with(
            MapTables.PARTS, map.parts().withAll(List.of(dual(), connector("J1"), connector("J2"))))
        .with(MapTables.NETS, map.nets().with(supply()))
        .with(
            MapTables.PLACEMENTS,
            Table.of(
                List.of(
                    new Placement(TOP, Subject.of(DUAL), 1, new Point(7, 8.5), corners, both()),
                    new Placement(PAGE, Subject.of(new NetId("+15 V")), new Point(1, 1), KIM),
                    new Placement(
                        PAGE,
                        Subject.of(new NetId("+15 V")),
                        2,
                        new Point(3, 1),
                        List.of(),
                        both()),
                    new Placement(PAGE, Subject.parse("U1/gang 2"), new Point(9, 9), KIM))))
        .with(
            MapTables.TWINS,
            Table.of(List.of(new TwinPair(Subject.parse("R2.1"), Subject.parse("R1.1"), both()))))
        .with(
            MapTables.DISCREPANCIES,
            Table.of(
                List.of(
                    new DrawingDiscrepancy(
                        Subject.parse("R1.1"),
                        DrawingDiscrepancy.Aspect.NET,
                        "",
                        both(),
                        "not drawn"),
                    new DrawingDiscrepancy(
                        Subject.parse("R1"), DrawingDiscrepancy.Aspect.VALUE, "4k7", both(), ""))))
        .with(
            MapTables.ZONES,
            Table.of(
                List.of(
                    new HazardZone(
                        new ZoneId("z1"),
                        TOP,
                        HazardZone.Kind.STORED_CHARGE,
                        corners,
                        "C9",
                        both()))))
        .with(MapTables.MATINGS, Table.of(List.of(new Mating(new PartId("J2"), new PartId("J1")))))
        .with(
            MapTables.DEVIATIONS,
            Table.of(
                List.of(
                    new ChannelDeviation(
                        List.of(Subject.parse("R2.1"), Subject.parse("R1.1")),
                        ChannelDeviation.Aspect.CONNECTION,
                        ChannelDeviation.Cause.REPAIR,
                        both(),
                        "wire added"),
                    new ChannelDeviation(
                        List.of(Subject.parse("R2")),
                        ChannelDeviation.Aspect.MISSING,
                        ChannelDeviation.Cause.DESIGN,
                        both(),
                        ""))))
        .with(
            MapTables.LINE_UPS,
            Table.of(
                List.of(
                    pairs("solder", PicturePairs.Origin.CLICKED),
                    pairs("closer", PicturePairs.Origin.AUTOMATIC))))
        .with(
            MapTables.CLASHES,
            Table.of(
                List.of(
                    new Clash(
                        "parts R1 value",
                        1,
                        List.of(new Clash.Cell("parts", "R1", "value", "\"4k7\"", "\"5k6\""))),
                    new Clash(
                        "parts R1 value",
                        2,
                        List.of(
                            new Clash.Cell("parts", "R1", "", "", "{\"id\":\"R1\"}"),
                            new Clash.Cell("info", "", "note", "\"a\\nb\"", ""))))));
  }

  private static PicturePairs pairs(String with, PicturePairs.Origin found) {
    return new PicturePairs(
        TOP,
        new PictureId(with),
        found,
        List.of(
            new PicturePairs.Spot(new Point(1, 2.5), new Point(30, 4)),
            new PicturePairs.Spot(new Point(1e-3, 0), new Point(3, 4e3))),
        both());
  }

  static List<Attestation> both() {
    return List.of(KIM, says(Evidence.GUESSED));
  }

  private static Part dual() {
    Map<String, String> roles = new LinkedHashMap<>();
    roles.put("3", "in+");
    roles.put("2", "in-");
    roles.put("1", "out");
    return new Part(
        DUAL,
        new Designator("IC1"),
        "dual-opamp",
        "TL072 \"A\"",
        "DIP-8",
        MAIN,
        "A",
        List.of(new Pin("1", "out"), new Pin("2", ""), new Pin("3", ""), new Pin("+", "V+")),
        List.of(new Section("gang 2", roles), new Section("b/c", Map.of())),
        "socketed");
  }

  private static Part connector(String name) {
    return BoardMapSamples.part(name, "connector", "", "1", "2").withBoard(new BoardId("supply"));
  }

  private static Net supply() {
    return new Net(
        new NetId("+15 V"),
        "+15 V main",
        "A",
        new Potential(Potential.Nature.DC, 15.5),
        List.of(
            new Net.Member(PinRef.parse("U1.+"), both()),
            new Net.Member(PinRef.parse("J1.1"), List.of())),
        "rail");
  }
}
