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
    List<String> told = new ArrayList<>();
    tell(told, partsAdded, "part", "added");
    tell(told, partsChanged, "part", "changed");
    tell(told, netsAdded, "net", "added");
    tell(told, netsChanged, "net", "changed");
    tell(told, pinsJoined, "pin", "joined");
    tell(told, placementsAdded, "placement", "added");
    tell(told, placementsChanged, "placement", "changed");
    return told.isEmpty() ? "nothing new" : String.join(", ", told);
  }

  private static void tell(List<String> told, int count, String what, String done) {
    if (count > 0) {
      told.add(String.format(Locale.ROOT, "%,d %s%s %s", count, what, count == 1 ? "" : "s", done));
    }
  }
}
