package org.relegend.table;

import java.util.List;
import org.relegend.map.EditGroup;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * What a typed line comes to.
 *
 * @param net the net it is about
 * @param edit makes new parts and pins, and joins all pins that are on no other net
 * @param joined the pins that the edit joins
 * @param made the parts that the map didn't have
 * @param clashes pins on other nets, which the edit leaves alone; one clash for each such net
 */
public record TraceResult(
    NetId net, EditGroup edit, List<PinRef> joined, List<PartId> made, List<NetClash> clashes) {
  public TraceResult {
    joined = List.copyOf(joined);
    made = List.copyOf(made);
    clashes = List.copyOf(clashes);
  }
}
