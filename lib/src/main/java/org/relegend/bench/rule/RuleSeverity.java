package org.relegend.bench.rule;

import java.util.Locale;

/** How much a finding of a job matters. */
public enum RuleSeverity {
  /** Something is wrong with the unit there. */
  ERROR,
  /** Something may be wrong, or misleads. */
  WARNING,
  /** Worth knowing before the next reading. */
  INFORMATION;

  /** The word used in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
