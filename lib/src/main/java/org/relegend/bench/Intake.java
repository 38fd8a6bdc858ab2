package org.relegend.bench;

import java.time.Instant;
import org.relegend.map.Texts;

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
public record Intake(
    String complaint,
    String customer,
    String serial,
    String accessories,
    String history,
    String receivedBy,
    Instant at) {
  /** Nothing was noted. */
  public static final Intake EMPTY = new Intake("", "", "", "", "", "", Instant.EPOCH);

  public Intake {
    Texts.note(complaint);
    Texts.line("customer", customer);
    Texts.line("serial number", serial);
    Texts.note(accessories);
    Texts.note(history);
    Texts.line("name", receivedBy);
    at = Moments.checked(at);
  }
}
