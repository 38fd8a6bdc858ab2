package org.relegend.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What an import does to a map, counted.
 *
 * @param pinsJoined pins that are joined to a net anew or moved to another one
 */
public record ImportSummary(
    int partsAdded,
    int partsChanged,
    int netsAdded,
    int netsChanged,
    int pinsJoined,
    int placementsAdded,
    int placementsChanged) {

  /** For people: "102 parts added, 67 nets added, 259 pins joined", or "nothing new". */
  @Override
  public String toString() {
    List<String> lines = new ArrayList<>();
    tell(lines, partsAdded, "part", "added");
    tell(lines, partsChanged, "part", "changed");
    tell(lines, netsAdded, "net", "added");
    tell(lines, netsChanged, "net", "changed");
    tell(lines, pinsJoined, "pin", "joined");
    tell(lines, placementsAdded, "placement", "added");
    tell(lines, placementsChanged, "placement", "changed");
    return lines.isEmpty() ? "nothing new" : String.join(", ", lines);
  }

  private static void tell(List<String> lines, int count, String what, String done) {
    if (count > 0) {
      lines.add(
          String.format(Locale.ROOT, "%,d %s%s %s", count, what, count == 1 ? "" : "s", done));
    }
  }
}
