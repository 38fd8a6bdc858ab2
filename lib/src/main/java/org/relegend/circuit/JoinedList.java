package org.relegend.circuit;

import java.util.List;
import org.relegend.map.NetId;
import org.relegend.map.PartId;

/**
 * All that is joined at a node, as the copper has it.
 *
 * @param nets the net asked for first, then those that were reached through passed parts; empty for
 *     a loose pin and for a name that only the drawing has
 * @param pins in order of part and pin, net by net
 * @param alsoDrawnHere pins that the drawing has at this node but the board elsewhere
 * @param undecided switches and relays at the node of which nobody said how they stand
 */
public record JoinedList(
    List<NetId> nets,
    List<JoinedPin> pins,
    List<JoinedPin> alsoDrawnHere,
    List<Undecided> undecided) {
  /** A part that may join more, in one of these positions. */
  public record Undecided(PartId part, List<String> positions) {
    public Undecided {
      positions = List.copyOf(positions);
    }
  }

  public JoinedList {
    nets = List.copyOf(nets);
    pins = List.copyOf(pins);
    alsoDrawnHere = List.copyOf(alsoDrawnHere);
    undecided = List.copyOf(undecided);
  }
}
