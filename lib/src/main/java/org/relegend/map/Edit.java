package org.relegend.map;

/**
 * One change of a map, as a value: what is asked, a label for the undo menu, and a pure function
 * from map to map. Undo needs no inverse, since the earlier map lives on.
 */
public sealed interface Edit
    permits PictureEdits.PutBoard,
        PictureEdits.RemoveBoard,
        PictureEdits.PutPicture,
        PictureEdits.RemovePicture,
        PictureEdits.PutZone,
        PictureEdits.RemoveZone,
        PictureEdits.PutPairs,
        PictureEdits.RemovePairs,
        PartEdits.PutPart,
        PartEdits.RemovePart,
        PartEdits.PutChannel,
        PartEdits.RemoveChannel,
        PartEdits.PutMating,
        PartEdits.RemoveMating,
        PartEdits.DeclareTwin,
        PartEdits.RemoveTwin,
        PartEdits.PutDeviation,
        PartEdits.RemoveDeviation,
        NetEdits.PutNet,
        NetEdits.RemoveNet,
        NetEdits.JoinPins,
        NetEdits.MovePin,
        NetEdits.DetachPin,
        NetEdits.MergeNets,
        NetEdits.PutDiscrepancy,
        NetEdits.RemoveDiscrepancy,
        PlacementEdits.Place,
        PlacementEdits.Unplace,
        PlacementEdits.Confirm,
        ClashEdits.PutClash,
        ClashEdits.RemoveClash,
        ChangeInfo,
        EditGroup {
  /** What it does, in a few words, for the undo menu; told from the map it is applied to. */
  String label(BoardMap map);

  /**
   * The map with this change made.
   *
   * @throws EditRefusedException where it can't be made; nothing has changed then
   */
  BoardMap applyTo(BoardMap map) throws EditRefusedException;
}
