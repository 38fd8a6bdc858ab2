package org.relegend.store;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;

/** One edit of each kind, made of the values of {@link FullMap}. */
final class EditSamples {
  private EditSamples() {}

  static List<Edit> all() {
    BoardMap map = FullMap.make();
    PinRef pin = PinRef.parse("U1.+");
    Placement placement = map.placements().at(0);
    Mating mating = new Mating(new PartId("J1"), new PartId("J2"));
    List<Net.Member> members = List.of(new Net.Member(pin, FullMap.both()));
    DrawingDiscrepancy discrepancy = map.discrepancies().at(0);
    TwinPair twin = map.twins().at(0);
    Edit group =
        new EditGroup(
            "Two at once",
            List.of(
                MapTables.PARTS.remove(FullMap.DUAL),
                new EditGroup("", List.of(MapTables.NETS.remove(new NetId("a b"))))));
    return List.of(
        MapTables.BOARDS.put(map.boards().at(0)),
        MapTables.BOARDS.remove(MAIN),
        MapTables.PICTURES.put(map.pictures().at(2)),
        MapTables.PICTURES.remove(TOP),
        MapTables.ZONES.put(map.zones().at(0)),
        MapTables.ZONES.remove(new ZoneId("z1")),
        MapTables.LINE_UPS.put(map.lineUps().at(0)),
        MapTables.LINE_UPS.remove(map.lineUps().at(0).key()),
        MapTables.PARTS.put(map.part(FullMap.DUAL).orElseThrow()),
        MapTables.PARTS.remove(FullMap.DUAL),
        MapTables.CHANNELS.put(map.channels().at(0)),
        MapTables.CHANNELS.remove("A"),
        MapTables.MATINGS.put(mating),
        MapTables.MATINGS.remove(mating),
        MapTables.TWINS.put(twin),
        MapTables.TWINS.remove(twin.key()),
        MapTables.DEVIATIONS.put(map.deviations().at(0)),
        MapTables.DEVIATIONS.remove(map.deviations().at(0).key()),
        MapTables.NETS.put(map.net(new NetId("+15 V")).orElseThrow()),
        MapTables.NETS.remove(new NetId("+15 V")),
        new NetEdits.JoinPins(new NetId("MID"), members),
        new NetEdits.MovePin(pin, new NetId("MID"), FullMap.KIM),
        new NetEdits.DetachPin(new NetId("+15 V"), pin),
        new NetEdits.MergeNets(new NetId("MID"), new NetId("VP")),
        MapTables.DISCREPANCIES.put(discrepancy),
        MapTables.DISCREPANCIES.remove(discrepancy.key()),
        MapTables.PLACEMENTS.put(placement),
        MapTables.PLACEMENTS.remove(new Placement.Key(TOP, Subject.parse("net:a/b c.d"), 3)),
        new ConfirmPlacement(placement.key(), FullMap.KIM),
        MapTables.CLASHES.put(map.clashes().at(0)),
        MapTables.CLASHES.remove(map.clashes().at(1).key()),
        new ChangeInfo(new MapInfo("t", "", "", "", "two\nlines")),
        group);
  }
}
