package org.relegend.table;

import java.util.Optional;
import org.relegend.map.BoardId;
import org.relegend.map.Designator;

/**
 * A part as technicians write it: R101, or main:R101 where several boards have one. No designator
 * holds a colon, so each text has one reading.
 */
record PartName(Optional<BoardId> board, Designator designator) {
  static PartName parse(String text) {
    int colon = text.indexOf(':');
    return colon < 0
        ? new PartName(Optional.empty(), new Designator(text))
        : new PartName(
            Optional.of(new BoardId(text.substring(0, colon))),
            new Designator(text.substring(colon + 1)));
  }

  @Override
  public String toString() {
    return board.map(b -> b + ":").orElse("") + designator;
  }
}
