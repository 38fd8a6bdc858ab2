package org.relegend.bench.rule;

import java.util.List;
import org.relegend.map.Subject;

/**
 * What one rule reads from the readings.
 *
 * @param code of the rule
 * @param subjects what it is about: nets and parts
 * @param message what was found, with figures
 * @param remedy what to do
 * @param source what the rule rests on: a published text, or "common practice"
 * @param blames how it bears on parts; empty where it only warns
 */
public record RuleFinding(
    String code,
    RuleSeverity severity,
    List<Subject> subjects,
    String message,
    String remedy,
    String source,
    List<LikelihoodRatio> blames) {
  public RuleFinding {
    subjects = List.copyOf(subjects);
    blames = List.copyOf(blames);
  }
}
