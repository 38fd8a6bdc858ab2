package org.relegend.circuit;

import java.util.Optional;
import org.relegend.map.PinRef;

/**
 * One way from a node to the next: through a part, from a connector to the one it is plugged into
 * (then the two pins are of two parts), or by a pin that stands on both nets by mistake (then in
 * and out are one pin).
 *
 * @param along whether it goes the way that current takes through a junction; true for all else
 * @param position the position in which a contact is closed; empty for all else
 * @param passage what an extended node would call it; empty where it counts as another node
 */
public record NodeStep(
    Node from,
    PinRef in,
    PinRef out,
    Node to,
    Conduction conduction,
    boolean along,
    String position,
    Optional<Passage> passage) {}
