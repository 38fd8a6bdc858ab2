package org.relegend.hazard;

import java.util.List;
import org.relegend.circuit.Node;
import org.relegend.map.Subject;

/**
 * Something that looks like mains, though nothing in the map says that it is: nobody declared the
 * net, and the kind of the part brings no mains in.
 *
 * @param subject the part or net
 * @param sign what it is known by, in words that go on after its name
 * @param nodes where mains would come in; at least one
 */
public record MainsSign(Subject subject, String sign, List<Node> nodes) {
  public MainsSign {
    nodes = List.copyOf(nodes);
  }
}
