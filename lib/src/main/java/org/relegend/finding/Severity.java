package org.relegend.finding;

import java.util.Locale;

/** How much a finding matters. */
public enum Severity {
  /**
   * The map contradicts itself, so that answers drawn from it are wrong; or something is wrong with
   * the unit there. Mend this first.
   */
  ERROR,
  /** Most likely wrong or misleading: look at it. */
  WARNING,
  /**
   * Worth knowing, before the next reading too. A map that is still growing is full of these, and
   * nothing need be done.
   */
  INFORMATION;

  /** The word used in reports and files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
