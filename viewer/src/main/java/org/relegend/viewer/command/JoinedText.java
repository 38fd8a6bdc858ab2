package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.stream.Collectors;
import org.relegend.circuit.JoinedList;
import org.relegend.circuit.JoinedPin;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Subject;

/** A joined list for people to read. */
record JoinedText(BoardMap map, String node, JoinedList joined, PlacementCarrier carrier) {
  void print(PrintWriter out) {
    int count = joined.pins().size();
    out.println("%s: %d %s joined, as built".formatted(node, count, count == 1 ? "pin" : "pins"));
    table(out);
    for (JoinedPin pin : joined.alsoDrawnHere()) {
      out.println(
          "  The drawing has %s.%s here; on the board it is on %s."
              .formatted(pin.designator(), pin.pin().pin(), netsOf(pin)));
    }
    joined
        .undecided()
        .forEach(
            part ->
                out.println(
                    "  %s may join more: say how it stands with --at %s=%s."
                        .formatted(
                            map.nameOf(part.part()),
                            map.nameOf(part.part()),
                            String.join("|", part.positions()))));
  }

  private void table(PrintWriter out) {
    TextTable table = new TextTable();
    for (JoinedPin pin : joined.pins()) {
      table.row(
          pin.designator() + "." + pin.pin().pin(),
          pin.role(),
          pin.value(),
          pin.evidence().map(Evidence::word).orElse("no evidence"),
          pin.placements().isEmpty() ? "not placed yet" : PlacementText.text(pin.placements()),
          PlacementText.carriedText(carrier.of(Subject.of(pin.pin()))),
          pin.twins().isEmpty()
              ? ""
              : "twin " + pin.twins().stream().map(map::nameOf).collect(Collectors.joining(", ")),
          pin.through().isEmpty()
              ? ""
              : "through " + String.join(", ", JoinedCommand.passed(map, pin)),
          pin.drawn().isEmpty() ? "" : "drawn on " + drawn(pin));
    }
    table.print(out, "  ");
  }

  private String drawn(JoinedPin pin) {
    String net = JoinedCommand.drawn(map, pin);
    return net.isEmpty() ? "nothing" : net;
  }

  private String netsOf(JoinedPin pin) {
    String nets = JoinedCommand.nets(map, pin);
    return nets.isEmpty() ? "no net" : nets;
  }
}
