package org.relegend.hazard;

import java.util.List;
import org.relegend.circuit.Node;
import org.relegend.map.HazardZone;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * A node at which someone can be hurt.
 *
 * @param kind mains or high voltage
 * @param volts nominal, root mean square for mains and AC, the peak where computed; 0 where not
 *     given
 * @param source the net whose declaration it follows from; the node itself where it is declared
 * @param through the parts between there and here, nearest to the source first; of a danger in a
 *     fault the part that would have to fail
 * @param computed whether the voltage was worked out and isn't what a net tells
 */
public record HazardousNode(
    Node node,
    List<PinRef> pins,
    HazardZone.Kind kind,
    double volts,
    Node source,
    List<PartId> through,
    boolean computed) {
  public HazardousNode {
    pins = List.copyOf(pins);
    through = List.copyOf(through);
  }
}
