package org.relegend.viewer.session;

import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Placement;

/** What an edit, undone or redone, changed on the pictures. */
public final class ChangedMarks {
  private ChangedMarks() {}

  /** The first placement that is new or elsewhere now, else the first that is gone. */
  public static Optional<Placement> place(BoardMap before, BoardMap after) {
    if (before.placements().equals(after.placements())) {
      return Optional.empty();
    }
    return firstMissing(after, before).or(() -> firstMissing(before, after));
  }

  private static Optional<Placement> firstMissing(BoardMap of, BoardMap in) {
    for (Placement placement : of.placements()) {
      if (in.placements().find(placement.key()).filter(placement::equals).isEmpty()
          && of.pictures().has(placement.picture())) {
        return Optional.of(placement);
      }
    }
    return Optional.empty();
  }
}
