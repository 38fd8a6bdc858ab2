package org.relegend.table;

import java.util.List;

/** The sorts of table a map can be filled from. */
public enum TableSort {
  /** One row a part. */
  PARTS,
  /**
   * One row for each pin that a net joins; a pin that belongs to several sections has a row for
   * each. A row without a net tells of a pin that is joined to nothing known.
   */
  PINS,
  /** One row for each net of which something is known besides its pins: what it carries. */
  NETS,
  /** One row for each place where something is seen on a picture. */
  PLACEMENTS;

  /** What the columns of such a table are called. */
  public TableColumns columns() {
    return switch (this) {
      case PARTS ->
          new TableColumns(
              List.of("designator"),
              List.of("kind", "value", "package", "channel", "board", "note"));
      case PINS ->
          new TableColumns(List.of("net", "part", "pin"), List.of("role", "section", "evidence"));
      case NETS ->
          new TableColumns(
              List.of("net"), List.of("volts", "nature", "reference", "channel", "note"));
      case PLACEMENTS ->
          new TableColumns(List.of("target", "picture", "x", "y"), List.of("evidence"));
    };
  }
}
