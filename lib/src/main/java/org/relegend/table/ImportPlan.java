package org.relegend.table;

import java.util.List;
import org.relegend.map.EditGroup;

/**
 * What taking tables into a map comes to.
 *
 * @param edit to be applied to the very map the plan was made for; without steps where the map has
 *     all of it
 * @param warnings what was left out of the tables, and what keeps a part's pins from being told
 */
public record ImportPlan(EditGroup edit, ImportSummary summary, List<String> warnings) {
  public ImportPlan {
    warnings = List.copyOf(warnings);
  }
}
