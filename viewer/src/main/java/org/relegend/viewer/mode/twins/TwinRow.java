package org.relegend.viewer.mode.twins;

import java.util.List;
import java.util.Optional;
import org.relegend.map.Deviation;
import org.relegend.map.Subject;
import org.relegend.twin.Contradiction;
import org.relegend.twin.Difference;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.Seed;
import org.relegend.twin.TwinGroup;

/** One line of what follows from the twins that are known. */
public sealed interface TwinRow {
  /** Where it leads to. */
  Subject place();

  /** A pair that people said and that can't be right, or not beside others. */
  record Clash(Seed said, Contradiction why) implements TwinRow {
    @Override
    public Subject place() {
      return said.a();
    }
  }

  /** Where the two channels differ, with what was said of it. */
  record Differs(Difference difference, Optional<Deviation.Cause> mark) implements TwinRow {
    @Override
    public Subject place() {
      List<Subject> first = difference.a().isEmpty() ? difference.b() : difference.a();
      return first.get(0);
    }
  }

  /** Any of these may be the twin of any of those. */
  record Alike(TwinGroup group) implements TwinRow {
    @Override
    public Subject place() {
      return group.a().get(0);
    }
  }

  /** Two that should be twins. */
  record Pair(ProposedTwin pair, boolean rejected) implements TwinRow {
    @Override
    public Subject place() {
      return pair.a();
    }
  }
}
