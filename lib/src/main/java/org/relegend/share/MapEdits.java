package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.ChangeInfo;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Keyed;

/** Tells what leads from one map to another as one edit, so that a merge can be undone. */
public final class MapEdits {
  private MapEdits() {}

  /**
   * The edit that makes {@code after} of {@code before}.
   *
   * @throws EditRefusedException where no edits lead there
   */
  public static EditGroup between(String title, BoardMap before, BoardMap after)
      throws EditRefusedException {
    List<Edit> steps = new ArrayList<>();
    if (!before.info().equals(after.info())) {
      steps.add(new ChangeInfo(after.info()));
    }
    List<Edit> removals = new ArrayList<>();
    for (Rule<?, ?> rule : Rules.ALL) {
      remove(rule, before, after, removals);
    }
    steps.addAll(removals);
    BoardMap cleared = new EditGroup(title, steps).applyTo(before);
    for (Rule<?, ?> rule : Rules.ALL) {
      put(rule, cleared, after, steps);
    }
    EditGroup edit = new EditGroup(title, steps);
    if (!edit.applyTo(before).equals(after)) {
      throw new EditRefusedException("The two maps can't be brought together in one step.");
    }
    return edit;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void remove(
      Rule<K, V> rule, BoardMap before, BoardMap after, List<Edit> removals) {
    for (V entry : rule.of(before)) {
      if (!rule.of(after).has(entry.key())) {
        removals.add(0, EntryEdits.removing(entry));
      }
    }
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void put(
      Rule<K, V> rule, BoardMap now, BoardMap after, List<Edit> steps) {
    for (V entry : rule.of(after)) {
      Optional<V> there = rule.of(now).find(entry.key());
      if (!there.filter(entry::equals).isPresent()) {
        steps.addAll(EntryEdits.putting(entry));
      }
    }
  }
}
