package org.relegend.share;

import java.util.List;
import org.relegend.map.Board;
import org.relegend.map.Channel;
import org.relegend.map.Clash;
import org.relegend.map.ClashEdits;
import org.relegend.map.Deviation;
import org.relegend.map.Discrepancy;
import org.relegend.map.Edit;
import org.relegend.map.HazardZone;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.Part;
import org.relegend.map.PartEdits;
import org.relegend.map.Picture;
import org.relegend.map.PictureEdits;
import org.relegend.map.PicturePairs;
import org.relegend.map.Placement;
import org.relegend.map.PlacementEdits;
import org.relegend.map.TwinPair;

/** The edits that put one entry of a map, or take it away. */
final class EntryEdits {
  private EntryEdits() {}

  /** The edits that put an entry as it is. */
  static List<Edit> putting(Object entry) {
    if (entry instanceof Board board) {
      return List.of(new PictureEdits.PutBoard(board));
    }
    if (entry instanceof Picture picture) {
      return List.of(new PictureEdits.PutPicture(picture));
    }
    if (entry instanceof Channel channel) {
      return List.of(new PartEdits.PutChannel(channel));
    }
    if (entry instanceof Part part) {
      return List.of(new PartEdits.PutPart(part));
    }
    if (entry instanceof Net net) {
      return List.of(new NetEdits.PutNet(net));
    }
    if (entry instanceof Placement placement) {
      return List.of(new PlacementEdits.Place(placement));
    }
    if (entry instanceof TwinPair twin) {
      // declaring twins adds to what is known: the pair as it was goes first
      return List.of(new PartEdits.RemoveTwin(twin.key()), new PartEdits.DeclareTwin(twin));
    }
    if (entry instanceof Discrepancy discrepancy) {
      return List.of(new NetEdits.PutDiscrepancy(discrepancy));
    }
    if (entry instanceof HazardZone zone) {
      return List.of(new PictureEdits.PutZone(zone));
    }
    if (entry instanceof Mating mating) {
      return List.of(new PartEdits.PutMating(mating));
    }
    if (entry instanceof Deviation deviation) {
      return List.of(new PartEdits.PutDeviation(deviation));
    }
    if (entry instanceof PicturePairs pairs) {
      return List.of(new PictureEdits.PutPairs(pairs));
    }
    if (entry instanceof Clash clash) {
      return List.of(new ClashEdits.PutClash(clash));
    }
    throw new IllegalStateException("no edit puts " + entry.getClass());
  }

  /** The edit that takes an entry away. */
  static Edit removing(Object entry) {
    if (entry instanceof Board board) {
      return new PictureEdits.RemoveBoard(board.id());
    }
    if (entry instanceof Picture picture) {
      return new PictureEdits.RemovePicture(picture.id());
    }
    if (entry instanceof Channel channel) {
      return new PartEdits.RemoveChannel(channel.name());
    }
    if (entry instanceof Part part) {
      return new PartEdits.RemovePart(part.id());
    }
    if (entry instanceof Net net) {
      return new NetEdits.RemoveNet(net.id());
    }
    if (entry instanceof Placement placement) {
      return new PlacementEdits.Unplace(placement.key());
    }
    if (entry instanceof TwinPair twin) {
      return new PartEdits.RemoveTwin(twin.key());
    }
    if (entry instanceof Discrepancy discrepancy) {
      return new NetEdits.RemoveDiscrepancy(discrepancy.key());
    }
    if (entry instanceof HazardZone zone) {
      return new PictureEdits.RemoveZone(zone.id());
    }
    if (entry instanceof Mating mating) {
      return new PartEdits.RemoveMating(mating);
    }
    if (entry instanceof Deviation deviation) {
      return new PartEdits.RemoveDeviation(deviation.key());
    }
    if (entry instanceof PicturePairs pairs) {
      return new PictureEdits.RemovePairs(pairs.key());
    }
    if (entry instanceof Clash clash) {
      return new ClashEdits.RemoveClash(clash.key());
    }
    throw new IllegalStateException("no edit removes " + entry.getClass());
  }
}
