package org.relegend.store;

import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.ClashEdits;
import org.relegend.map.Discrepancy;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapInfo;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PartEdits;
import org.relegend.map.PartId;
import org.relegend.map.PictureEdits;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.PlacementEdits;
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
    Discrepancy discrepancy = map.discrepancies().at(0);
    TwinPair twin = map.twins().at(0);
    Edit group =
        new EditGroup(
            "Two at once",
            List.of(
                new PartEdits.RemovePart(FullMap.DUAL),
                new EditGroup("", List.of(new NetEdits.RemoveNet(new NetId("a b"))))));
    return List.of(
        new PictureEdits.PutBoard(map.boards().at(0)),
        new PictureEdits.RemoveBoard(MAIN),
        new PictureEdits.PutPicture(map.pictures().at(2)),
        new PictureEdits.RemovePicture(TOP),
        new PictureEdits.PutZone(map.zones().at(0)),
        new PictureEdits.RemoveZone(new ZoneId("z1")),
        new PictureEdits.PutPairs(map.lineUps().at(0)),
        new PictureEdits.RemovePairs(map.lineUps().at(0).key()),
        new PartEdits.PutPart(map.part(FullMap.DUAL).orElseThrow()),
        new PartEdits.RemovePart(FullMap.DUAL),
        new PartEdits.PutChannel(map.channels().at(0)),
        new PartEdits.RemoveChannel("A"),
        new PartEdits.PutMating(mating),
        new PartEdits.RemoveMating(mating),
        new PartEdits.DeclareTwin(twin),
        new PartEdits.RemoveTwin(twin.key()),
        new PartEdits.PutDeviation(map.deviations().at(0)),
        new PartEdits.RemoveDeviation(map.deviations().at(0).key()),
        new NetEdits.PutNet(map.net(new NetId("+15 V")).orElseThrow()),
        new NetEdits.RemoveNet(new NetId("+15 V")),
        new NetEdits.JoinPins(new NetId("MID"), members),
        new NetEdits.MovePin(pin, new NetId("MID"), FullMap.KIM),
        new NetEdits.DetachPin(new NetId("+15 V"), pin),
        new NetEdits.MergeNets(new NetId("MID"), new NetId("VP")),
        new NetEdits.PutDiscrepancy(discrepancy),
        new NetEdits.RemoveDiscrepancy(discrepancy.key()),
        new PlacementEdits.Place(placement),
        new PlacementEdits.Unplace(new Placement.Key(TOP, Subject.parse("net:a/b c.d"), 3)),
        new PlacementEdits.Confirm(placement.key(), FullMap.KIM),
        new ClashEdits.PutClash(map.clashes().at(0)),
        new ClashEdits.RemoveClash(map.clashes().at(1).key()),
        new ChangeInfo(new MapInfo("t", "", "", "", "two\nlines")),
        group);
  }
}
