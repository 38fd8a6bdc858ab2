package org.relegend.viewer.mode.twins;

import java.util.List;
import java.util.Optional;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Subject;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.SeedContradiction;
import org.relegend.twin.TwinDifference;
import org.relegend.twin.TwinGroup;
import org.relegend.twin.TwinSeed;

/** One line of what follows from the twins that are known. */
public sealed interface TwinRow {
  /** Where it leads to. */
  Subject place();

  /** A pair that people said and that can't be right, or not beside others. */
  record Clash(TwinSeed declared, SeedContradiction why) implements TwinRow {
    @Override
    public Subject place() {
      return declared.a();
    }
  }

  /** Where the two channels differ, with what was said of it. */
  record Differs(TwinDifference difference, Optional<ChannelDeviation.Cause> mark)
      implements TwinRow {
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
