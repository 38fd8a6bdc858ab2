package org.relegend.bench.rule;

import java.util.List;

/** One thing that readings can tell, by a published rule or one of the trade. */
public interface ReadingRule {
  /** Its name in reports, never used again for another: "current-sum". */
  String code();

  /** What it rests on. */
  String source();

  /** What it finds in this unit; empty where it doesn't apply. */
  List<RuleFinding> inspect(UnitReadings unit);
}
