package org.relegend.table;

import java.util.List;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/**
 * Pins of a typed line that the map has on another net. Only the technician can tell which of the
 * three choices is right.
 *
 * @param wanted the net of the line
 * @param other the net they are on in the map
 * @param evidence what the line rests on
 */
public record NetClash(NetId wanted, NetId other, List<PinRef> pins, Attestation evidence) {
  /** What can be done about it. */
  public enum Choice {
    /** The two nets are one. */
    JOIN,
    /** The map was wrong: take the pins off the other net. */
    MOVE,
    /** The line was wrong: leave the pins where they are. */
    LEAVE
  }

  public NetClash {
    pins = List.copyOf(pins);
  }

  /** The edit that a choice comes to, to be made after the line's own; none for leaving. */
  public Optional<Edit> edit(Choice choice) {
    return switch (choice) {
      case JOIN -> Optional.of(joined());
      case MOVE ->
          Optional.of(
              new EditGroup(
                  "Move pins to the traced net",
                  pins.stream()
                      .map(pin -> (Edit) new NetEdits.MovePin(pin, wanted, evidence))
                      .toList()));
      case LEAVE -> Optional.empty();
    };
  }

  private Edit joined() {
    List<Net.Member> members =
        pins.stream().map(pin -> new Net.Member(pin, List.of(evidence))).toList();
    return new EditGroup(
        "Join two nets",
        List.of(
            new NetEdits.JoinPins(wanted, List.of()), // makes the net if it isn't there
            new NetEdits.MergeNets(wanted, other),
            new NetEdits.JoinPins(wanted, members)));
  }
}
