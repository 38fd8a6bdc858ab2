package org.relegend.bench;

import java.time.Instant;
import org.relegend.map.TextRules;

/**
 * What was said and seen when the unit came in. Stays in the job: nothing of it is ever shared.
 *
 * @param complaint in the owner's own words
 * @param customer who brought it; empty where nobody said
 * @param serial the unit's serial number
 * @param accessories what came with it
 * @param history what is known of earlier faults and repairs
 * @param receivedBy who took it in
 * @param at when
 */
public record IntakeRecord(
    String complaint,
    String customer,
    String serial,
    String accessories,
    String history,
    String receivedBy,
    Instant at) {
  /** Nothing was noted. */
  public static final IntakeRecord EMPTY = new IntakeRecord("", "", "", "", "", "", Instant.EPOCH);

  public IntakeRecord {
    TextRules.note(complaint);
    TextRules.line("customer", customer);
    TextRules.line("serial number", serial);
    TextRules.note(accessories);
    TextRules.note(history);
    TextRules.line("name", receivedBy);
    at = Timestamps.checked(at);
  }
}
