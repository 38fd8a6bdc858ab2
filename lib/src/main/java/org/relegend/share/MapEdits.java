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
import org.relegend.store.TableCodec;

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
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      remove(codec, before, after, removals);
    }
    steps.addAll(removals);
    BoardMap cleared = new EditGroup(title, steps).applyTo(before);
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      put(codec, cleared, after, steps);
    }
    EditGroup edit = new EditGroup(title, steps);
    if (!edit.applyTo(before).equals(after)) {
      throw new EditRefusedException("The two maps can't be brought together in one step.");
    }
    return edit;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void remove(
      TableCodec<K, V> codec, BoardMap before, BoardMap after, List<Edit> removals) {
    for (V entry : codec.table().of(before)) {
      if (!codec.table().of(after).has(entry.key())) {
        removals.add(0, codec.table().remove(entry.key()));
      }
    }
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void put(
      TableCodec<K, V> codec, BoardMap now, BoardMap after, List<Edit> steps) {
    for (V entry : codec.table().of(after)) {
      Optional<V> there = codec.table().of(now).find(entry.key());
      if (!there.filter(entry::equals).isPresent()) {
        steps.addAll(codec.table().exactly(entry));
      }
    }
  }
}
