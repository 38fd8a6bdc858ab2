package org.relegend.map;

/** One change of a map. */
public sealed interface Edit extends DocumentEdit<BoardMap>
    permits PutEntry,
        RemoveEntry,
        NetEdits.JoinPins,
        NetEdits.MovePin,
        NetEdits.DetachPin,
        NetEdits.MergeNets,
        ConfirmPlacement,
        ChangeInfo,
        EditGroup {}
